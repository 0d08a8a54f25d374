/**
 * Checks: what a careful maker would say about this build before the saw comes out. Combinations that cannot exist at all
 * are refused by neck/schema.ts; here are the unwise ones, and reminders. Limits: limits.ts.
 */
import { say } from '../../speech/language.ts';
import type { Build } from '../../neck/build.ts';
import { glueById } from '../../neck/glues.ts';
import { cautionsFor } from './cautions.ts';
import { atLeast, check, NO_MEASURE, PRACTICE } from './check-making.ts';
import type { Check, Severity } from './check-types.ts';
import { blankChecks, crownChecks, rodChecks, stringChecks, type CheckNumbers } from './checks-from-forces.ts';
import { biteChecks } from './checks-of-bite.ts';
import { endChecks } from './checks-of-ends.ts';
import { slotChecks } from './checks-of-slots.ts';
import { wireChecks } from './checks-of-wire.ts';
import { fretEnds } from '../ends.ts';
import { slots } from '../slots.ts';

function settingTime(build: Build): Check[] {
  if (build.method === 'press') return [];
  const days = glueById(build.glueKind).fullHours / 24;
  if (build.restDays >= days) return [];
  return [
    check('strung-too-soon', 'warn', 'restDays', atLeast(days, build.restDays, 'day', 1), PRACTICE, {
      reason: say`The strings go on before the glue has set through: it creeps, and the slots stay open.`,
      remedy: say`Wait longer, or take a glue that sets sooner.`,
    }),
  ];
}

const REMINDERS = [
  ['dust', 'boardWood', say`Extract, wear a mask, vacuum.`],
  ['dust-sensitising', 'boardWood', say`Cover up, and stop at the first sign of irritation.`],
  ['glue', 'glueKind', say`Read the data sheet of the glue in your hand.`],
  ['listed-wood', 'boardWood', say`Check the listing before buying, selling or shipping.`],
] as const;

function reminders(build: Build): Check[] {
  const cautions = cautionsFor(build);
  return REMINDERS.flatMap(([code, parameter, remedy]) => {
    const caution = cautions.get(code);
    return caution
      ? [
          check(
            code,
            'note',
            parameter,
            NO_MEASURE,
            { source: caution.source, mark: caution.mark },
            { reason: caution.text, remedy },
          ),
        ]
      : [];
  });
}

const RANK: Readonly<Record<Severity, number>> = { stop: 0, warn: 1, note: 2 };

/**
 * Everything there is to say about a valid build, worst first.
 * @param numbers what the mechanics found; checks that need a number that is not given are left out.
 */
export function checkFretwork(build: Build, numbers: CheckNumbers = {}): Check[] {
  const ends = fretEnds(build);
  return [
    ...biteChecks(build),
    ...slotChecks(build, slots(build, ends)),
    ...endChecks(build, ends),
    ...wireChecks(build),
    ...blankChecks(numbers),
    ...stringChecks(numbers),
    ...rodChecks(build, numbers),
    ...crownChecks(build, ends, numbers),
    ...settingTime(build),
    ...reminders(build),
  ].sort((a, b) => RANK[a.severity] - RANK[b.severity]);
}
