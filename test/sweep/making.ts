/** What the bench and the picture get of every build: no number that is none, no shape with a hole in it. */
import { stampOf, stampText } from '../../src/verdict/stamp.ts';
import { tableCsv } from '../../src/fretwork/plan/csv.ts';
import { planTables } from '../../src/fretwork/plan/tables.ts';
import { templateSvg } from '../../src/fretwork/plan/template.ts';
import { PART_IDS, PARTS } from '../../src/geometry/parts.ts';
import { checkNumbers, checkReason, checkRemedy } from '../../src/speech/checks.ts';
import { shownTable } from '../../src/speech/tables.ts';
import { templateWords } from '../../src/pages/papers/template-words.ts';
import { shownApart } from '../../src/speech/shown-apart.ts';
import { sheetPlan } from '../../src/verdict/sheet-plan.ts';
import { hold, holdFinite, holdText, type Invariant } from './invariant.ts';

const SYSTEMS = ['metric', 'inch'] as const;
const SEVERITIES = ['stop', 'warn', 'note'] as const;

export const MAKING: readonly Invariant[] = [
  {
    name: 'the bench sheet has a number wherever it has a place for one',
    every: 2,
    check: ({ build, prediction }) => {
      const { plan, ...rest } = sheetPlan({ build, prediction });
      const numbers = { ends: plan.ends, slots: plan.slots, wire: plan.wire, glue: plan.glue, ahead: rest.ahead };
      // The radius of a flat board has no end.
      holdFinite(numbers, 'plan', build.boardShape === 'flat' ? /\.radiusMm$/ : undefined);
      for (const table of planTables(plan)) {
        for (const system of SYSTEMS) {
          const shown = shownTable(table, system);
          for (const text of [...shown.header, ...shown.rows.flat()]) holdText(text, table.id);
          hold(
            shown.rows.every((row) => row.length === shown.header.length),
            () => `${table.id} has rows of another length than its header`,
          );
        }
        holdText(tableCsv(table), `${table.id} as CSV`);
      }
    },
  },
  {
    name: 'checks stand worst first and read well in both unit systems',
    every: 2,
    check: ({ build, prediction }) => {
      const { checks } = sheetPlan({ build, prediction }).plan;
      const order = checks.map(({ severity }) => SEVERITIES.indexOf(severity));
      hold(
        order.every((rank, i) => rank >= 0 && (i === 0 || rank >= order[i - 1])),
        () => `severities ${order.join(', ')}`,
      );
      for (const check of checks) {
        holdText([checkReason(check), checkRemedy(check)].join(' '), check.code);
        for (const system of SYSTEMS) {
          holdText(checkNumbers(check, system), check.code);
          const { quantity, value, limit } = check;
          if (quantity === null || value === null || limit === null) continue;
          const shown = shownApart(quantity, value, limit, system);
          hold(shown.value !== shown.limit, () => `${check.code} shows ${value} as its limit ${limit}`);
        }
      }
    },
  },
  {
    name: 'the cutting template is drawn in numbers',
    every: 20,
    check: ({ build }) => {
      for (const system of SYSTEMS)
        holdText(templateSvg(build, templateWords(build, system, 'today', stampText(stampOf(build)))), 'template');
    },
  },
  {
    name: 'every part of the picture is a shape of finite points, unit normals and triangles that exist',
    every: 20,
    check: ({ build }) => {
      for (const id of PART_IDS) {
        const { positions, normals, indices } = PARTS[id].make(build);
        holdFinite({ positions, normals }, id);
        const vertices = positions.length / 3;
        hold(
          indices.every((index) => index < vertices),
          () => `${id}: a triangle of a vertex that is not there`,
        );
        for (let at = 0; at < normals.length; at += 3) {
          const length = Math.hypot(normals[at], normals[at + 1], normals[at + 2]);
          // Single precision, and normals that were turned once.
          hold(Math.abs(length - 1) < 1e-3, () => `${id}: normal ${at / 3} is ${length} long`);
        }
      }
    },
  },
];
