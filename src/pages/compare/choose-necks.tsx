/** Which necks stand beside each other. */
import { useEffect } from 'react';
import type { Build } from '../../neck/build.ts';
import { isolated } from '../../speech/isolate.ts';
import { PRESETS } from '../../neck/presets.ts';
import { LEAST_COMPARED, MOST_COMPARED } from '../../state/compare/comparison.ts';
import { sameBuild } from '../../state/history.ts';
import { buildOf } from '../../state/library/entry.ts';
import { useBackbow } from '../../state/store.ts';
import { ActionButton } from '../workshop/actions/action-button.tsx';
import { library, useLibrary } from '../library/page-library.ts';
import { waysOf } from '../share/shared-of.ts';
import { METHOD_WORDS } from '../../speech/en/workshop.ts';
import { problemTexts } from '../../speech/problems.ts';
import { neckLabels } from './labels.ts';
import { comparison, useComparison } from './page-comparison.ts';
import { COMPARE_WORDS } from '../../speech/en/compare.ts';
import { PRESET_WORDS } from '../../speech/en/necks.ts';
import { presetBuild } from '../../speech/names.ts';

interface Candidate {
  readonly key: string;
  readonly label: string;
  readonly build: Build;
}

interface CandidateGroup {
  readonly label: string;
  readonly candidates: readonly Candidate[];
}

function useCandidates(): readonly CandidateGroup[] {
  const bench = useBackbow((state) => state.build);
  const entries = useLibrary((state) => state.entries);
  useEffect(() => {
    void library.refresh();
  }, []);
  const saved = (entries ?? []).flatMap((entry): Candidate[] => {
    if (entry.deletedAt !== null) return [];
    const checked = buildOf(entry);
    if (!checked.ok) return [];
    const { build } = checked;
    return [{ key: `saved:${entry.id}`, label: `${isolated(build.name)}, ${METHOD_WORDS[build.method].label}`, build }];
  });
  return [
    {
      label: COMPARE_WORDS.groups.bench,
      candidates: [
        { key: 'bench', label: COMPARE_WORDS.bench(bench.name), build: bench },
        ...waysOf(bench)
          .builds.filter(({ method }) => method !== bench.method)
          .map((build) => ({
            key: `way:${build.method}`,
            label: COMPARE_WORDS.way(METHOD_WORDS[build.method].label),
            build,
          })),
      ],
    },
    {
      label: COMPARE_WORDS.groups.presets,
      candidates: PRESETS.map((preset) => ({
        key: `preset:${preset.id}`,
        label: PRESET_WORDS[preset.id].label,
        build: presetBuild(preset),
      })),
    },
    ...(saved.length > 0 ? [{ label: COMPARE_WORDS.groups.saved, candidates: saved }] : []),
  ];
}

const NONE = 'none';
const AS_IS = 'as-is';

interface PlaceProps {
  readonly place: number;
  readonly groups: readonly CandidateGroup[];
}

function Place({ place, groups }: PlaceProps) {
  const builds = useComparison((state) => state.builds);
  const build = builds[place];
  const all = groups.flatMap(({ candidates }) => candidates);
  const found = build && all.find((candidate) => sameBuild(candidate.build, build));
  const mayBeEmpty = place >= LEAST_COMPARED;
  return (
    <label className="field">
      <span>{COMPARE_WORDS.places[place]}</span>
      <select
        value={build ? (found?.key ?? AS_IS) : NONE}
        onChange={(event) => {
          const { value } = event.currentTarget;
          const chosen = all.find(({ key }) => key === value);
          if (chosen) comparison.put(place, chosen.build);
          else if (value === NONE && build) comparison.remove(place);
        }}
      >
        {mayBeEmpty && <option value={NONE}>{COMPARE_WORDS.none}</option>}
        {build && !found && <option value={AS_IS}>{COMPARE_WORDS.asIs(neckLabels(builds)[place]!)}</option>}
        {groups.map(({ label, candidates }) => (
          <optgroup key={label} label={label}>
            {candidates.map((candidate) => (
              <option key={candidate.key} value={candidate.key}>
                {candidate.label}
              </option>
            ))}
          </optgroup>
        ))}
      </select>
    </label>
  );
}

/** Puts the neck on the bench beside itself, seated in the other ways. @returns whether there is anything to compare */
export function compareWays(bench: Build): boolean {
  const { builds } = waysOf(bench);
  if (builds.length < LEAST_COMPARED) return false;
  comparison.compare(builds);
  return true;
}

export function ChooseNecks() {
  const bench = useBackbow((state) => state.build);
  const system = useBackbow((state) => state.unitSystem);
  const groups = useCandidates();
  const { builds, impossible } = waysOf(bench);
  return (
    <section aria-label={COMPARE_WORDS.necks} className="compare-choose">
      <div className="button-row">
        <button type="button" disabled={builds.length < LEAST_COMPARED} onClick={() => compareWays(bench)}>
          {COMPARE_WORDS.threeWays}
        </button>
        <span className="button-row compare-undo">
          <ActionButton id="undo" />
          <ActionButton id="redo" />
        </span>
      </div>
      {impossible.map(({ method, problems }) => (
        <p key={method} className="quiet">
          {COMPARE_WORDS.cannot(METHOD_WORDS[method].label, problemTexts(problems, system).join(' '))}
        </p>
      ))}
      <div className="compare-places">
        {Array.from({ length: MOST_COMPARED }, (_, place) => (
          <Place key={place} place={place} groups={groups} />
        ))}
      </div>
    </section>
  );
}
