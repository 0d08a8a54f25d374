/** The numbers of a solution as text: value, unit, word and detail apart, so that each can be set as it deserves. */
import { displayUnit, formatNumber, formatQuantity, toDisplay, type UnitSystem } from '../../build/units.ts';
import type { ReliefLine } from '../../mechanics/prediction-types.ts';
import type { Phase } from '../../state/rail.ts';
import type { Solution } from '../../state/solution-slice.ts';
import { bowKind, bowSize, BOW_MEANING, BOW_WORDS } from '../words/bow.ts';
import { READOUT_WORDS } from '../words/panels.ts';
import { timeText } from '../words/times.ts';

export interface FigureText {
  readonly id: string;
  readonly label: string;
  /** Undefined while it is being computed. */
  readonly value?: string;
  readonly unit?: string;
  readonly word?: string;
  readonly detail?: string;
  /** The part of the rail that the number belongs to. */
  readonly phase?: Phase;
}

/** Number and unit of "0.29 mm" apart. */
function parts(quantity: string): { value: string; unit: string } {
  const [value = '', unit = ''] = quantity.split('\u00a0');
  return { value, unit };
}

/** The fret nearest to a place on the board. */
export function nearestFret(fretXMm: readonly number[], xMm: number): number {
  let best = 0;
  for (let index = 1; index < fretXMm.length; index += 1) {
    if (Math.abs(fretXMm[index]! - xMm) < Math.abs(fretXMm[best]! - xMm)) best = index;
  }
  return best + 1;
}

function bowFigure(
  id: string,
  label: string,
  phase: Phase,
  line: ReliefLine | undefined,
  system: UnitSystem,
): FigureText {
  if (!line) return { id, label, phase };
  const kind = bowKind(line.extremeMm, system);
  return {
    id,
    label,
    phase,
    ...parts(bowSize(line.extremeMm, system)),
    word: BOW_WORDS[kind],
    detail: BOW_MEANING[kind],
  };
}

function forceFigure(forces: readonly number[] | undefined, system: UnitSystem): FigureText {
  const base = { id: 'force', label: READOUT_WORDS.force };
  if (!forces || forces.length === 0) return base;
  const mean = forces.reduce((sum, force) => sum + force, 0) / forces.length;
  const low = formatNumber(toDisplay(Math.min(...forces), 'N', system), 0);
  const high = formatQuantity(Math.max(...forces), 'N', 0, system);
  const isNone = Number(formatNumber(toDisplay(Math.max(...forces), 'N', system), 0)) === 0;
  return {
    ...base,
    value: formatNumber(toDisplay(mean, 'N', system), 0),
    unit: displayUnit('N', system).label,
    detail: isNone ? READOUT_WORDS.noForce : READOUT_WORDS.perFret(low, high),
  };
}

export function figuresOf(solution: Solution | null, system: UnitSystem): FigureText[] {
  const build = solution?.build;
  const chosen = build ? solution.prediction.methods[build.method] : undefined;
  const pull = solution ? parts(formatQuantity(solution.prediction.stringPullN, 'N', 0, system)) : {};
  return [
    bowFigure('fretted', READOUT_WORDS.fretted, 'frets', chosen?.fretted, system),
    bowFigure('strung', READOUT_WORDS.strung, 'strung', chosen?.strung, system),
    bowFigure(
      'settled',
      build ? READOUT_WORDS.settled(timeText(build.settleDays)) : READOUT_WORDS.settledPlain,
      'weeks',
      chosen?.settled,
      system,
    ),
    forceFigure(chosen?.wedgeForceN, system),
    {
      id: 'pull',
      label: READOUT_WORDS.pull,
      ...pull,
      ...(build ? { detail: READOUT_WORDS.strings(build.strings.length) } : {}),
    },
  ];
}
