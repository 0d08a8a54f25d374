/** The numbers of a solution as text: value, unit, word, detail and band apart, so that each can be set as it deserves. */
import type { ComputedKey } from '../../../neck/quantities.ts';
import type { UnitSystem } from '../../../neck/units.ts';
import { formatNumber } from '../../../speech/quantity.ts';
import { numberOf, textOf } from '../../../speech/quantity-text.ts';
import type { ReliefLine } from '../../../mechanics/prediction-types.ts';
import type { ReadoutBand, Uncertainty } from '../../../mechanics/uncertainty/types.ts';
import type { Phase } from '../../../verdict/rail.ts';
import type { Solution } from '../../../state/solution-slice.ts';
import { BOW_MEANING, BOW_WORDS } from '../../../speech/en/workshop/bow.ts';
import { bowBandText, bowKind, bowSize } from '../../../speech/bow.ts';
import { UNCERTAIN_INPUT_WORDS } from '../../../speech/en/workshop/uncertainty.ts';
import { READOUT_WORDS } from '../../../speech/en/workshop/workshop.ts';
import { isWithinReach } from '../../../mechanics/inversion/rod.ts';
import { rodPercentText, turnsNumber } from '../../../speech/rod.ts';
import { ROD_WORDS } from '../../../speech/en/workshop/rod.ts';
import { meanOfFrets, rodForTarget } from '../../../verdict/job-figures.ts';
import { timeText } from '../../../speech/times.ts';

export interface FigureText {
  readonly id: string;
  readonly key: ComputedKey;
  readonly label: string;
  /** Undefined while it is being computed. */
  readonly value?: string;
  readonly unit?: string;
  readonly word?: string;
  readonly detail?: string;
  /** The 5–95 % band; undefined while it is being computed, null where the number has none. */
  readonly band?: string | null | undefined;
  /** What makes most of the band, largest first. */
  readonly drivers?: ReadoutBand['drivers'] | undefined;
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
    if (Math.abs(fretXMm[index] - xMm) < Math.abs(fretXMm[best] - xMm)) best = index;
  }
  return best + 1;
}

interface Named {
  readonly id: string;
  readonly key: ComputedKey;
  readonly label: string;
  readonly phase: Phase;
}

function bowFigure(
  named: Named,
  line: ReliefLine | undefined,
  band: ReadoutBand | undefined,
  system: UnitSystem,
): FigureText {
  if (!line) return named;
  const kind = bowKind(line.extremeMm, system);
  return {
    ...named,
    ...parts(bowSize(line.extremeMm, system)),
    word: BOW_WORDS[kind],
    detail: BOW_MEANING[kind],
    band: band && bowBandText(band.p05, band.p95, system),
    drivers: band?.drivers,
  };
}

function forceFigure(
  forces: readonly number[] | undefined,
  band: ReadoutBand | undefined,
  system: UnitSystem,
): FigureText {
  const base = { id: 'force', key: 'meanWedgeForceN' as const, label: READOUT_WORDS.force };
  if (!forces || forces.length === 0) return base;
  const shown = (force: number) => numberOf('wedgeForceN', force, system);
  const isNone = Number(shown(Math.max(...forces))) === 0;
  const mean = parts(textOf('meanWedgeForceN', meanOfFrets(forces), system));
  return {
    ...base,
    ...mean,
    detail: isNone
      ? READOUT_WORDS.noForce
      : READOUT_WORDS.perFret(shown(Math.min(...forces)), shown(Math.max(...forces))),
    band: isNone ? null : band && READOUT_WORDS.band(shown(band.p05), `${shown(band.p95)}\u00a0${mean.unit}`),
    drivers: band?.drivers,
  };
}

/** "how hard the studs bite 52 %, stiffness of the neck 21 %". */
export function driversText(drivers: ReadoutBand['drivers']): string {
  return drivers
    .map(({ input, share }) => `${UNCERTAIN_INPUT_WORDS[input]} ${formatNumber(share * 100, 0)}\u00a0%`)
    .join(', ');
}

/** What makes most of the band, as a sentence; none for a band without width, which a glue fit has before the strings. */
export function driversSentence(drivers: ReadoutBand['drivers'] | undefined): string {
  if (!drivers) return READOUT_WORDS.bandComing;
  return drivers.length === 0 ? '' : READOUT_WORDS.drivers(driversText(drivers));
}

/** The rod setting that brings the settled neck to the relief wanted. */
function rodFigure(solution: Solution | null, uncertainty: Uncertainty | null, system: UnitSystem): FigureText[] {
  if (solution && solution.prediction.rod.kind === 'none') return [];
  const base = { id: 'rod', key: 'turnsOfNut' as const, label: READOUT_WORDS.rodNeeded, phase: 'rod' as const };
  if (!solution) return [base];
  const { build } = solution;
  const rod = rodForTarget(solution);
  const { nut } = rod;
  const band = uncertainty?.methods[build.method].rodPercentForTarget;
  const target = textOf('targetReliefMm', build.targetReliefMm, system);
  return [
    {
      ...base,
      label: READOUT_WORDS.rodFor(target),
      ...(isWithinReach(rod)
        ? { ...parts(turnsNumber(nut.turns)), word: ROD_WORDS.ways[nut.way] }
        : { value: '–', word: READOUT_WORDS.outOfReach }),
      detail: READOUT_WORDS.ofRange(rodPercentText(nut.percent)),
      band: band && READOUT_WORDS.rodChance(rodPercentText(100 * band.chance)),
      drivers: band?.drivers,
    },
  ];
}

export function figuresOf(
  solution: Solution | null,
  uncertainty: Uncertainty | null,
  system: UnitSystem,
): FigureText[] {
  const build = solution?.build;
  const chosen = build ? solution.prediction.methods[build.method] : undefined;
  const bands = build ? uncertainty?.methods[build.method] : undefined;
  const pull = solution ? parts(textOf('stringPullN', solution.prediction.stringPullN, system)) : {};
  const settled = build ? READOUT_WORDS.settled(timeText(build.settleDays)) : READOUT_WORDS.settledPlain;
  return [
    bowFigure(
      { id: 'fretted', key: 'frettedReliefMm', label: READOUT_WORDS.fretted, phase: 'frets' },
      chosen?.fretted,
      bands?.fretted,
      system,
    ),
    bowFigure(
      { id: 'strung', key: 'strungReliefMm', label: READOUT_WORDS.strung, phase: 'strung' },
      chosen?.strung,
      bands?.strung,
      system,
    ),
    bowFigure(
      { id: 'settled', key: 'settledReliefMm', label: settled, phase: 'weeks' },
      chosen?.settled,
      bands?.settled,
      system,
    ),
    ...rodFigure(solution, uncertainty, system),
    forceFigure(chosen?.wedgeForceN, bands?.wedgeForceN, system),
    {
      id: 'pull',
      key: 'stringPullN',
      label: READOUT_WORDS.pull,
      ...pull,
      ...(build ? { detail: READOUT_WORDS.strings(build.strings.length), band: null } : {}),
    },
  ];
}
