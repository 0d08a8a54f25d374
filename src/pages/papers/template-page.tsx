/** The cutting template: its pages on the screen, printed at full size, or saved as one drawing. */
import { useMemo, useState } from 'react';
import type { Build } from '../../neck/build.ts';
import type { UnitSystem } from '../../neck/units.ts';
import { PAPERS, templatePages, type Paper } from '../../fretwork/plan/template.ts';
import { TEMPLATE_WORDS } from '../../speech/en/pages/papers.ts';
import { useStamp } from './stamp/use-stamp.ts';
import { useToday } from './use-today.ts';
import { inWholePixels } from './whole-pixels.ts';
import { templatePageRules, usePageRules } from './page-rules.ts';
import { saveTemplate } from './downloads.ts';
import { templateWords } from './template-words.ts';

const PAPER_IDS = Object.keys(PAPERS) as readonly Paper[];

const asAddress = (svg: string) => `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`;

interface TemplatePageProps {
  readonly build: Build;
  readonly system: UnitSystem;
}

export function TemplatePage({ build, system }: TemplatePageProps) {
  const [paper, setPaper] = useState<Paper>(system === 'inch' ? 'letter' : 'a4');
  const date = useToday();
  const stamp = useStamp(build);
  const pages = useMemo(() => {
    return templatePages(build, templateWords(build, system, date, stamp), paper).map(({ svg }) => inWholePixels(svg));
  }, [build, system, paper, date, stamp]);
  usePageRules(templatePageRules(paper));
  const { label } = PAPERS[paper];
  return (
    <article className="template" aria-labelledby="sheet-title">
      <header className="screen-only">
        <h1 id="sheet-title" tabIndex={-1}>
          {TEMPLATE_WORDS.title}
        </h1>
        <p>{TEMPLATE_WORDS.intro}</p>
        <div className="button-row">
          <label>
            {TEMPLATE_WORDS.paper}{' '}
            <select value={paper} onChange={(event) => setPaper(event.currentTarget.value as Paper)}>
              {PAPER_IDS.map((id) => (
                <option key={id} value={id}>
                  {PAPERS[id].label}
                </option>
              ))}
            </select>
          </label>
          <button type="button" onClick={() => window.print()}>
            {TEMPLATE_WORDS.print}
          </button>
          <button type="button" onClick={() => saveTemplate(build, system, date)}>
            {TEMPLATE_WORDS.save}
          </button>
        </div>
        <p>
          {TEMPLATE_WORDS.pages(pages.length, label)} {pages.length > 1 ? TEMPLATE_WORDS.join : ''}
        </p>
      </header>
      <ol className="template-pages">
        {pages.map(({ svg, widthPx, heightPx }, index) => (
          <li key={index}>
            <img
              src={asAddress(svg)}
              width={widthPx}
              height={heightPx}
              alt={TEMPLATE_WORDS.page(index + 1, pages.length)}
            />
          </li>
        ))}
      </ol>
    </article>
  );
}
