/** How far the uncertain inputs of one real neck lie from their stated values: factors (1) and offsets (0). */
export interface Deviations {
  readonly boardModulus: number;
  readonly neckModulus: number;
  readonly density: number;
  readonly crushing: number;
  readonly kerfMm: number;
  readonly studWidthMm: number;
  /** On the shape m of the studs, which is never below 0. */
  readonly studShape: number;
  /** On the area of the studs along a length of tang. */
  readonly studArea: number;
  /** On the embedding length: the inverse of what the wall gives to a stud, first or again. */
  readonly studSoftness: number;
  /** On what the wall gives to the tang's body. */
  readonly wallStiffness: number;
  readonly relaxation: number;
  readonly creep: number;
  readonly bite: number;
  readonly slotDepthMm: number;
  /** On the board's moduli other than the one along the grain. */
  readonly acrossGrain: number;
  readonly glueModulus: number;
  /** On the share that a fretted board slides under its clamps; nothing where no board is fretted first. */
  readonly clampSlide: number;
}

export const AS_STATED: Deviations = {
  boardModulus: 1,
  neckModulus: 1,
  density: 1,
  crushing: 1,
  kerfMm: 0,
  studWidthMm: 0,
  studShape: 0,
  studArea: 1,
  studSoftness: 1,
  wallStiffness: 1,
  relaxation: 1,
  creep: 1,
  bite: 1,
  slotDepthMm: 0,
  acrossGrain: 1,
  glueModulus: 1,
  clampSlide: 0,
};
