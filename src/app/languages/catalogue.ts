/**
 * What another language has to have: every table under its id, with the type of the English one, and the sentences. A
 * table or an entry that is missing does not compile; a test holds that no table of the source is missing here.
 */
import type * as strings from '../../build/strings.ts';
import type * as units from '../../build/units.ts';
import type * as log from '../../panels/bench-log/words.ts';
import type * as compare from '../../panels/compare/words.ts';
import type * as customer from '../../panels/customer/words.ts';
import type * as glossary from '../../panels/glossary/words.ts';
import type * as lessonTexts from '../../panels/lessons/texts.ts';
import type * as lessons from '../../panels/lessons/words.ts';
import type * as library from '../../panels/library/words.ts';
import type * as licences from '../../panels/licences/words.ts';
import type * as course from '../../panels/over-time/words.ts';
import type * as proof from '../../panels/proof/words.ts';
import type * as refret from '../../panels/refret/words.ts';
import type * as share from '../../panels/share/words.ts';
import type * as wanted from '../../panels/wanted/words.ts';
import type * as welcome from '../../panels/welcome/words.ts';
import type * as actions from '../../panels/words/actions.ts';
import type * as keys from '../../panels/actions/words.ts';
import type * as project from '../../panels/project/words.ts';
import type * as bow from '../../panels/words/bow.ts';
import type * as controls from '../../panels/words/controls.ts';
import type * as offline from '../../panels/words/offline.ts';
import type * as panels from '../../panels/words/panels.ts';
import type * as papers from '../../panels/words/papers.ts';
import type * as sheets from '../../panels/words/sheets.ts';
import type * as scene from '../../scene/words.ts';
import type * as drafts from '../../state/library/words.ts';
import type * as solver from '../../state/words.ts';
import type * as app from '../words.ts';

/** Texts of another language by the English ones, values as {0}, {1} …; see `say` and `sayText`. */
export type Sentences = Readonly<Record<string, string>>;

/** The words of one file of tables. */
type TablesOf<Module> = Pick<
  Module,
  Extract<keyof Module, `${string}_WORDS` | `${string}_MEANING` | `${string}_TEXTS`>
>;

export type Catalogue = Pick<typeof strings, 'CONSTRUCTION_LABELS' | 'NOTE_NAMES'> &
  Pick<typeof units, 'NUMBER_SIGNS' | 'UNIT_WORDS'> &
  TablesOf<typeof log> &
  TablesOf<typeof compare> &
  TablesOf<typeof customer> &
  TablesOf<typeof glossary> &
  TablesOf<typeof lessonTexts> &
  TablesOf<typeof lessons> &
  TablesOf<typeof library> &
  TablesOf<typeof licences> &
  TablesOf<typeof course> &
  TablesOf<typeof proof> &
  TablesOf<typeof keys> &
  TablesOf<typeof project> &
  TablesOf<typeof refret> &
  TablesOf<typeof share> &
  TablesOf<typeof wanted> &
  TablesOf<typeof welcome> &
  TablesOf<typeof actions> &
  TablesOf<typeof bow> &
  TablesOf<typeof controls> &
  TablesOf<typeof offline> &
  TablesOf<typeof panels> &
  TablesOf<typeof papers> &
  TablesOf<typeof sheets> &
  TablesOf<typeof scene> &
  TablesOf<typeof drafts> &
  TablesOf<typeof solver> &
  TablesOf<typeof app> & { readonly SENTENCES: Sentences };
