/** The shell: head, picture with its numbers, rail and chart, and the controls. */
import { lazy, Suspense } from 'react';
import { ChecksList } from '../panels/checks/checks-list.tsx';
import { BowChart } from '../panels/chart/bow-chart.tsx';
import { HelpDialog } from '../panels/help/help-dialog.tsx';
import { Notices } from '../panels/notices/notices.tsx';
import { NewVersion } from '../panels/offline/new-version.tsx';
import { ProjectBar } from '../panels/project/project-bar.tsx';
import { useProjectDrop } from '../panels/project/use-drop.ts';
import { Rail } from '../panels/rail/rail.tsx';
import { Readouts } from '../panels/readouts/readouts.tsx';
import { useSheet } from '../panels/sheets/route.ts';
import { Welcome } from '../panels/welcome/welcome.tsx';
import { CONTROL_WORDS } from '../panels/words/controls.ts';
import { PROJECT_WORDS } from '../panels/words/panels.ts';
import { SHEETS_WORDS } from '../panels/words/papers.ts';
import { Dialogs } from './dialogs.tsx';
import { LiveDescription } from './live-description.tsx';
import { PartBoundary } from './part-boundary.tsx';
import { Picture } from './picture.tsx';
import { useAppearance } from './use-appearance.ts';
import { useBackbow } from '../state/store.ts';
import { APP_WORDS } from './words.ts';

const Sheets = lazy(() => import('../panels/sheets/sheets.tsx'));
const LessonPanel = lazy(async () => ({ default: (await import('../panels/lessons/lesson-panel.tsx')).LessonPanel }));
const Controls = lazy(() => import('../panels/controls/controls.tsx'));

export function App() {
  const palette = useAppearance();
  const isOver = useProjectDrop();
  const sheet = useSheet();
  const isInLesson = useBackbow((state) => state.lesson !== null);
  const isGuessing = useBackbow((state) => state.lesson?.asking ?? false);
  return (
    <>
      <div className="workbench" data-away={sheet !== null || undefined} data-guessing={isGuessing || undefined}>
        <a className="skip" href="#controls">
          {APP_WORDS.skip}
        </a>
        <ProjectBar />
        {isInLesson ? (
          <PartBoundary>
            <Suspense>
              <LessonPanel />
            </Suspense>
          </PartBoundary>
        ) : (
          <Welcome />
        )}
        <main className="stage">
          <Readouts />
          <ChecksList />
          <Picture palette={palette} />
          <Rail />
          <BowChart />
        </main>
        <aside id="controls" className="controls" aria-label={CONTROL_WORDS.title} tabIndex={-1}>
          <h2 className="visually-hidden">{CONTROL_WORDS.title}</h2>
          <PartBoundary>
            <Suspense fallback={<p className="quiet">{APP_WORDS.loading}</p>}>
              <Controls />
            </Suspense>
          </PartBoundary>
        </aside>
      </div>
      {sheet !== null && (
        <PartBoundary>
          <Suspense fallback={<p className="quiet">{SHEETS_WORDS.loading}</p>}>
            <Sheets sheet={sheet} />
          </Suspense>
        </PartBoundary>
      )}
      <Notices />
      <NewVersion />
      <HelpDialog />
      <PartBoundary>
        <Dialogs />
      </PartBoundary>
      <LiveDescription />
      {isOver && <div className="drop-here">{PROJECT_WORDS.drop}</div>}
    </>
  );
}
