/** Alles auf Deutsch. */
import type { Catalogue } from '../catalogue.ts';
import * as cautions from './cautions.ts';
import * as checks from './checks.ts';
import * as planTables from './plan-tables.ts';
import * as quantities from './quantities.ts';
import * as runAhead from './run-ahead.ts';
import * as sources from './sources.ts';
import * as steps from './steps.ts';
import * as wire from './wire.ts';
import * as compare from './compare.ts';
import * as controls from './controls.ts';
import * as customer from './customer.ts';
import * as failures from './failures.ts';
import * as glossary from './glossary.ts';
import * as helpers from './helpers.ts';
import * as lessons from './lessons.ts';
import * as library from './library.ts';
import * as log from './log.ts';
import * as materials from './materials.ts';
import * as necks from './necks.ts';
import * as parameters from './parameters.ts';
import * as problems from './problems.ts';
import * as page from './page.ts';
import * as panels from './panels.ts';
import * as papers from './papers.ts';
import * as predict from './predict.ts';
import { MECHANICS_SENTENCES } from './sentences/mechanics.ts';
import * as scene from './scene.ts';
import * as share from './share.ts';
import * as signs from './signs.ts';
import * as uncertainty from './uncertainty.ts';

export const GERMAN: Catalogue = {
  ...cautions,
  ...checks,
  ...planTables,
  ...quantities,
  ...runAhead,
  ...sources,
  ...steps,
  ...wire,
  ...compare,
  ...controls,
  ...customer,
  ...failures,
  ...glossary,
  ...helpers,
  ...lessons,
  ...library,
  ...log,
  ...materials,
  ...necks,
  ...parameters,
  ...problems,
  ...page,
  ...panels,
  ...papers,
  ...predict,
  ...scene,
  ...share,
  ...signs,
  ...uncertainty,
  SENTENCES: {
    ...MECHANICS_SENTENCES,
  },
};
