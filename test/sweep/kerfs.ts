/** One kerf for a way of seating, wherever it stands. */
import { tableCsv } from '../../src/fretwork/plan/csv.ts';
import { slotTable } from '../../src/fretwork/plan/tables.ts';
import { chamferLimitMm } from '../../src/fretwork/slots.ts';
import type { Build } from '../../src/neck/build.ts';
import { workingKerfMm, workingValue } from '../../src/neck/kerf.ts';
import { parameterById } from '../../src/neck/parameters.ts';
import { differingSettings } from '../../src/pages/compare/settings.ts';
import { valueRows } from '../../src/pages/papers/value-text.ts';
import { groupSummary } from '../../src/pages/workshop/controls/group-summary.ts';
import { parameterName } from '../../src/speech/names.ts';
import { displayScale, quantityText } from '../../src/speech/scale.ts';
import { predictionReport } from '../../src/verdict/report.ts';
import { sheetPlan } from '../../src/verdict/sheet-plan.ts';
import { waysOf } from '../../src/verdict/ways.ts';
import { hold, type Invariant } from './invariant.ts';

const SYSTEMS = ['metric', 'inch'] as const;

/** Files hold a millimetre to four digits: half of the last one, and rounding. */
const FILED_MM = 5.001e-5;

/** The law's own: a glue fit takes the whole tang, studs and all; pressing is done in the slot as it is. */
const kerfOf = ({ kerfMm, studWidthMm }: Pick<Build, 'kerfMm' | 'studWidthMm'>, method: Build['method']) =>
  method === 'glue' && studWidthMm > kerfMm ? studWidthMm : kerfMm;

/** Every number of a kerf on the page and its papers, as text. */
function holdTexts(build: Build, kerfMm: number): void {
  const parameter = parameterById('kerfMm');
  hold(parameter.kind === 'number', () => 'the kerf is a number');
  if (parameter.kind !== 'number') return;
  const label = parameterName('kerfMm');
  const other = { ...build, kerfMm: kerfMm + 0.01 };
  for (const system of SYSTEMS) {
    const text = quantityText(kerfMm, displayScale(parameter, system), system);
    const head = valueRows(build, system).find(({ id }) => id === 'slots')!;
    const row = head.rows.find((one) => one.label === label)?.text;
    hold(row === text, () => `${build.method}: the sheet's head says ${row}, not ${text}`);
    const compared = differingSettings([build, other], system)
      .flatMap(({ settings }) => settings)
      .find(({ id }) => id === 'kerfMm')?.texts[0];
    hold(compared === text, () => `${build.method}: the comparison says ${compared}, not ${text}`);
    const closed = groupSummary('slots', build, system);
    const short = text.replace(/\.?0+(?=\D*$)/, '');
    hold(closed.startsWith(short), () => `${build.method}: the closed group says ${closed}, not ${short}`);
  }
}

export const KERFS: readonly Invariant[] = [
  {
    name: 'a way of seating has one kerf: on the panel, the sheet, the steps, the drawing, in CSV and predict',
    every: 3,
    check: ({ build: drawn, prediction }) => {
      for (const build of waysOf(drawn).builds) {
        const { method } = build;
        const kerfMm = kerfOf(build, method);
        hold(
          workingKerfMm(build, method) === kerfMm,
          () => `${method}: ${workingKerfMm(build, method)}, not ${kerfMm}`,
        );
        hold(workingValue(build, 'kerfMm') === kerfMm, () => `${method}: the control says another kerf`);
        holdTexts(build, kerfMm);
        const reckoned = { build, prediction };
        const predicted = predictionReport(reckoned).methods[method].kerfMm;
        hold(Math.abs(predicted - kerfMm) <= FILED_MM, () => `${method}: predict says ${predicted}, not ${kerfMm}`);

        const ofFret = (fret: number) =>
          kerfOf(build.regions.findLast((r) => fret >= r.fromFret && fret <= r.toFret) ?? build, method);
        const kerfs = Array.from({ length: build.fretCount }, (_, index) => ofFret(index + 1));
        const { plan } = sheetPlan(reckoned);
        const step = plan.steps.find(({ id }) => id === 'saw')!.quantities.filter(({ key }) => key === 'kerfMm');
        const said = step.map(({ value }) => value);
        hold(
          said.every((value) => kerfs.includes(value)) && said.includes(Math.max(...kerfs)),
          () => `${method}: the step says ${said.join(' to ')}, slots are ${kerfs.join(', ')}`,
        );
        const table = slotTable(plan);
        const column = table.columns.indexOf('kerfMm');
        // Below its head, and below the zero fret where there is one.
        const csv = tableCsv(table)
          .trim()
          .split(/\r?\n/)
          .slice(build.zeroFret ? 2 : 1);
        for (const [index, wanted] of kerfs.entries()) {
          const written = Number(csv[index].split(',')[column]);
          hold(
            Math.abs(written - wanted) <= FILED_MM,
            () => `${method}: CSV says ${written} at fret ${index + 1}, not ${wanted}`,
          );
          const drawnMm = build.crownWidthMm - 2 * chamferLimitMm(build, index + 1);
          hold(
            Math.abs(drawnMm - wanted) <= 1e-9,
            () => `${method}: drawn ${drawnMm} at fret ${index + 1}, not ${wanted}`,
          );
        }
      }
    },
  },
];
