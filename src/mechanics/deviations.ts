/** How far the uncertain inputs of one real neck lie from their stated values: factors (1) and offsets (0). */
export interface Deviations {
  readonly boardModulus: number;
  readonly neckModulus: number;
  readonly density: number;
  readonly crushing: number;
  readonly kerfMm: number;
  readonly studWidthMm: number;
  /** On the embedding length (the inverse of K₀). */
  readonly studSoftness: number;
  readonly relaxation: number;
  readonly creep: number;
  readonly bite: number;
}

export const AS_STATED: Deviations = {
  boardModulus: 1,
  neckModulus: 1,
  density: 1,
  crushing: 1,
  kerfMm: 0,
  studWidthMm: 0,
  studSoftness: 1,
  relaxation: 1,
  creep: 1,
  bite: 1,
};
