/**
 * Where this model is known to disagree with what makers see. One list for the table of validation, whose rows are judged
 * by it (test/reference/rows/practice.ts), and for the checks, which say it on the necks that it concerns: a row that
 * comes out as it is said fails its test until its limit is taken out here, and so does one that no longer does and has none.
 *
 * Source of every limit: common practice, no source. The thresholds make numbers of its words.
 */
import { above, atLeast, atMost, below, check } from '../fretwork/checks/check-making.ts';
import { LEAST_BITE_MM } from '../fretwork/checks/limits.ts';
import type { Check, LimitCode, Measure } from '../fretwork/checks/check-types.ts';
import { basedOn } from '../fretwork/facts.ts';
import { woodProperties } from '../mechanics/elements/materials.ts';
import { lineAt } from '../mechanics/states.ts';
import type { Build } from '../neck/build.ts';
import { laminateShares } from '../neck/neck-shape.ts';
import { MM_PER_INCH } from '../neck/units.ts';
import type { Reckoned } from './reckoned.ts';

export type KnownLimitId = 'stiff-neck' | 'pressed-settled' | 'one-fret' | 'light-strings';

export interface KnownLimit {
  readonly id: KnownLimitId;
  /** Row of the table of validation in which it stands. */
  readonly row: string;
  /** The check that says it, and what to look at; null where nothing shows the number that is off. */
  readonly said: { readonly code: LimitCode; readonly parameter: Check['parameter'] } | null;
  /** Is it a neck of which practice says this? */
  readonly concerns: (reckoned: Reckoned) => boolean;
  /** The number of the model, and what practice says that it is at least or at most. */
  readonly compare: (reckoned: Reckoned) => Measure;
}

/** “Over an inch thick”, where it is thinnest; “laminated”, from the centre line outwards; “heavy hard woods”. */
const THICK_MM = MM_PER_INCH;
const LEAST_PIECES = 2;
const HEAVY_KG_M3 = 750;
/** Share of the bow of the full set that one fret makes at most. */
const ONE_FRET_SHARE = 0.1;

function meanDensityKgM3(build: Build): number {
  const shares = laminateShares(build);
  return build.laminates.reduce(
    (sum, { wood }, index) => sum + shares[index] * woodProperties(wood, build).densityKgM3,
    0,
  );
}

/** A new neck: what is said of one does not hold of a neck that has had frets and strings for years. */
const isNew = ({ build }: Reckoned) => build.job === 'new';

const pressedBites = ({ prediction }: Reckoned) =>
  prediction.methods.press.biteMm.every((bite) => !below(bite, LEAST_BITE_MM));

/** Relief with the one fret in that bows the neck most, mm. */
function worstFretMm({ prediction }: Reckoned): number {
  const alone = (fret: number) =>
    lineAt(prediction, 'press', { strung: false, days: 0, rodPercent: 0, fretsIn: [fret] }).extremeMm;
  return Math.min(...prediction.fretXMm.map((_, index) => alone(index + 1)));
}

export const KNOWN_LIMITS: readonly KnownLimit[] = [
  {
    id: 'stiff-neck',
    row: 'stiff-neck',
    said: { code: 'limit-stiff-neck', parameter: 'biteFactor' },
    concerns: (reckoned) => {
      const { build, prediction } = reckoned;
      return (
        isNew(reckoned) &&
        build.method !== 'glue' &&
        build.thicknessFret1Mm > THICK_MM &&
        build.laminates.length >= LEAST_PIECES &&
        meanDensityKgM3(build) > HEAVY_KG_M3 &&
        below(prediction.methods[build.method].fretted.extremeMm, 0)
      );
    },
    compare: ({ build, prediction }) => atMost('strungReliefMm', 0, prediction.methods[build.method].strung.extremeMm),
  },
  {
    id: 'pressed-settled',
    row: 'glue-only',
    said: { code: 'limit-pressed-settled', parameter: 'method' },
    concerns: (reckoned) => isNew(reckoned) && pressedBites(reckoned),
    compare: ({ prediction: { methods } }) =>
      atMost('settledReliefMm', methods.glue.settled.extremeMm, methods.press.settled.extremeMm),
  },
  {
    id: 'one-fret',
    row: 'one-fret',
    // Every neck has it, and no page, paper or file holds the bow of a single fret.
    said: null,
    concerns: (reckoned) => isNew(reckoned) && pressedBites(reckoned),
    compare: (reckoned) =>
      atLeast('reliefMm', ONE_FRET_SHARE * reckoned.prediction.methods.press.fretted.extremeMm, worstFretMm(reckoned)),
  },
];

/** What the model gives against what practice says, where a limit concerns a neck and the two disagree; else undefined. */
export function disagreement(limit: KnownLimit, reckoned: Reckoned): Measure | undefined {
  if (!limit.concerns(reckoned)) return undefined;
  const measure = limit.compare(reckoned);
  const { value, limit: said, limitKind } = measure;
  const differs = limitKind === 'least' ? below(value!, said!) : above(value!, said!);
  return differs ? measure : undefined;
}

function limitChecks(reckoned: Reckoned): Check[] {
  return KNOWN_LIMITS.flatMap((limit) => {
    const measure = limit.said && disagreement(limit, reckoned);
    if (!limit.said || !measure) return [];
    return [check(limit.said.code, 'note', limit.said.parameter, measure, basedOn('known-limit'))];
  });
}

/** Checks, worst first, with the known limits of the model before all other notes. */
export function withKnownLimits(checks: readonly Check[], reckoned: Reckoned): Check[] {
  const isNote = ({ severity }: Check) => severity === 'note';
  return [...checks.filter((one) => !isNote(one)), ...limitChecks(reckoned), ...checks.filter(isNote)];
}
