/** The room of the papers: a head with the way back, and the paper that is open. Loaded when it is first opened. */
import { useBackbow } from '../../state/store.ts';
import { SHEETS_WORDS } from '../../speech/en/pages/sheets.ts';
import { PLAN_WORDS } from '../../speech/en/pages/papers.ts';
import { SOLVER_WORDS } from '../../speech/en/workshop/solver.ts';
import { useNotComputed } from '../workshop/not-computed.tsx';
import { FilesPage } from './files-page.tsx';
import { PlanPage } from './plan-page.tsx';
import { UnitSwitch } from '../workshop/project/settings.tsx';
import { usePlaceManners } from './manners.ts';
import { goTo, hrefOf, SHEETS, type SheetId } from './route.ts';
import { TemplatePage } from './template-page.tsx';
import './sheets.css';
import './sheet-screen.css';
import './sheet-paper.css';

function Head({ sheet }: { readonly sheet: SheetId }) {
  return (
    <header className="sheets-bar">
      <button type="button" onClick={() => goTo(null)}>
        ‹ {SHEETS_WORDS.back}
      </button>
      <nav aria-label={SHEETS_WORDS.title}>
        {SHEETS.map((id) => (
          <a key={id} href={hrefOf(id)} aria-current={id === sheet ? 'page' : undefined}>
            {SHEETS_WORDS[id]}
          </a>
        ))}
      </nav>
      <UnitSwitch />
      {sheet === 'plan' && (
        <button type="button" className="sheets-print" title={PLAN_WORDS.printHint} onClick={() => window.print()}>
          {SHEETS_WORDS.print}
        </button>
      )}
    </header>
  );
}

export default function Sheets({ sheet }: { readonly sheet: SheetId }) {
  const solution = useBackbow((state) => state.solution);
  const stale = useBackbow((state) => state.solution !== null && state.solution.build !== state.build);
  const system = useBackbow((state) => state.unitSystem);
  const build = useBackbow((state) => state.solution?.build ?? state.build);
  const name = useBackbow((state) => state.build.name);
  const reason = useNotComputed();
  usePlaceManners(sheet, SHEETS_WORDS.documentTitle(name, SHEETS_WORDS[sheet]), 'sheet-title');
  return (
    <div className="sheets">
      <Head sheet={sheet} />
      <main>
        <output className="screen-only sheets-state">
          {solution
            ? stale && SHEETS_WORDS.stale
            : (reason && SOLVER_WORDS.notComputedWhy(reason)) || SHEETS_WORDS.working}
        </output>
        {solution && sheet === 'plan' && <PlanPage solution={solution} system={system} />}
        {sheet === 'template' && <TemplatePage build={build} system={system} />}
        {sheet === 'files' && <FilesPage build={build} solution={solution} system={system} />}
      </main>
    </div>
  );
}
