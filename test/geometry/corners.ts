/** Builds at the ends of the parameters' ranges that the shapes depend on, brought back to what can exist. */
import { checkBuild } from '../../src/neck/schema.ts';
import { defaultBuild, type Build } from '../../src/neck/build.ts';
import { PARAMETERS, type ParameterId } from '../../src/neck/parameters.ts';

/** Groups whose parameters change the shape of something that is drawn. */
const SHAPING = new Set(['neck', 'board', 'wire', 'slots', 'edges', 'strings']);

export interface Corner {
  readonly label: string;
  readonly build: Build;
}

/** What has to move along with a parameter for its extreme to be possible. */
const ALONG: Partial<Record<ParameterId, Partial<Build>>> = {
  fretCount: { scaleLengthMm: 800, crownWidthMm: 1.6, kerfMm: 0.55, studWidthMm: 0.7, bodyJointFret: 12 },
  bindingLineCount: { linesSawnThrough: 0 },
  boardThicknessMm: { thicknessFret1Mm: 24, thicknessFret12Mm: 26, slotDepthMm: 2.4 },
};

/** Each number at its least and its most (or as near as the other values allow), each choice in each of its values. */
export function corners(base: Build = defaultBuild()): Corner[] {
  const found: Corner[] = [];
  const add = (label: string, change: Partial<Build>): void => {
    const checked = checkBuild({ ...base, ...change });
    if (checked.ok) found.push({ label, build: checked.build });
  };
  for (const parameter of PARAMETERS) {
    if (!SHAPING.has(parameter.group) || /Blank|own/.test(parameter.id)) continue;
    if (parameter.kind === 'number') {
      for (const end of [parameter.min, parameter.max]) {
        // The farthest value towards the end of the range that can exist beside the others.
        const along = ALONG[parameter.id] ?? {};
        for (const share of [1, 0.9, 0.75, 0.5, 0.25]) {
          const value = parameter.default + (end - parameter.default) * share;
          const rounded = parameter.integer ? Math.round(value) : Number(value.toFixed(3));
          const before = found.length;
          add(`${parameter.id} ${rounded}`, { ...along, [parameter.id]: rounded });
          if (found.length > before) break;
        }
      }
    } else if (parameter.kind === 'choice') {
      for (const option of parameter.options) add(`${parameter.id} ${option}`, { [parameter.id]: option });
    }
  }
  const bound: Partial<Build> = { bindingLineCount: 5, linesSawnThrough: 3 };
  add('five lines, three sawn, conical', { ...bound, boardShape: 'cone' });
  add('flat saw cut in a tight radius', { slotBottom: 'flat', radiusNutMm: 184, slotDepthMm: 3.6 });
  add('slots that stop before the edge', { bridgeMm: 3 });
  add('slots that stop within a line', { bindingLineCount: 2, linesSawnThrough: 2, bridgeMm: 0.7 });
  add('slots that stop inside the binding', { bindingLineCount: 2, linesSawnThrough: 0, bridgeMm: 4 });
  add('tangs nipped short', { undercutTangs: true });
  add('one line, whole', { bindingLineCount: 1, linesSawnThrough: 0 });
  add('set heel, V', { heelStyle: 'set', backExponent: 1.4, heelThicknessMm: 40 });
  add('no chamfer, no inset', { chamferMm: 0, endInsetMm: 0 });
  return found;
}
