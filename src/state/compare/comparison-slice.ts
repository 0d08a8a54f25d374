/**
 * Two or three necks beside each other, each in a column. A column follows the bench, as it is or seated in one way, until
 * it is kept as it is, which is a deliberate act and remembers when; or it holds a neck from elsewhere, which stays.
 * Nothing here changes the build but choosing and copying, each one step of the build's own history.
 */
import type { StateCreator } from 'zustand/vanilla';
import type { Build } from '../../neck/build.ts';
import type { Method } from '../../mechanics/prediction-types.ts';
import { seatedAs } from '../../verdict/ways.ts';
import type { Outcome } from '../build-slice.ts';
import { sameBuild } from '../history.ts';
import { MOST_SHARED } from '../share/shared.ts';
import type { BackbowState } from '../store.ts';

/** As many as one link holds. */
export const MOST_COMPARED = MOST_SHARED;
export const LEAST_COMPARED = 2;

/** The neck on the bench, or that neck seated in one way. */
export type Following = { readonly follows: 'bench' } | { readonly follows: 'way'; readonly method: Method };

export interface Kept {
  readonly follows: 'nothing';
  readonly build: Build;
  /** When it was kept from the bench, in ms since 1970; null for a neck that came from elsewhere. */
  readonly since: number | null;
  /** What it followed until then. */
  readonly before: Following | null;
}

export type Column = Following | Kept;

export const ON_BENCH: Column = { follows: 'bench' };

export function wayColumn(method: Method): Column {
  return { follows: 'way', method };
}

/** A checked build from elsewhere: a preset, the library, a link. */
export function columnOf(build: Build): Column {
  return { follows: 'nothing', build, since: null, before: null };
}

/** What a column shows. */
export interface ComparedNeck {
  readonly column: Column;
  /** Place of the column, from 0. */
  readonly place: number;
  readonly build: Build;
}

export interface Compared {
  /** In the order of the columns, without ways that are not possible with the neck on the bench. The others are measured against the first. */
  readonly necks: readonly ComparedNeck[];
  /** Which of the necks is the one on the bench; null when none is. */
  readonly bench: number | null;
}

export interface ComparisonSlice {
  /** None yet, or two or three. */
  readonly columns: readonly Column[];
  /** Columns as they stood beside another build on the bench: undo and redo bring them back with it. */
  readonly columnsBeside: ReadonlyMap<Build, readonly Column[]>;
  /** @throws {RangeError} for fewer than two columns, or more than three */
  readonly setColumns: (columns: readonly Column[]) => void;
  /** Fills a place, or the one after the last. @throws {RangeError} for a place that there is not */
  readonly putColumn: (place: number, column: Column) => void;
  /** @throws {RangeError} when fewer than two would stay, and as `putColumn` */
  readonly removeColumn: (place: number) => void;
  readonly swapColumns: (one: number, other: number) => void;
  /** Keeps a column as it is now, or has one that was kept follow the bench again. */
  readonly keepColumn: (place: number, kept: boolean) => void;
  /** Makes a column's neck the one on the bench, as one step of the history. */
  readonly chooseColumn: (place: number, label: string) => Outcome;
  /** Gives the neck on the bench some settings of a column's, as one step of the history. */
  readonly copyFromColumn: (place: number, settings: readonly (keyof Build)[], label: string) => Outcome;
}

function shownBy(column: Column, bench: Build): Build | undefined {
  switch (column.follows) {
    case 'bench':
      return bench;
    case 'way':
      return seatedAs(bench, column.method);
    case 'nothing':
      return column.build;
  }
}

/** What the columns show beside a build on the bench. */
export function comparedNecks(columns: readonly Column[], bench: Build): Compared {
  const necks = columns.flatMap((column, place): ComparedNeck[] => {
    const build = shownBy(column, bench);
    return build ? [{ column, place, build }] : [];
  });
  const following = necks.findIndex(({ column, build }) => column.follows !== 'nothing' && build === bench);
  const found = following >= 0 ? following : necks.findIndex(({ build }) => sameBuild(build, bench));
  return { necks, bench: found < 0 ? null : found };
}

export const createComparisonSlice =
  (now: () => number = Date.now): StateCreator<BackbowState, [], [], ComparisonSlice> =>
  (set, get, api) => {
    api.subscribe(({ build, columns, columnsBeside }, before) => {
      const beside = build === before.build ? undefined : columnsBeside.get(build);
      if (beside && beside !== columns) set({ columns: beside });
    });

    function setChecked(columns: readonly Column[]): void {
      if (columns.length < LEAST_COMPARED || columns.length > MOST_COMPARED) {
        throw new RangeError(`${columns.length} necks to compare: it takes ${LEAST_COMPARED} to ${MOST_COMPARED}`);
      }
      set({ columns, columnsBeside: new Map() });
    }

    function at(place: number): Column {
      const column = get().columns[place];
      if (!column) throw new RangeError(`there is no neck in place ${place + 1} of the comparison`);
      return column;
    }

    function shownAt(place: number): Build {
      const shown = shownBy(at(place), get().build);
      if (!shown) throw new RangeError(`the neck in place ${place + 1} of the comparison is not possible`);
      return shown;
    }

    /** A column that no longer follows the bench; one that shows nothing goes on following. */
    function kept(column: Column, bench: Build): Column {
      const build = shownBy(column, bench);
      if (column.follows === 'nothing' || !build) return column;
      return { follows: 'nothing', build, since: now(), before: column };
    }

    function replaced(place: number, column: Column): Column[] {
      return get().columns.with(place, column);
    }

    /** The columns once the neck in one of them is on the bench: the others stay as they are. */
    function columnsOnce(place: number): readonly Column[] {
      const { build, columns } = get();
      // Other ways of this neck are ways of it still; only what meant the neck as it was must say so.
      if (at(place).follows !== 'nothing') {
        return columns.map((column) => (column.follows === 'bench' ? wayColumn(build.method) : column));
      }
      return columns.map((column, index) => (index === place ? ON_BENCH : kept(column, build)));
    }

    return {
      columns: [],
      columnsBeside: new Map(),
      setColumns: setChecked,
      putColumn: (place, column) => {
        if (place === get().columns.length) return setChecked([...get().columns, column]);
        at(place);
        return setChecked(replaced(place, column));
      },
      removeColumn: (place) => {
        at(place);
        setChecked(get().columns.toSpliced(place, 1));
      },
      swapColumns: (one, other) => {
        const [first, second] = [at(one), at(other)];
        setChecked(replaced(one, second).with(other, first));
      },
      keepColumn: (place, isKept) => {
        const column = at(place);
        if (isKept) setChecked(replaced(place, kept(column, get().build)));
        else if (column.follows === 'nothing' && column.before) setChecked(replaced(place, column.before));
      },
      chooseColumn: (place, label) => {
        const { build: before, columns: old, columnsBeside, replaceBuild } = get();
        const columns = columnsOnce(place);
        const outcome = replaceBuild(shownAt(place), label);
        const { build } = get();
        if (outcome.ok && build !== before) {
          set({ columns, columnsBeside: new Map([...columnsBeside, [before, old], [build, columns]]) });
        }
        return outcome;
      },
      copyFromColumn: (place, settings, label) => {
        const from = shownAt(place);
        return get().change(Object.fromEntries(settings.map((key) => [key, from[key]])), label);
      },
    };
  };
