/** Two or three necks beside each other: picture, lines, numbers with their reasons, and what can be taken over. */
import { useEffect } from 'react';
import type { Build } from '../../neck/build.ts';
import { lineAt } from '../../mechanics/states.ts';
import { momentAt } from '../../state/rail.ts';
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
import { neckLabels } from './labels.ts';
import { lineStyles } from './line-styles.ts';
import { MomentControl } from './moment.tsx';
import { neckNumbers } from './numbers.ts';
import { comparison, useComparison } from './page-comparison.ts';
import { SettingsTable } from './settings-table.tsx';
import { ShareComparison } from './share-comparison.tsx';
import { useSolved } from './use-solved.ts';
import { COMPARE_WORDS } from '../../speech/en/compare.ts';
import './compare.css';

function choose(place: number, label: string): void {
  const { notify, unitSystem } = store.getState();
  const outcome = comparison.choose(place, COMPARE_WORDS.stepChoose(label));
  if (outcome.ok) notify('info', COMPARE_WORDS.chosen(label));
  else notify('error', COMPARE_WORDS.refused, problemTexts(outcome.problems, unitSystem));
}

interface NecksProps {
  readonly builds: readonly Build[];
  readonly labels: readonly string[];
  readonly bench: number | null;
}

/** What can be done with each neck. */
function NeckActions({ labels, bench }: NecksProps) {
  return (
    <ul className="compare-columns compare-actions" data-count={labels.length}>
      {labels.map((label, place) => (
        <li key={label}>
          <h3>{label}</h3>
          {place === bench ? (
            <p className="quiet">{COMPARE_WORDS.onBench}</p>
          ) : (
            <button type="button" aria-label={COMPARE_WORDS.chooseName(label)} onClick={() => choose(place, label)}>
              {COMPARE_WORDS.choose}
            </button>
          )}
          {place > 0 && (
            <button type="button" aria-label={COMPARE_WORDS.swapName(label)} onClick={() => comparison.swap(0, place)}>
              {COMPARE_WORDS.swap}
            </button>
          )}
        </li>
      ))}
    </ul>
  );
}

function Compared(props: NecksProps) {
  const { builds, labels } = props;
  const system = useBackbow((state) => state.unitSystem);
  const rail = useBackbow((state) => state.rail);
  const railBuild = useBackbow((state) => state.build);
  const { necks, failure, retry } = useSolved(builds);
  const styles = lineStyles(builds);
  const known = necks.flatMap(({ prediction, uncertainty }, index) => {
    if (!prediction) return [];
    const build = builds[index]!;
    const moment = momentAt(build, rail);
    return [
      {
        build,
        prediction,
        label: labels[index]!,
        style: styles[index]!,
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
          moment={railText(railBuild, rail)}
        />
      )}
      <NeckActions {...props} />
      {isKnown && (
        <DifferenceTable
          labels={labels}
          necks={known.map(({ numbers }) => numbers)}
          moment={railText(railBuild, rail)}
          system={system}
        />
      )}
      <SettingsTable {...props} />
      <ShareComparison builds={builds} />
    </>
  );
}

export function CompareDialog() {
  const builds = useComparison((state) => state.builds);
  const bench = useComparison((state) => state.bench);
  useEffect(() => {
    if (comparison.state.getState().builds.length === 0) compareWays(store.getState().build);
  }, []);
  return (
    <Dialog title={COMPARE_WORDS.title} onClose={store.getState().closeDialog} className="compare">
      <p className="quiet">{COMPARE_WORDS.intro}</p>
      <ChooseNecks />
      {builds.length === 0 ? (
        <p>{COMPARE_WORDS.onlyOneWay}</p>
      ) : (
        <Compared builds={builds} labels={neckLabels(builds)} bench={bench} />
      )}
    </Dialog>
  );
}
