/** Checks of blanks that were measured for their stiffness. */
import { blankId, blankOf, BLANK_PARTS, FAR_BLANK_RATIO } from '../../neck/blanks.ts';
import type { Build } from '../../neck/build.ts';
import type { BlankPart } from '../../neck/parameters.ts';
import { basedOn } from '../facts.ts';
import { above, atLeast, atMost, below, check, GEOMETRY, NO_MEASURE, PRACTICE } from './check-making.ts';
import type { Check } from './check-types.ts';
import type { BlankModulus, CheckNumbers } from './checks-from-forces.ts';
import { MOST_SAG_OF_SPAN, WOOD_MODULUS_GPA } from './limits.ts';

/** The blank on its supports: it must reach over both, and sag so little that the beam formula holds. */
function bendingChecks(build: Build, part: BlankPart): Check[] {
  const blank = blankOf(build, part);
  if (blank.state !== 'whole' || blank.test !== 'sag') return [];
  const { LengthMm, SpanMm, SagMm } = blank.values;
  const [span, sag] = [blankId(part, 'SpanMm'), blankId(part, 'SagMm')];
  const variant = part;
  const mostSagMm = MOST_SAG_OF_SPAN * SpanMm;
  return [
    ...(above(SpanMm, LengthMm)
      ? [check('blank-span', 'stop', span, atMost(span, LengthMm, SpanMm), GEOMETRY, { variant })]
      : []),
    ...(above(SagMm, mostSagMm)
      ? [check('blank-sags-far', 'warn', sag, atMost(sag, mostSagMm, SagMm), basedOn('large-deflection'), { variant })]
      : []),
  ];
}

/** A slip in one of its numbers, or another wood: no wood is so soft or so stiff, or this one hardly ever. */
function stiffnessChecks(part: BlankPart, { measured, species }: BlankModulus): Check[] {
  const parameter = `${part}BlankTest` as const;
  const basis = basedOn('wood-stiffness');
  const variant = part;
  const against = (least: number, most: number) =>
    below(measured, least)
      ? atLeast('blankModulusGPa', least, measured)
      : above(measured, most)
        ? atMost('blankModulusGPa', most, measured)
        : undefined;
  const impossible = against(WOOD_MODULUS_GPA.least, WOOD_MODULUS_GPA.most);
  if (impossible) return [check('blank-implausible', 'stop', parameter, impossible, basis, { variant })];
  const unlikely = against(species / FAR_BLANK_RATIO, species * FAR_BLANK_RATIO);
  return unlikely ? [check('blank-unlikely', 'warn', parameter, unlikely, basis, { variant })] : [];
}

export function blankChecks(build: Build, { blankModulusGPa }: CheckNumbers): Check[] {
  return BLANK_PARTS.flatMap((part) => {
    const blank = blankOf(build, part);
    if (blank.state === 'incomplete') {
      return [check('blank-incomplete', 'note', blank.missing[0], NO_MEASURE, PRACTICE, { variant: part })];
    }
    const modulus = blankModulusGPa?.[part];
    return [...bendingChecks(build, part), ...(modulus ? stiffnessChecks(part, modulus) : [])];
  });
}
