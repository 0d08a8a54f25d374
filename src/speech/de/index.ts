/** Alles auf Deutsch. */
import type { Catalogue } from '../catalogue.ts';
import * as cautions from './fretwork/cautions.ts';
import * as checks from './fretwork/checks.ts';
import * as planTables from './fretwork/plan-tables.ts';
import * as quantities from './neck/quantities.ts';
import * as runAhead from './fretwork/run-ahead.ts';
import * as sources from './neck/sources.ts';
import * as steps from './fretwork/steps.ts';
import * as wire from './fretwork/wire.ts';
import * as blanks from './workshop/blanks.ts';
import * as compare from './pages/compare.ts';
import * as controls from './workshop/controls.ts';
import * as customer from './pages/customer.ts';
import * as failures from './workshop/failures.ts';
import * as glossary from './pages/glossary.ts';
import * as helpers from './pages/helpers.ts';
import * as lessons from './pages/lessons.ts';
import * as backup from './pages/backup.ts';
import * as library from './pages/library.ts';
import * as biteStanding from './pages/bite-standing.ts';
import * as biteNotice from './pages/bite-notice.ts';
import * as gripStanding from './pages/grip-standing.ts';
import * as log from './pages/log.ts';
import * as hearing from './pages/hearing.ts';
import * as logProblems from './pages/log-problems.ts';
import * as verdict from './workshop/verdict.ts';
import * as measure from './pages/measure.ts';
import * as materials from './neck/materials.ts';
import * as necks from './neck/necks.ts';
import * as parameters from './neck/parameters.ts';
import * as problems from './neck/problems.ts';
import * as bench from './bench/bench.ts';
import * as stock from './bench/stock.ts';
import * as page from './workshop/page.ts';
import * as panels from './workshop/panels.ts';
import * as papers from './pages/papers.ts';
import * as predict from './workshop/predict.ts';
import * as rod from './workshop/rod.ts';
import * as matches from './workshop/matches.ts';
import * as room from './workshop/room.ts';
import * as scene from './workshop/scene.ts';
import * as strips from './pages/strips.ts';
import * as share from './pages/share.ts';
import * as signs from './neck/signs.ts';
import * as stops from './workshop/stops.ts';
import * as studs from './workshop/studs.ts';
import * as uncertainty from './workshop/uncertainty.ts';

export const GERMAN: Catalogue = {
  ...cautions,
  ...checks,
  ...planTables,
  ...quantities,
  ...runAhead,
  ...sources,
  ...steps,
  ...wire,
  ...blanks,
  ...bench,
  ...stock,
  ...compare,
  ...controls,
  ...customer,
  ...failures,
  ...glossary,
  ...helpers,
  ...lessons,
  ...backup,
  ...library,
  ...biteStanding,
  ...biteNotice,
  ...gripStanding,
  ...log,
  ...hearing,
  ...strips,
  ...logProblems,
  ...materials,
  ...verdict,
  ...measure,
  ...necks,
  ...parameters,
  ...problems,
  ...page,
  ...panels,
  ...papers,
  ...predict,
  ...rod,
  ...matches,
  ...room,
  ...scene,
  ...share,
  ...signs,
  ...stops,
  ...studs,
  ...uncertainty,
};
