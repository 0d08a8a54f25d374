/** A neck while its frets go in: what has been read so far, and what may be done with the frets that are still to come. */
import { seatingSequence } from '../../fretwork/plan/seating-order.ts';
import type { Build, FretRegion } from '../../neck/build.ts';
import { workingKerfMm } from '../../neck/kerf.ts';
import type { ReadNeck } from '../neck-readings/readings.ts';

/** The bow under the straightedge once so many frets are in. */
export interface BowReading {
  /** Frets that are in, in the order of seating. */
  readonly seated: number;
  /** Greatest relief from the first fret to the joint, mm; hollow positive. */
  readonly measuredMm: number;
  /** One standard deviation of the instrument, mm. */
  readonly errorMm: number;
}

/** What is done from here on. */
export type RestChange =
  | { readonly code: 'go-on' }
  /** The slots that are still empty are opened with another blade. */
  | { readonly code: 'kerf'; readonly kerfMm: number }
  | { readonly code: 'wire'; readonly tangWidthMm: number; readonly studWidthMm: number }
  /** They are opened to the width over the studs and glued: no fret of the rest wedges. */
  | { readonly code: 'glue' };

type Order = Pick<Build, 'seatingOrder' | 'fretCount'>;

/** Fret numbers that are in, and those to come, in the order of seating. */
export function splitAt(build: Order, seated: number): { readonly seated: number[]; readonly rest: number[] } {
  const sequence = seatingSequence(build);
  return { seated: sequence.slice(0, seated), rest: sequence.slice(seated) };
}

/** Readings in the order of the work; of two after the same fret the later one counts. */
export function inOrder<Reading extends BowReading>(readings: readonly Reading[]): Reading[] {
  return [...new Map(readings.map((reading) => [reading.seated, reading])).values()].toSorted(
    (a, b) => a.seated - b.seated,
  );
}

/**
 * What was read, as the neck's own readings are heard (neck-readings/likelihood.ts): the frets between two readings have a grip
 * of their own beside the neck's, and those to come one that nobody has read yet.
 */
export function readNeckOf(build: Build, readings: readonly BowReading[]): ReadNeck {
  const sequence = seatingSequence(build);
  const known = inOrder(readings).filter(({ seated }) => seated > 0);
  const ends = [...known.map(({ seated }) => seated), sequence.length];
  const groups = ends.map((end, index) => sequence.slice(index === 0 ? 0 : ends[index - 1], end));
  return {
    method: build.method,
    readings: known.map(({ seated, measuredMm, errorMm }) => ({
      kind: 'quarter',
      fretsIn: sequence.slice(0, seated),
      measuredMm,
      errorMm,
    })),
    quarters: groups.filter((frets) => frets.length > 0),
  };
}

/**
 * The build with the rest of its frets seated otherwise; those that are in stay as they are. Frets that are glued in stand for
 * themselves as empty slots do: what the glue stiffens the neck by under the strings is left out, and the relief that is told is
 * a little too great.
 */
export function withRest(build: Build, rest: readonly number[], change: RestChange): Build {
  if (change.code === 'go-on') return build;
  const regions = rest.map((fret): FretRegion => {
    const here = build.regions.findLast(({ fromFret, toFret }) => fret >= fromFret && fret <= toFret) ?? build;
    const { kerfMm, tangWidthMm, studWidthMm } = here;
    return { kerfMm, tangWidthMm, studWidthMm, ...seatedBy(change, here), fromFret: fret, toFret: fret };
  });
  return { ...build, regions: [...build.regions, ...regions] };
}

type Slot = Pick<FretRegion, 'kerfMm' | 'studWidthMm'>;

function seatedBy(change: Exclude<RestChange, { code: 'go-on' }>, here: Slot): Partial<FretRegion> {
  switch (change.code) {
    case 'kerf':
      return { kerfMm: change.kerfMm };
    case 'wire':
      return { tangWidthMm: change.tangWidthMm, studWidthMm: change.studWidthMm };
    case 'glue':
      return { kerfMm: workingKerfMm(here, 'glue') };
  }
}
