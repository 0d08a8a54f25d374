/** Alles auf Deutsch. */
import type { Catalogue } from '../catalogue.ts';
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
import { FRETWORK_SENTENCES } from './sentences/fretwork.ts';
import { MECHANICS_SENTENCES } from './sentences/mechanics.ts';
import * as scene from './scene.ts';
import * as share from './share.ts';
import * as signs from './signs.ts';
import * as uncertainty from './uncertainty.ts';

export const GERMAN: Catalogue = {
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
    ...FRETWORK_SENTENCES,
    ...MECHANICS_SENTENCES,
  },
};
