/**
 * Checks: what a careful maker would say about this build before the saw comes out. Combinations that cannot exist at all
 * are refused by neck/schema.ts; here are the unwise ones, and reminders. Limits: limits.ts.
 */
import { bindingInUse, type Build } from '../../neck/build.ts';
import { slotShortMm } from '../../neck/neck-shape.ts';
import { glueById } from '../../neck/glues.ts';
import { hasMoved } from '../../neck/woods.ts';
import { basedOn } from '../facts.ts';
import { cautionsFor, woodsOf } from './cautions.ts';
import { atLeast, below, check, NO_MEASURE, PRACTICE } from './check-making.ts';
import type { Check, Severity } from './check-types.ts';
import {
  clampChecks,
  crownChecks,
  glueChecks,
  rodChecks,
  stringChecks,
  type CheckNumbers,
} from './checks-from-forces.ts';
import { biteChecks } from './checks-of-bite.ts';
import { bodyChecks } from './checks-of-body.ts';
import { blankChecks } from './checks-of-blanks.ts';
import { endChecks } from './checks-of-ends.ts';
import { slotChecks } from './checks-of-slots.ts';
import { stringPlaceChecks } from './checks-of-strings.ts';
import { wireChecks } from './checks-of-wire.ts';
import { fretEnds } from '../ends.ts';
import { slots } from '../slots.ts';

function settingTime(build: Build): Check[] {
  if (build.method === 'press') return [];
  const days = glueById(build.glueKind).fullHours / 24;
  if (!below(build.restDays, days)) return [];
  return [check('strung-too-soon', 'warn', 'restDays', atLeast('restDays', days, build.restDays), PRACTICE)];
}

/** Cautions that hold for the whole job, so that they stand among the checks too. */
const REMINDERS = [
  ['dust', 'boardWood'],
  ['dust-sensitising', 'boardWood'],
  ['glue', 'glueKind'],
  ['heat', 'heatRestMm'],
  ['listed-wood', 'boardWood'],
] as const;

function reminders(build: Build): Check[] {
  const cautions = cautionsFor(build);
  return REMINDERS.flatMap(([code, parameter]) => {
    const caution = cautions.get(code);
    if (!caution) return [];
    const { source, mark, about } = caution;
    return [check(code, 'note', parameter, NO_MEASURE, { source, mark }, { about })];
  });
}

/** A build from a file of before version 4 with a wood whose printed values are others. */
function earlierWoods(build: Build): Check[] {
  if (build.woodValues !== 'earlier') return [];
  const about = [...new Set([...woodsOf(build), ...bindingInUse(build).map(({ material }) => material ?? '')])].filter(
    hasMoved,
  );
  return about.length > 0
    ? [check('earlier-woods', 'note', 'woodValues', NO_MEASURE, basedOn('wood-tables'), { about })]
    : [];
}

/** A bound neck from a file of before version 3, whose whole lines counted as sawn through. */
const earlierEnds = (build: Build): Check[] =>
  build.endsChanged && slotShortMm(build) > 0
    ? [check('earlier-ends', 'note', 'endsChanged', NO_MEASURE, basedOn('prediction'))]
    : [];

const RANK: Readonly<Record<Severity, number>> = { stop: 0, warn: 1, note: 2 };

/**
 * Everything there is to say about a valid build, worst first.
 * @param numbers what the mechanics found; checks that need a number that is not given are left out.
 */
export function checkFretwork(build: Build, numbers: CheckNumbers = {}): Check[] {
  const ends = fretEnds(build);
  return [
    ...biteChecks(build),
    ...bodyChecks(build, numbers),
    ...slotChecks(build, slots(build, ends)),
    ...endChecks(build, ends),
    ...wireChecks(build),
    ...blankChecks(build, numbers),
    ...stringPlaceChecks(build),
    ...stringChecks(numbers),
    ...rodChecks(build, numbers),
    ...crownChecks(build, ends, numbers),
    ...clampChecks(numbers),
    ...glueChecks(build, numbers),
    ...settingTime(build),
    ...earlierWoods(build),
    ...earlierEnds(build),
    ...reminders(build),
  ].sort((a, b) => RANK[a.severity] - RANK[b.severity]);
}
