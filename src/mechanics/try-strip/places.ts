/**
 * Which deviates the strips and necks of a workshop have in common. Each has its place in one vector, found by a name:
 *
 *   grip       bite, what walls give, relaxation, creep: of the workshop, for all
 *   wire       area, shape and width of the studs: of a wire, which is one with the same numbers; its shape is what is asked
 *   wood       of a board: of the neck's own, of another that is named, else of each strip
 *   strip      its slots and kerfs: its own
 *   neck       everything else that is uncertain of the neck, and the grip of each quarter of its frets, where it was read itself
 *
 * Numbers alone make nothing one: which strips speak for a neck at all is the maker's word. That the numbers of a wire differ
 * says that it is another.
 */
import type { Build } from '../../neck/build.ts';
import { INPUTS, type UncertainInput } from '../uncertainty/inputs.ts';
import type { TryStrip } from './document.ts';
import { GRIP_INPUTS, STRIP_INPUTS, WOOD_INPUTS, type StripInput } from './spreads.ts';
import type { StripDeviates } from './strip-samples.ts';

/** A strip that speaks for a neck. */
export interface StripEvidence {
  readonly strip: TryStrip;
  /** Was it cut from the board of this neck? */
  readonly ownBoard: boolean;
}

const WIRE_NUMBERS = ['tangWidthMm', 'studWidthMm', 'studAreaMm2', 'studPitchMm'] as const;
export type WireNumber = (typeof WIRE_NUMBERS)[number];
type Wire = Readonly<Record<WireNumber, number>>;

const wireKey = (wire: Wire) => JSON.stringify(WIRE_NUMBERS.map((key) => wire[key]));

/** Where a strip's wire is another than the neck's. */
export function wireDifferences(strip: Wire, neck: Wire): WireNumber[] {
  return WIRE_NUMBERS.filter((key) => strip[key] !== neck[key]);
}

const OF_WIRE: ReadonlySet<StripInput> = new Set<StripInput>(['studArea', 'studShape', 'studWidthMm']);
const OF_WOOD: ReadonlySet<StripInput> = new Set<StripInput>(WOOD_INPUTS);

const SHARED: ReadonlySet<UncertainInput> = new Set(STRIP_INPUTS);
const isShared = (input: UncertainInput): input is StripInput => SHARED.has(input);

export interface StripPlaces {
  readonly inputs: Readonly<Record<StripInput, number>>;
  readonly slotDepth: number;
  readonly kerfs: readonly number[];
}

export interface Places {
  readonly dimensions: number;
  readonly strips: readonly StripPlaces[];
  /** Of the neck: those of its inputs that a strip or another neck tells of; all of them where it was read itself. */
  readonly neck: Readonly<Partial<Record<UncertainInput, number>>>;
  /** Where its bow was read after quarters of the frets: these, and the place of each one's grip. */
  readonly quarters?: { readonly frets: readonly (readonly number[])[]; readonly places: readonly number[] };
}

/** What else speaks for a neck. */
export interface BesideStrips {
  /** Entries of the bench log: of other necks with the neck's wire. */
  readonly withNecks: boolean;
  /** The neck itself was read. */
  readonly isRead?: boolean;
  /** Frets of each quarter, where its bow was read after quarters. */
  readonly quarters?: readonly (readonly number[])[] | undefined;
}

export function placesOf(
  neck: Build,
  strips: readonly StripEvidence[],
  { withNecks, isRead = false, quarters }: BesideStrips,
): Places {
  const places = new Map<string, number>();
  const placeOf = (name: string): number => {
    const place = places.get(name) ?? places.size;
    places.set(name, place);
    return place;
  };
  const nameOf = (input: StripInput, wire: Wire, board: string) => {
    const of = OF_WIRE.has(input) ? `wire ${wireKey(wire)}` : OF_WOOD.has(input) ? `wood ${board}` : 'grip';
    return `${of} ${input}`;
  };
  const OWN = 'of the neck';
  const told = strips.map(({ strip, ownBoard }, index): StripPlaces => {
    const { cutFrom } = strip.offcut;
    const board = ownBoard ? OWN : cutFrom === '' ? `of strip ${index}` : `called ${cutFrom}`;
    const inputs = STRIP_INPUTS.map((input) => [input, placeOf(nameOf(input, strip.wire, board))]);
    return {
      inputs: Object.fromEntries(inputs) as Record<StripInput, number>,
      slotDepth: placeOf(`depth ${index}`),
      kerfs: strip.groups.map((_, group) => placeOf(`kerf ${index} ${group}`)),
    };
  });
  if (withNecks) for (const input of GRIP_INPUTS) placeOf(nameOf(input, neck, OWN));
  const ownName = (input: UncertainInput) => (isShared(input) ? nameOf(input, neck, OWN) : `neck ${input}`);
  if (isRead) for (const { id } of INPUTS) placeOf(ownName(id));
  const known = INPUTS.map(({ id }) => [id, places.get(ownName(id))] as const);
  const ofQuarters = quarters?.map((_, quarter) => placeOf(`quarter ${quarter}`));
  return {
    dimensions: places.size,
    strips: told,
    neck: Object.fromEntries(known.filter(([, place]) => place !== undefined)),
    ...(quarters && ofQuarters ? { quarters: { frets: quarters, places: ofQuarters } } : {}),
  };
}

/** The rows of a strip in the vector. */
export function deviatesAt(places: StripPlaces, deviates: Float64Array, samples: number): StripDeviates {
  const row = (place: number) => deviates.subarray(place * samples, (place + 1) * samples);
  return {
    inputs: Object.fromEntries(
      STRIP_INPUTS.map((input) => [input, row(places.inputs[input])]),
    ) as StripDeviates['inputs'],
    slotDepth: row(places.slotDepth),
    kerfs: places.kerfs.map(row),
  };
}
