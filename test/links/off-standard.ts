/** One build with every parameter off its standard, so that nothing in a format can be left out unseen. */
import { defaultBuild, type Build } from '../../src/neck/build.ts';
import type { Parameter } from '../../src/neck/parameter-kinds.ts';
import { ownWoodsWith } from '../../src/neck/materials/own-woods.ts';
import { PARAMETERS } from '../../src/neck/parameters.ts';
import { checkBuild } from '../../src/neck/schema.ts';
import { stringsOf } from '../../src/neck/strings.ts';

/** Other values than the standard, the nearest first. */
function others(parameter: Parameter): (number | string | boolean)[] {
  if (parameter.kind === 'flag') return [!parameter.default];
  if (parameter.kind === 'choice') {
    return parameter.options.filter((value) => value !== parameter.default);
  }
  const { min, max, step, digits, default: standard } = parameter;
  return [1, -1, 2, -2, 5, -5, 20, -20, 80, -80]
    .map((steps) => Number((standard + steps * step).toFixed(digits)))
    .filter((value) => value >= min && value <= max && value !== standard);
}

/** @throws Error naming the parameters for which no other value makes a build that can exist */
export function offStandard(): Build {
  const standard = defaultBuild();
  let build: Build = {
    ...standard,
    name: 'Nº 7, “every value” — צוואר 𝔫 <b>&amp;</b>',
    notes: 'Two lines,\nand a tab\tin the second; 100 % #hash ?query.',
    laminates: [
      { wood: 'black-walnut', share: 0.5, widthMm: 12 },
      { wood: 'sugar-maple', share: 0.125, widthMm: 2.5 },
      { wood: 'own', share: 0.375 },
    ],
    ownWoods: ownWoodsWith(
      { name: 'Board “7”', modulusGPa: 12.5, densityKgM3: 905, crushingMPa: 71, like: 'wenge' },
      { modulusGPa: 9.1 },
    ),
    binding: standard.binding.map(({ thicknessMm }, index) => ({
      thicknessMm: thicknessMm + 0.1,
      ...(index === 1 ? {} : { material: index === 0 ? 'wenge' : 'celluloid' }),
      colour: `#0${index}a0f0`,
    })),
    strings: stringsOf('six-10-46', 'six-standard').map((string) => ({ ...string, pitch: string.pitch - 2 })),
  };
  const untried = () =>
    (PARAMETERS as readonly Parameter[]).filter(({ id }) => build[id as keyof Build] === standard[id as keyof Build]);
  // Some can only move after others have: a second and a third round.
  for (let round = 0; round < 4; round += 1) {
    for (const parameter of untried()) {
      for (const value of others(parameter)) {
        const checked = checkBuild({ ...build, [parameter.id]: value });
        if (!checked.ok) continue;
        build = checked.build;
        break;
      }
    }
  }
  const region = {
    fromFret: 2,
    toFret: 5,
    kerfMm: build.kerfMm,
    tangWidthMm: build.tangWidthMm,
    studWidthMm: build.studWidthMm,
  };
  const startingReliefMm = Array.from({ length: build.fretCount }, (_, index) => (index % 2 === 0 ? 0.05 : -0.123));
  const checked = checkBuild({ ...build, regions: [region], startingReliefMm });
  if (!checked.ok) throw new Error(JSON.stringify(checked.problems));
  build = checked.build;
  const left = untried().map(({ id }) => id);
  if (left.length > 0) throw new Error(`still at their standard: ${left.join(', ')}`);
  return build;
}
