/** What the picture is given, and what it gives back. */
import type { Build } from '../neck/build.ts';
import type { UnitSystem } from '../neck/units.ts';
import type { Method, Prediction } from '../mechanics/prediction-types.ts';
import type { SwingLine } from '../playing/swing-line.ts';
import type { PluckDirection } from '../playing/swing.ts';
import type { StressField } from '../mechanics/elements/stress.ts';

/**
 * Where the picture looks from and what it cuts open.
 *
 * - `neck`: the whole neck, three quarters from above
 * - `slot`: cut along the neck's centre, across the selected slot
 * - `fret`: cut along the selected fret, the whole width of the board
 * - `end`: the same cut, close to the fret's end
 * - `edge`: edge-on, with the straightedge on the frets
 * - `back`: the back of the neck with its laminates and heel
 */
export type SceneView = 'neck' | 'slot' | 'fret' | 'end' | 'edge' | 'back';

export const SCENE_VIEWS: readonly SceneView[] = ['neck', 'slot', 'fret', 'end', 'edge', 'back'];

/** The bow to draw, as the library computed it. The arrays are read, never written and never kept. */
export interface DrawnLine {
  /** Stations along the neck, mm from the nut, ascending. */
  readonly xMm: ArrayLike<number>;
  /** Relief at each station, mm; positive = hollow under the strings. */
  readonly reliefMm: ArrayLike<number>;
  /** How many times larger than life the bow is drawn. */
  readonly factor: number;
  /**
   * How high each fret stands above its seat, mm, index 0 = fret 1; Infinity = the fret is not there yet.
   * Undefined = all are seated.
   */
  readonly liftMm?: ArrayLike<number>;
}

/**
 * A line that changes faster than React should render: the scene subscribes, and reads the current line when told that it
 * changed. Scrubbing through states this way renders no React and allocates nothing.
 */
export interface LineSource {
  /** @returns the function that ends the subscription */
  subscribe(listener: () => void): () => void;
  read(): DrawnLine;
}

/** Colours of the page, sRGB hex "#rrggbb". */
export interface ScenePalette {
  /** Ground of the picture and of the page. */
  readonly ground: string;
  readonly ink: string;
  readonly accent: string;
  readonly dark: boolean;
}

/** What is drawn beside the neck itself. */
export interface SceneShows {
  readonly strings: boolean;
  /** A straightedge on the frets, with the greatest gap measured. */
  readonly straightedge: boolean;
  /** Rod and bars, seen through the wood. */
  readonly rod: boolean;
  /** Wedge forces, string pull and rod moment. */
  readonly arrows: boolean;
}

/** The swing of one note over the frets, as the library computed it. */
export interface DrawnSwing {
  readonly line: SwingLine;
  readonly direction: PluckDirection;
  /** Where the string is stopped, 0 = open, and the fret that it touches or comes nearest to. */
  readonly note: number;
  readonly touchedFret: number;
  readonly buzzes: boolean;
  /** Stands beside that fret. */
  readonly label: string;
  /** Does the string move, or lie where its lowest line is? */
  readonly moves: boolean;
}

/** One more neck in the same picture, with the same camera, light and exaggeration. */
export interface ComparedNeck {
  readonly build: Build;
  readonly lineSource: LineSource;
  readonly label: string;
  /** As the scene's own: what is pointed at tells its forces. */
  readonly prediction: Prediction | null;
}

/** Why there is no picture; words in SCENE_WORDS. */
export type Unavailable = 'noWebGl' | 'contextLost';

export interface NeckSceneProps {
  /** A checked build: the scene does not validate. */
  readonly build: Build;
  readonly lineSource: LineSource;
  /** Forces and bites for arrows, sections and the hover card; null while the first one is being computed. */
  readonly prediction: Prediction | null;
  readonly method: Method;
  readonly palette: ScenePalette;
  readonly units: UnitSystem;
  readonly view: SceneView;
  /** Fret shown by the close views and marked in the others, 1…fretCount; null = none marked, close views show the middle fret. */
  readonly selectedFret: number | null;
  /** Fret pointed at elsewhere (in the chart): it lights up and tells its numbers. The picture's own pointer goes before it. */
  readonly hoveredFret?: number | null;
  readonly onHoverFret?: (fret: number | null) => void;
  readonly onPickFret?: (fret: number) => void;
  /** Jump instead of travelling. */
  readonly reducedMotion: boolean;
  readonly shows: SceneShows;
  /** 0 = seated, 1 = lifted clear of the slot, so that the tang shows. */
  readonly lift: number;
  /** Which fret `lift` applies to. */
  readonly liftedFret: number | 'all' | null;
  /** Label of the picture for assistive technology. */
  readonly label: string;
  /** Label at the nut end; drawn only when there is something to compare. */
  readonly name?: string;
  readonly compare?: readonly ComparedNeck[];
  /** The swing of a note, drawn with the factor of the bow over the whole neck; null = none. */
  readonly swing?: DrawnSwing | null;
  /** Stress around the selected slot (`stressAround` of mechanics); colours the cut face of the `slot` view. */
  readonly stress?: StressField | null;
  /** Called after every frame with the number of frames drawn so far. */
  readonly onFrame?: (frames: number) => void;
  /** Called when the picture cannot be drawn (no WebGL, or the context was lost: null when it is back). */
  readonly onUnavailable?: (reason: Unavailable | null) => void;
}

/** Numbers about the picture, for tests and the bench. */
export interface SceneStats {
  readonly frames: number;
  readonly triangles: number;
  readonly drawCalls: number;
  readonly geometries: number;
  readonly textures: number;
  readonly programs: number;
  /** Time of the last bending of all arrays, ms. */
  readonly bendMs: number;
  /** Time of the last rebuild of arrays after a change of the build, ms. */
  readonly rebuildMs: number;
}

/** Reached by `ref` on `NeckScene`. */
export interface NeckSceneHandle {
  /** Brings the camera back to the whole of the current view. */
  fit(): void;
  /** Draws now and returns the picture with its bow factor and scale as PNG. */
  exportPng(options?: { widthPx?: number; heightPx?: number; caption?: string; scaleNote?: string }): Promise<Blob>;
  stats(): SceneStats;
}
