/** What is written on a cut face: distances with dimension lines, and callouts with leaders. Places are straight (x, y, z). */
export type Point3 = readonly [number, number, number];

export interface Distance {
  readonly kind: 'distance';
  readonly from: Point3;
  readonly to: Point3;
  /** How far the dimension line stands beside what it measures. */
  readonly beside: Point3;
  readonly text: string;
  /** Left out where the picture is narrow. */
  readonly minor?: true;
}

export interface Callout {
  readonly kind: 'callout';
  readonly at: Point3;
  /** Which margin the text stands in. */
  readonly margin: 'left' | 'right';
  readonly text: string;
  /** Left out where the picture is narrow. */
  readonly minor?: true;
}

export interface Annotations {
  /** Where the picture is narrow all callouts stand in this margin. */
  readonly narrowMargin?: Callout['margin'];
  /** All places bow with this section. */
  readonly anchorMm: number;
  readonly items: readonly (Distance | Callout)[];
}
