/** Checks of the fret ends: shelf, nip, bevel beside the outer strings. */
import { isHeatPressed } from './cautions.ts';
import { sheetMaterial } from '../../neck/materials/binding.ts';
import { bindingInUse, type Build } from '../../neck/build.ts';
import { glueById } from '../../neck/glues.ts';
import { above, atLeast, atMost, below, check, GEOMETRY, NO_MEASURE, PRACTICE, worst } from './check-making.ts';
import type { Check } from './check-types.ts';
import type { FretEnd } from '../ends.ts';
import * as limits from './limits.ts';

function shelf(build: Build, stopped: readonly FretEnd[]): Check[] {
  const shows = stopped.filter((end) => above(end.slotUncoveredMm, 0));
  const first = shows[0];
  if (first) {
    const measure = atMost('endInsetMm', first.wholeWidthMm, build.endInsetMm);
    const frets = shows.map((end) => end.fret);
    return [check('slot-shows', 'warn', 'endInsetMm', measure, GEOMETRY, { frets })];
  }
  const short = worst(
    stopped,
    (end) => below(end.shelfMm, limits.LEAST_SHELF_MM),
    (end) => end.shelfMm,
    'least',
  );
  if (!short) return [];
  const measure = atLeast('shelfMm', limits.LEAST_SHELF_MM, short.value);
  return [check('shelf-short', 'warn', 'endInsetMm', measure, PRACTICE, { frets: short.frets })];
}

function nip(build: Build, nipped: readonly FretEnd[]): Check[] {
  if (nipped.length === 0 || !below(build.nipClearanceMm, limits.LEAST_NIP_CLEARANCE_MM)) return [];
  const measure = atLeast('nipClearanceMm', limits.LEAST_NIP_CLEARANCE_MM, build.nipClearanceMm);
  return [check('tight-nip', 'warn', 'nipClearanceMm', measure, PRACTICE)];
}

function outerString(build: Build, ends: readonly FretEnd[]): Check[] {
  const beside = (end: FretEnd) => build.stringEdgeMm - (end.boardHalfMm - end.crownTopHalfMm);
  const near = worst(ends, (end) => below(beside(end), limits.LEAST_BESIDE_STRING_MM), beside, 'least');
  if (!near) return [];
  const measure = atLeast('besideStringMm', limits.LEAST_BESIDE_STRING_MM, near.value);
  return [check('string-near-end', 'warn', 'endBevelDegrees', measure, PRACTICE, { frets: near.frets })];
}

/** Binding that does not stand what comes to it: the solvent that takes the glue off, its water, or heat. */
function harmedBinding(build: Build): Check[] {
  const glue = build.method === 'press' ? undefined : glueById(build.glueKind);
  const brings = { solvent: glue?.isHard.is, water: glue?.isWatery.is, heat: isHeatPressed(build) };
  const sheets = bindingInUse(build).flatMap(({ material }) => sheetMaterial(material) ?? []);
  return (['solvent', 'water', 'heat'] as const).flatMap((variant) => {
    const about = [...new Set(sheets.filter(({ harmedBy }) => harmedBy.includes(variant)).map(({ id }) => id))];
    if (!brings[variant] || about.length === 0) return [];
    return [check('binding-harmed', 'note', 'binding', NO_MEASURE, PRACTICE, { variant, about })];
  });
}

export function endChecks(build: Build, ends: readonly FretEnd[]): Check[] {
  const stopped = ends.filter((end) => !end.slotOpen);
  const nipped = ends.filter((end) => end.nipMm > 0);
  return [...shelf(build, stopped), ...nip(build, nipped), ...harmedBinding(build), ...outerString(build, ends)];
}
