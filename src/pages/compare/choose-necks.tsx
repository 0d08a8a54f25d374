/** Which necks stand beside each other. */
import { useEffect } from 'react';
import { isolated } from '../../speech/isolate.ts';
import { PRESETS } from '../../neck/presets.ts';
import {
  columnOf,
  LEAST_COMPARED,
  MOST_COMPARED,
  ON_BENCH,
  wayColumn,
  type Column,
} from '../../state/compare/comparison-slice.ts';
import { sameBuild } from '../../state/history.ts';
import { buildOf } from '../../state/library/entry.ts';
import { store, useBackbow } from '../../state/store.ts';
import { ActionButton } from '../workshop/actions/action-button.tsx';
import { library, useLibrary } from '../library/page-library.ts';
import { waysOf } from '../../verdict/ways.ts';
import { METHOD_WORDS } from '../../speech/en/workshop/workshop.ts';
import { problemTexts } from '../../speech/problems.ts';
import { columnLabels } from './labels.ts';
import { useCompared } from './use-compared.ts';
import { COMPARE_WORDS } from '../../speech/en/pages/compare.ts';
import { PRESET_WORDS } from '../../speech/en/neck/necks.ts';
import { presetBuild } from '../../speech/names.ts';

interface Candidate {
  readonly key: string;
  readonly label: string;
  readonly column: Column;
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
    return [
      {
        key: `saved:${entry.id}`,
        label: `${isolated(build.name)}, ${METHOD_WORDS[build.method].label}`,
        column: columnOf(build),
      },
    ];
  });
  return [
    {
      label: COMPARE_WORDS.groups.bench,
      candidates: [
        { key: 'bench', label: COMPARE_WORDS.bench(bench.name), column: ON_BENCH },
        ...waysOf(bench).builds.map(({ method }) => ({
          key: `way:${method}`,
          label: COMPARE_WORDS.way(METHOD_WORDS[method].label),
          column: wayColumn(method),
        })),
      ],
    },
    {
      label: COMPARE_WORDS.groups.presets,
      candidates: PRESETS.map((preset) => ({
        key: `preset:${preset.id}`,
        label: PRESET_WORDS[preset.id].label,
        column: columnOf(presetBuild(preset)),
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

/** Does a candidate fill a column as it is filled? */
function isSameColumn(one: Column, other: Column): boolean {
  if (one.follows === 'nothing') {
    return other.follows === 'nothing' && other.since === null && sameBuild(one.build, other.build);
  }
  return one.follows === other.follows && (one.follows === 'bench' || one.method === (other as typeof one).method);
}

function Place({ place, groups }: PlaceProps) {
  const column = useBackbow((state) => state.columns[place]);
  const { necks } = useCompared();
  const at = necks.findIndex((neck) => neck.place === place);
  const all = groups.flatMap(({ candidates }) => candidates);
  const found = column && all.find((candidate) => isSameColumn(candidate.column, column));
  const { putColumn, removeColumn } = store.getState();
  const mayBeEmpty = place >= LEAST_COMPARED;
  return (
    <label className="field">
      <span>{COMPARE_WORDS.places[place]}</span>
      <select
        value={column ? (found?.key ?? AS_IS) : NONE}
        onChange={(event) => {
          const { value } = event.currentTarget;
          const chosen = all.find(({ key }) => key === value);
          if (chosen) putColumn(place, chosen.column);
          else if (value === NONE && column) removeColumn(place);
        }}
      >
        {mayBeEmpty && <option value={NONE}>{COMPARE_WORDS.none}</option>}
        {column && !found && <option value={AS_IS}>{columnLabels(necks)[at]}</option>}
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

/** Puts the neck on the bench beside itself, seated in each way, where there are at least two. */
export function compareWays(): void {
  const { build, setColumns } = store.getState();
  const { builds } = waysOf(build);
  if (builds.length >= LEAST_COMPARED) setColumns(builds.map(({ method }) => wayColumn(method)));
}

export function ChooseNecks() {
  const bench = useBackbow((state) => state.build);
  const system = useBackbow((state) => state.unitSystem);
  const groups = useCandidates();
  const { builds, impossible } = waysOf(bench);
  return (
    <section aria-label={COMPARE_WORDS.necks} className="compare-choose">
      <div className="button-row">
        <button type="button" disabled={builds.length < LEAST_COMPARED} onClick={compareWays}>
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
