/** The words on the cutting template. */
import type { Build } from '../../neck/build.ts';
import type { UnitSystem } from '../../neck/units.ts';
import { textOf } from '../../speech/quantity-text.ts';
import { PROGRAM_VERSION } from '../../neck/version.ts';
import type { TemplateWords } from '../../fretwork/plan/template.ts';
import { SHEETS_WORDS } from '../../speech/en/pages/sheets.ts';
import { STAMP_WORDS, TEMPLATE_WORDS } from '../../speech/en/pages/papers.ts';

/** What is written on the template. @param date as printed @param stamp of its numbers */
export function templateWords(build: Build, system: UnitSystem, date: string, stamp: string): TemplateWords {
  const heading = TEMPLATE_WORDS.heading(
    build.name,
    SHEETS_WORDS.version(PROGRAM_VERSION),
    date,
    STAMP_WORDS.stamp(stamp),
  );
  return {
    heading,
    page: (index, count) => TEMPLATE_WORDS.sheet(heading, index, count),
    advice: TEMPLATE_WORDS.advice,
    join: TEMPLATE_WORDS.joinHere,
    nut: TEMPLATE_WORDS.nut,
    position: (xMm) => textOf('fretXMm', xMm, system),
  };
}
