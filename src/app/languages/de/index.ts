/** Alles auf Deutsch. */
import type { Catalogue } from '../catalogue.ts';
import * as compare from './compare.ts';
import * as controls from './controls.ts';
import * as customer from './customer.ts';
import * as glossary from './glossary.ts';
import * as helpers from './helpers.ts';
import * as lessons from './lessons.ts';
import * as library from './library.ts';
import * as log from './log.ts';
import * as page from './page.ts';
import * as panels from './panels.ts';
import * as papers from './papers.ts';
import { FAILURES } from './sentences/failures.ts';
import { FRETWORK_SENTENCES } from './sentences/fretwork.ts';
import * as scene from './scene.ts';
import * as share from './share.ts';
import * as signs from './signs.ts';

export const GERMAN: Catalogue = {
  ...compare,
  ...controls,
  ...customer,
  ...glossary,
  ...helpers,
  ...lessons,
  ...library,
  ...log,
  ...page,
  ...panels,
  ...papers,
  ...scene,
  ...share,
  ...signs,
  SENTENCES: { ...FAILURES, ...FRETWORK_SENTENCES },
};
