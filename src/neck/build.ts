/** A build: one neck with its frets, as plain data. Everything else in the program is computed from it. */
import type { BiteReference, GripReference } from './bite-reference.ts';
import type {
  ChoiceParameter,
  FlagParameter,
  MeasuredParameter,
  NumberParameter,
  Parameter,
} from './parameter-kinds.ts';
import { ownWoodsWith, type OwnWood } from './materials/own-woods.ts';
import { PARAMETERS, type ParameterRow } from './parameters.ts';
import { stringsOf, type StringSpec } from './strings.ts';

type ValueOf<P extends Parameter> = P extends MeasuredParameter
  ? number | null
  : P extends NumberParameter
    ? number
    : P extends FlagParameter
      ? boolean
      : P extends ChoiceParameter<string, infer Value>
        ? Value
        : never;

/** Every parameter of the table by its id. */
export type ParameterValues = { readonly [P in ParameterRow as P['id']]: ValueOf<P> };

/** One piece of the neck blank; a neck is listed from its centre line outwards and is symmetric. */
export interface Laminate {
  /** Id of a wood in the table, or of an own wood. */
  readonly wood: string;
  /** Share of the neck's width that this piece (both halves of it together) takes; all shares sum to 1. */
  readonly share: number;
  /**
   * Its width all along, both halves of it together, where the laminates are of constant width: then every piece but the
   * outermost has one, which takes what is left, and the shares count for nothing.
   */
  readonly widthMm?: number;
}

/** One line of binding or purfling. */
export interface BindingLine {
  readonly thicknessMm: number;
  /** What it is made of, by its id in materials/binding.ts; absent: as stiff as the board. */
  readonly material?: string;
  /** sRGB hex, "#rrggbb". */
  readonly colour: string;
}

/** Frets whose slots or tangs differ from the rest: odd slots of an old board, a fatter tang for a stretch of frets. */
export interface FretRegion {
  readonly fromFret: number;
  readonly toFret: number;
  readonly kerfMm: number;
  readonly tangWidthMm: number;
  readonly studWidthMm: number;
}

export interface Build extends ParameterValues {
  readonly name: string;
  readonly notes: string;
  /** From the centre line outwards: one entry is a one-piece neck, 2 are three laminates, 3 five, 4 seven. */
  readonly laminates: readonly Laminate[];
  /** Four woods of the maker's own, by OWN_WOOD_IDS. */
  readonly ownWoods: readonly OwnWood[];
  /** Five lines, from the wood outwards; the first `bindingLineCount` of them are used. */
  readonly binding: readonly BindingLine[];
  /** From the highest string to the lowest. */
  readonly strings: readonly StringSpec[];
  /** Later regions go before earlier ones. */
  readonly regions: readonly FretRegion[];
  /** Refret: measured relief of the bare board at each fret from 1 on, mm; empty = one number, `startingBowMm`. */
  readonly startingReliefMm: readonly number[];
  /** The measurements that `biteFactor` was taken from; absent when it was not. */
  readonly biteReference?: BiteReference | undefined;
  /** The measurements that bite factor and shape of the studs were taken from, where strips or the neck itself speak too. */
  readonly gripReference?: GripReference | undefined;
}

/** Longest name of a build, in characters. */
export const MOST_NAME = 200;
/** Longest notes of a build, in characters. */
export const MOST_NOTES = 10_000;

export const MAX_REGIONS = 36;
export const MAX_STARTING_RELIEFS = 36;

export const MAX_BINDING_LINES = 5;
export const MAX_LAMINATE_ENTRIES = 4;

const STANDARD_BINDING: readonly BindingLine[] = [
  { thicknessMm: 0.5, colour: '#f2ead7' },
  { thicknessMm: 0.5, colour: '#26211e' },
  { thicknessMm: 1.5, colour: '#f2ead7' },
  { thicknessMm: 0.5, colour: '#26211e' },
  { thicknessMm: 0.5, colour: '#f2ead7' },
];

/** The build that the parameter table describes by its defaults. */
export function defaultBuild(): Build {
  const values = Object.fromEntries(PARAMETERS.map((parameter) => [parameter.id, parameter.default]));
  return {
    ...(values as unknown as ParameterValues),
    name: '',
    notes: '',
    laminates: [{ wood: 'sugar-maple', share: 1 }],
    ownWoods: ownWoodsWith(),
    binding: STANDARD_BINDING,
    strings: stringsOf('six-10-46', 'six-standard'),
    regions: [],
    startingReliefMm: [],
  };
}

/** Kerf, tang body and width over the studs at a fret, mm: those of the last region that holds it, or the build's. */
export function slotAndTang(build: Build, fret: number): Pick<FretRegion, 'kerfMm' | 'tangWidthMm' | 'studWidthMm'> {
  return build.regions.findLast((region) => fret >= region.fromFret && fret <= region.toFret) ?? build;
}

/** The binding lines in use, from the wood outwards. */
export function bindingInUse(build: Build): readonly BindingLine[] {
  return build.binding.slice(0, build.bindingLineCount);
}
