/**
 * What another language has to have: every table under its id, with the type of the English one. A table
 * or an entry that is missing does not compile; a test holds that no table of the source is missing here.
 */
import type * as bench from './en/bench/bench.ts';
import type * as stock from './en/bench/stock.ts';
import type * as materials from './en/neck/materials.ts';
import type * as necks from './en/neck/necks.ts';
import type * as parameters from './en/neck/parameters.ts';
import type * as problems from './en/neck/problems.ts';
import type * as quantity from './en/neck/quantity.ts';
import type * as log from './en/pages/log.ts';
import type * as biteStanding from './en/pages/bite-standing.ts';
import type * as biteNotice from './en/pages/bite-notice.ts';
import type * as gripStanding from './en/pages/grip-standing.ts';
import type * as hearing from './en/pages/hearing.ts';
import type * as logProblems from './en/pages/log-problems.ts';
import type * as cautions from './en/fretwork/cautions.ts';
import type * as checks from './en/fretwork/checks.ts';
import type * as planTables from './en/fretwork/plan-tables.ts';
import type * as quantities from './en/neck/quantities.ts';
import type * as runAhead from './en/fretwork/run-ahead.ts';
import type * as sources from './en/neck/sources.ts';
import type * as steps from './en/fretwork/steps.ts';
import type * as wire from './en/fretwork/wire.ts';
import type * as compare from './en/pages/compare.ts';
import type * as customer from './en/pages/customer.ts';
import type * as blanks from './en/workshop/blanks.ts';
import type * as failures from './en/workshop/failures.ts';
import type * as uncertainty from './en/workshop/uncertainty.ts';
import type * as glossary from './en/pages/glossary.ts';
import type * as lessonTexts from './en/pages/lesson-texts.ts';
import type * as lessons from './en/pages/lessons.ts';
import type * as library from './en/pages/library.ts';
import type * as backup from './en/pages/backup.ts';
import type * as licences from './en/pages/licences.ts';
import type * as course from './en/workshop/course.ts';
import type * as proof from './en/pages/proof.ts';
import type * as refret from './en/pages/refret.ts';
import type * as reseat from './en/pages/reseat.ts';
import type * as predict from './en/workshop/predict.ts';
import type * as verdict from './en/workshop/verdict.ts';
import type * as measure from './en/pages/measure.ts';
import type * as strips from './en/pages/strips.ts';
import type * as share from './en/pages/share.ts';
import type * as wanted from './en/pages/answers.ts';
import type * as welcome from './en/pages/welcome.ts';
import type * as actions from './en/workshop/actions.ts';
import type * as keys from './en/workshop/keys.ts';
import type * as project from './en/workshop/languages.ts';
import type * as bow from './en/workshop/bow.ts';
import type * as controls from './en/workshop/controls.ts';
import type * as offline from './en/workshop/offline.ts';
import type * as panels from './en/workshop/workshop.ts';
import type * as papers from './en/pages/sheets.ts';
import type * as sheets from './en/pages/papers.ts';
import type * as rod from './en/workshop/rod.ts';
import type * as matches from './en/workshop/matches.ts';
import type * as room from './en/workshop/room.ts';
import type * as scene from './en/workshop/scene.ts';
import type * as drafts from './en/pages/drafts.ts';
import type * as solver from './en/workshop/solver.ts';
import type * as app from './en/workshop/app.ts';
import type * as studs from './en/workshop/studs.ts';
import type * as stops from './en/workshop/stops.ts';

/** The words of one file of tables. */
type TablesOf<Module> = Pick<
  Module,
  Extract<keyof Module, `${string}_WORDS` | `${string}_MEANING` | `${string}_TEXTS`>
>;

export type Catalogue = Pick<typeof quantity, 'NUMBER_SIGNS'> &
  TablesOf<typeof blanks> &
  TablesOf<typeof bench> &
  TablesOf<typeof stock> &
  TablesOf<typeof quantity> &
  TablesOf<typeof parameters> &
  TablesOf<typeof materials> &
  TablesOf<typeof necks> &
  TablesOf<typeof problems> &
  TablesOf<typeof log> &
  TablesOf<typeof biteStanding> &
  TablesOf<typeof biteNotice> &
  TablesOf<typeof gripStanding> &
  TablesOf<typeof hearing> &
  TablesOf<typeof strips> &
  TablesOf<typeof logProblems> &
  TablesOf<typeof cautions> &
  TablesOf<typeof checks> &
  TablesOf<typeof planTables> &
  TablesOf<typeof quantities> &
  TablesOf<typeof runAhead> &
  TablesOf<typeof sources> &
  TablesOf<typeof steps> &
  TablesOf<typeof wire> &
  TablesOf<typeof stops> &
  TablesOf<typeof studs> &
  TablesOf<typeof compare> &
  TablesOf<typeof customer> &
  TablesOf<typeof failures> &
  TablesOf<typeof uncertainty> &
  TablesOf<typeof glossary> &
  TablesOf<typeof lessonTexts> &
  TablesOf<typeof lessons> &
  TablesOf<typeof library> &
  TablesOf<typeof backup> &
  TablesOf<typeof licences> &
  TablesOf<typeof course> &
  TablesOf<typeof proof> &
  TablesOf<typeof keys> &
  TablesOf<typeof project> &
  TablesOf<typeof refret> &
  TablesOf<typeof reseat> &
  TablesOf<typeof predict> &
  TablesOf<typeof verdict> &
  TablesOf<typeof measure> &
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
  TablesOf<typeof rod> &
  TablesOf<typeof matches> &
  TablesOf<typeof room> &
  TablesOf<typeof scene> &
  TablesOf<typeof drafts> &
  TablesOf<typeof solver> &
  TablesOf<typeof app>;
