/** The shape of a report as a schema: what `predict --schema` prints, and what every report is tried against. */
import * as z from 'zod/mini';
import { isComputed, quantityOf, type QuantityKey } from '../neck/quantities.ts';
import { QUANTITY_MEANINGS } from './quantity-meanings.ts';
import { METHODS } from '../mechanics/prediction-types.ts';
import { REPORT_FORMAT, REPORT_VERSION } from './report.ts';

z.config({ jitless: true });

function told<Schema extends z.ZodMiniType>(schema: Schema, description: string): Schema {
  z.globalRegistry.add(schema, { description });
  return schema;
}

/** What a quantity is, and its unit. */
function about(key: QuantityKey): string {
  const { unit } = quantityOf(key);
  return `${isComputed(key) ? QUANTITY_MEANINGS[key].meaning : 'as given in the build'}${unit === '' ? '' : `, in ${unit}`}`;
}

const quantity = (key: QuantityKey) => told(z.number(), about(key));
const perFret = (key: QuantityKey) => told(z.array(z.number()), `${about(key)}; from the first fret to the last`);
const orNull = z.nullable(z.number());
const count = z.int().check(z.nonnegative());

const ENDS = {
  p05: z.optional(told(orNull, '5 of 100 such necks lie below it; null: no number, or never')),
  p50: z.optional(told(orNull, 'half of such necks lie below it')),
  p95: z.optional(told(orNull, '5 of 100 such necks lie above it')),
};
const BAND = {
  ...ENDS,
  mostlyFrom: z.optional(
    told(
      z.array(z.strictObject({ input: z.string(), sharePercent: orNull })),
      'inputs that make most of the band, largest first, with their shares of its variance',
    ),
  ),
};

const relief = (key: QuantityKey) =>
  told(
    z.strictObject({
      value: z.number(),
      ...BAND,
      atXMm: quantity('atXMm'),
      atFret7Mm: quantity('atFret7Mm'),
      atFret8Mm: quantity('atFret8Mm'),
    }),
    about(key),
  );

const CHECK = z.strictObject({
  code: told(z.string(), 'what is found'),
  variant: told(z.nullable(z.string()), 'which of the ways in which this code can be meant; null: there is one'),
  severity: told(
    z.enum(['stop', 'warn', 'note']),
    'stop: it cannot be made so, or it will do damage; warn: trouble is likely; note: bear in mind',
  ),
  parameter: told(z.string(), 'the entry of the build to change'),
  quantity: told(z.nullable(z.string()), 'key of the quantity that was measured; null where it is not a number'),
  value: told(orNull, 'what was found, in the unit; null where it is not a number'),
  limit: told(orNull, 'what it may be'),
  limitKind: told(z.nullable(z.enum(['least', 'most'])), 'whether the limit is the least or the most'),
  unit: z.string(),
  frets: told(z.array(count), 'frets that it concerns; empty: the whole neck'),
  about: told(z.array(z.string()), 'ids of the woods, or of the glue, that it names'),
});

