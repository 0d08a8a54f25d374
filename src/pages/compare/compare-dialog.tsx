/** Two or three necks beside each other: picture, lines, numbers with their reasons, and what can be taken over. */
import { useEffect } from 'react';
import { lineAt } from '../../mechanics/states.ts';
import { LEAST_COMPARED, type Compared, type ComparedNeck } from '../../state/compare/comparison-slice.ts';
import { momentOf } from '../../verdict/rail.ts';
import { store, useBackbow } from '../../state/store.ts';
import { Dialog } from '../../kit/dialog/dialog.tsx';
import { railText } from '../workshop/rail/rail-text.ts';
import { bowText } from '../../speech/bow.ts';
import { failureText } from '../../speech/failures.ts';
import { problemTexts } from '../../speech/problems.ts';
import { ChooseNecks, compareWays } from './choose-necks.tsx';
import { CompareChart } from './compare-chart.tsx';
import { ComparePicture } from './compare-picture.tsx';
import { DifferenceTable } from './difference-table.tsx';
import { columnLabels } from './labels.ts';
import { lineStyles } from './line-styles.ts';
import { MomentControl } from './moment.tsx';
import { neckNumbers } from '../../verdict/compared-numbers.ts';
import { useCompared, useSame } from './use-compared.ts';
import { SettingsTable } from './settings-table.tsx';
import { ShareComparison } from './share-comparison.tsx';
import { useSolved } from './use-solved.ts';
import { COMPARE_WORDS } from '../../speech/en/pages/compare.ts';
import './compare.css';

function choose(place: number, label: string): void {
  const { notify, unitSystem } = store.getState();
  const outcome = store.getState().chooseColumn(place, COMPARE_WORDS.stepChoose(label));
  if (outcome.ok) notify('info', COMPARE_WORDS.chosen(label));
  else notify('error', COMPARE_WORDS.refused, problemTexts(outcome.problems, unitSystem));
}

interface NecksProps extends Compared {
  readonly labels: readonly string[];
}

/** Keeps a neck that follows the bench as it is now, or lets one that was kept follow it again. */
function Keep({ neck, label }: { readonly neck: ComparedNeck; readonly label: string }) {
  const { column, place } = neck;
  const isKept = column.follows === 'nothing';
  if (isKept && column.before === null) return null;
  return (
    <button
      type="button"
      aria-pressed={isKept}
      aria-label={COMPARE_WORDS.keepName(label)}
      onClick={() => store.getState().keepColumn(place, !isKept)}
    >
      {COMPARE_WORDS.keep}
    </button>
  );
}

/** What can be done with each neck. */
function NeckActions({ necks, labels, bench }: NecksProps) {
  return (
    <ul className="compare-columns compare-actions" data-count={labels.length}>
      {necks.map((neck, index) => {
        const label = labels[index];
        return (
          <li key={label}>
            <h3>{label}</h3>
            {index === bench ? (
              <p className="quiet">{COMPARE_WORDS.onBench}</p>
            ) : (
              <button
                type="button"
                aria-label={COMPARE_WORDS.chooseName(label)}
                onClick={() => choose(neck.place, label)}
              >
                {COMPARE_WORDS.choose}
              </button>
            )}
            <Keep neck={neck} label={label} />
            {index > 0 && (
              <button
                type="button"
                aria-label={COMPARE_WORDS.swapName(label)}
                onClick={() => store.getState().swapColumns(necks[0].place, neck.place)}
              >
                {COMPARE_WORDS.swap}
              </button>
            )}
          </li>
        );
      })}
    </ul>
  );
}

function Comparison(props: NecksProps) {
  const { necks: columns, labels } = props;
  const builds = useSame(columns.map(({ build }) => build));
  const system = useBackbow((state) => state.unitSystem);
  const rail = useBackbow((state) => state.rail);
  const railBuild = useBackbow((state) => state.build);
  const railPrediction = useBackbow((state) => state.solution?.prediction);
  const { necks, failure, retry } = useSolved(builds);
  const styles = lineStyles(builds);
  const known = necks.flatMap(({ prediction, uncertainty }, index) => {
    if (!prediction) return [];
    const build = builds[index];
    const moment = momentOf({ build, prediction }, rail);
    return [
      {
        build,
        prediction,
        label: labels[index],
        style: styles[index],
        line: lineAt(prediction, build.method, moment),
        numbers: neckNumbers(build, moment, prediction, uncertainty),
      },
    ];
  });
  const isKnown = known.length === builds.length;
  return (
    <>
      {failure !== null && (
        <p role="alert" className="refusal">
          {COMPARE_WORDS.failed(failureText(failure, system))}{' '}
          <button type="button" onClick={retry}>
            {COMPARE_WORDS.retry}
          </button>
        </p>
      )}
      <ComparePicture
        necks={isKnown ? known.map((neck) => ({ ...neck, says: bowText(neck.line.extremeMm, system) })) : null}
      />
      <MomentControl />
      {isKnown && (
        <CompareChart
          necks={known.map((neck) => ({ ...neck, band: neck.numbers.now.band }))}
          builds={known.map(({ build }) => build)}
          moment={railText(railBuild, rail, railPrediction)}
        />
      )}
      <NeckActions {...props} />
      {isKnown && (
        <DifferenceTable
          labels={labels}
          necks={known.map(({ numbers }) => numbers)}
          moment={railText(railBuild, rail, railPrediction)}
          system={system}
        />
      )}
      <SettingsTable {...props} builds={builds} />
      <ShareComparison builds={builds} />
    </>
  );
}

export function CompareDialog() {
  const { necks, bench } = useCompared();
  useEffect(() => {
    if (store.getState().columns.length === 0) compareWays();
  }, []);
  return (
    <Dialog title={COMPARE_WORDS.title} onClose={store.getState().closeDialog} className="compare">
      <p className="quiet">{COMPARE_WORDS.intro}</p>
      <ChooseNecks />
      {necks.length < LEAST_COMPARED ? (
        <p>{COMPARE_WORDS.onlyOneWay}</p>
      ) : (
        <Comparison necks={necks} labels={columnLabels(necks)} bench={bench} />
      )}
    </Dialog>
  );
}