const METHOD = z.strictObject({
  kerfMm: told(z.number(), 'kerf that this way of seating works with, in mm'),
  raisedChecks: told(z.array(CHECK), 'checks that changing to this way of seating would raise, worst first'),
  frettedReliefMm: relief('frettedReliefMm'),
  strungReliefMm: relief('strungReliefMm'),
  settledReliefMm: relief('settledReliefMm'),
  rodSetReliefMm: relief('rodSetReliefMm'),
  settlingMoveMm: quantity('settlingMoveMm'),
  rodSetPercent: told(z.number(), 'how the rod is set there: as the build says, else for the relief wanted'),
  rodTurnsAtLimit: told(z.number(), 'turns of the nut from where it is snug to the limit of the rod'),
  rodForTarget: told(
    z.strictObject({
      status: told(
        z.enum(['reached', 'no-rod', 'cannot-forward', 'cannot-backward', 'too-weak', 'between-shapes', 'no-nearer']),
        'whether the rod brings the settled neck to the relief wanted, or why not',
      ),
      rodSettingPercent: told(
        z.strictObject({
          value: z.number(),
          ...BAND,
          withinReachPercent: z.optional(told(orNull, 'of 100 such necks, those that the rod brings there')),
        }),
        'share of the range of the rod; plus bends backwards',
      ),
      turnsOfNut: told(z.number(), 'turns of the nut from where it is snug'),
      nutWay: told(z.enum(['clockwise', 'anticlockwise', 'none']), 'as seen from behind the wrench'),
      nutTorqueNm: told(z.number(), 'on the nut there, in N·m'),
      quarterTurnReliefMm: told(z.number(), 'what each quarter turn adds to the relief, in mm'),
      rodSetReliefMm: told(z.number(), 'relief at that setting, in mm'),
      missMm: quantity('missMm'),
    }),
    'the rod setting for the relief wanted, or the one that comes closest',
  ),
  flatAfterDays: told(
    z.strictObject({
      value: orNull,
      ...ENDS,
      fromStartPercent: z.optional(orNull),
      notInTenYearsPercent: z.optional(orNull),
    }),
    `${about('flatAfterDays')}; null where there is no back-bow, or where it outlasts ten years`,
  ),
  meanWedgeForceN: told(z.strictObject({ value: z.number(), ...BAND }), about('meanWedgeForceN')),
  wedgeForceN: perFret('wedgeForceN'),
  wedgeForceStrungN: perFret('wedgeForceStrungN'),
  meanSeatingForceN: quantity('meanSeatingForceN'),
  seatingForceN: perFret('seatingForceN'),
  meanPullOutForceN: quantity('meanPullOutForceN'),
  pullOutForceN: perFret('pullOutForceN'),
  studBiteMm: perFret('studBiteMm'),
  slotOpeningMm: perFret('slotOpeningMm'),
  extraFlexibilityPercent: quantity('extraFlexibilityPercent'),
  levellingReliefMm: perFret('levellingReliefMm'),
});

const PLAYED = z.strictObject({
  strength: told(z.enum(['soft', 'medium', 'hard']), 'how hard the neck is played'),
  pluckForceN: quantity('pluckForceN'),
  notesBuzzing: quantity('notesBuzzing'),
  notesMayBuzz: quantity('notesMayBuzz'),
  stringRoomMm: told(z.number(), `${about('stringRoomMm')}; that of the worst note`),
  stringRoomBoundMm: quantity('stringRoomBoundMm'),
  string: quantity('string'),
  frettedAt: quantity('frettedAt'),
  touchedFret: quantity('touchedFret'),
  buzzForceN: told(orNull, `${about('buzzForceN')}; null: none does`),
  lowestActionMm: quantity('lowestActionMm'),
  mostRoom: told(
    z.nullable(
      z.strictObject({
        targetReliefMm: quantity('targetReliefMm'),
        bestRoomMm: quantity('bestRoomMm'),
        raisedChecks: told(z.array(CHECK), 'checks that wanting this relief would raise, worst first'),
      }),
    ),
    'the relief that leaves the most room at this action; null: the one at hand, or there is no rod',
  ),
  rooms: told(
    z.array(z.array(z.number())),
    'room of every note, in mm: strings from the treble side to the bass side, notes from the open string to the last but one fret',
  ),
});

export const REPORT_SHAPE = z.strictObject({
  format: z.literal(REPORT_FORMAT),
  version: z.literal(REPORT_VERSION),
  build: told(z.string(), 'name of the build'),
  stamp: told(z.string(), 'of the build, the program and the measurements that narrow its bands, as sheets have it'),
  program: told(z.string(), 'version of the program'),
  method: told(z.enum(METHODS), 'the way of seating that the build has chosen'),
  verdict: told(
    z.strictObject({
      comesOutAsWanted: z.boolean(),
      stoppedBy: told(z.nullable(CHECK), 'the check that stops it; null: none does'),
      rodStatus: told(
        z.nullable(z.string()),
        'why the rod does not bring it there; null: it does, or a check stops it',
      ),
      leastChange: z.optional(
        told(
          z.nullable(
            z.strictObject({
              kerfMm: z.optional(z.number()),
              slotDepthMm: z.optional(z.number()),
              method: z.optional(z.enum(METHODS)),
            }),
          ),
          'with this one entry changed it comes out as wanted and raises nothing to heed; null: none alone does it',
        ),
      ),
      slotsAreSawn: told(z.boolean(), 'false: the slots are there and stay as they are'),
      nipMm: told(z.strictObject({ least: z.number(), most: z.number() }), `${about('nipMm')}; of all frets`),
      decidesMost: z.optional(
        told(z.nullable(z.string()), 'input that makes most of the band of the settled neck; null: it has no width'),
      ),
    }),
    'what to do, and whether it comes out as wanted; its other numbers stand where they belong',
  ),
  checks: told(z.array(CHECK), 'worst first'),
  straightedge: told(z.strictObject({ fromFret: count, toFret: count }), 'the frets under its ends'),
  targetReliefMm: quantity('targetReliefMm'),
  settleDays: quantity('settleDays'),
  levelledIn: told(z.enum(['bare', 'strung']), 'the state in which the crowns are levelled'),
  levelledInIsAssumed: z.boolean(),
  stringPullN: quantity('stringPullN'),
  strings: told(
    z.array(
      z.strictObject({
        stringTensionN: quantity('stringTensionN'),
        stringStressMPa: quantity('stringStressMPa'),
        stringStressPercent: quantity('stringStressPercent'),
      }),
    ),
    'from the treble side to the bass side',
  ),
  rod: z.strictObject({
    kind: z.enum(['none', 'one-way', 'two-way']),
    limitN: told(z.number(), 'greatest pull of the bar, in N'),
    limitedBy: z.enum(['none', 'wrench', 'thread']),
    leastPercent: told(z.number(), 'the settings that it can take, share of its range'),
    mostPercent: z.number(),
    torqueAtLimitNm: told(z.number(), 'on the nut at that pull, in N·m'),
  }),
  frettedBoard: z.optional(
    told(
      z.strictObject({
        freeBoardBowMm: quantity('freeBoardBowMm'),
        clampPressureMPa: quantity('clampPressureMPa'),
        clampedForceN: perFret('clampedForceN'),
      }),
      'the board of a neck that is glued on with its frets in',
    ),
  ),
  fretXMm: perFret('fretXMm'),
  playing: told(
    z.strictObject({
      actionMm: quantity('actionMm'),
      actionPerTurnMm: told(orNull, `${about('actionPerTurnMm')}; null: there is no rod`),
      overMonths: told(
        z.strictObject({
          actionChangeMm: quantity('actionChangeMm'),
          roomStrungMm: quantity('roomStrungMm'),
          roomSettledMm: quantity('roomSettledMm'),
        }),
        'set up on the day of stringing for the relief wanted, and left alone until it has settled',
      ),
      strings: told(
        z.array(
          z.strictObject({
            stringActionMm: quantity('stringActionMm'),
            stringReliefMm: quantity('stringReliefMm'),
            nutOverFret1Mm: quantity('nutOverFret1Mm'),
            saddleOverFretsMm: quantity('saddleOverFretsMm'),
          }),
        ),
        'heights under the strings, from the treble side to the bass side',
      ),
      pluckFromSaddleMm: quantity('pluckFromSaddleMm'),
      pluckDirection: told(
        z.enum(['along', 'away', 'towards']),
        'which way the string is plucked, seen from the board',
      ),
      isAssumed: told(z.literal(true), 'how hard, where and which way it is plucked is an assumption'),
      strengths: z.array(PLAYED),
    }),
    'the neck as it is set up and played: strung and settled, rod set, with the way of seating that it has chosen',
  ),
  bands: z.optional(
    told(
      z.strictObject({
        seed: count,
        samples: count,
        bite: told(
          z.enum(['unmeasured', 'bench-log', 'measured']),
          'whose scatter of the bite it is: that of an unmeasured one, what the bench log leaves of it, or what strips and readings leave of all that they tell of',
        ),
        benchLog: z.optional(z.strictObject({ necks: count, biteLogSpread: orNull })),
        measurements: z.optional(told(count, 'strips, necks and readings that were heard')),
      }),
      'how the bands were made: p05 and p95 hold 90 of 100 such necks between them',
    ),
  ),
  methods: z.strictObject({ press: METHOD, glue: METHOD, both: METHOD }),
});

/** The shape as JSON Schema (draft 2020-12). */
export function reportSchema(): Record<string, unknown> {
  const { '~standard': _none, ...schema } = z.toJSONSchema(REPORT_SHAPE);
  return {
    title: 'Backbow prediction',
    description: 'Positive relief is forward bow, negative is back-bow.',
    ...schema,
  };
}
