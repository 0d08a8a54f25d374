/** The shell: head, picture with its numbers, rail and chart, and the controls. */
import { lazy, Suspense, useCallback, useState } from 'react';
import { Notices } from '../kit/notices/notices.tsx';
import { NewVersion } from '../pages/workshop/offline/new-version.tsx';
import { ProjectBar } from '../pages/workshop/project/project-bar.tsx';
import { useLanguage } from '../kit/use-language.ts';
import { isFirstVisit, rememberVisit } from '../pages/workshop/welcome/visit.ts';
import { useFileDrop } from '../kit/use-drop.ts';
import { Rail } from '../pages/workshop/rail/rail.tsx';
import { usePlace } from '../pages/papers/route.ts';
import { CONTROL_WORDS } from '../speech/en/workshop/controls.ts';
import { PROJECT_WORDS } from '../speech/en/workshop/workshop.ts';
import { SHEETS_WORDS } from '../speech/en/pages/sheets.ts';
import { Dialogs } from './dialogs.tsx';
import { LiveDescription } from './live-description.tsx';
import { PartBoundary } from './part-boundary.tsx';
import { PictureBar } from './picture-tools.tsx';
import { Picture } from './picture.tsx';
import { useAppearance } from './use-appearance.ts';
import { readProjectFile } from '../pages/workshop/project/project-file.ts';
import { store, useBackbow } from '../state/store.ts';
import { APP_WORDS } from '../speech/en/workshop/app.ts';

const Sheets = lazy(() => import('../pages/papers/sheets.tsx'));
const BenchPage = lazy(async () => ({ default: (await import('../pages/bench/bench-page.tsx')).BenchPage }));
const LessonPanel = lazy(async () => ({ default: (await import('../pages/lessons/lesson-panel.tsx')).LessonPanel }));
// Asked for at once, beside the picture.
const evidence = import('./evidence.tsx');
const Verdict = lazy(async () => ({ default: (await evidence).Verdict }));
const Evidence = lazy(async () => ({ default: (await evidence).Evidence }));
const HelpDialog = lazy(async () => ({ default: (await import('../pages/about/help/help-dialog.tsx')).HelpDialog }));
const Welcome = lazy(async () => ({ default: (await import('../pages/workshop/welcome/welcome.tsx')).Welcome }));
const Controls = lazy(() => import('../pages/workshop/controls/controls.tsx'));

const openDropped = (file: File) => void readProjectFile(store, file);

export function App() {
  // Another language draws the whole page anew and throws nothing of it away: what is open, typed or drawn stays.
  useLanguage();
  const palette = useAppearance();
  const isOver = useFileDrop(openDropped);
  const place = usePlace();
  const isInLesson = useBackbow((state) => state.lesson !== null);
  const [isWelcoming, setWelcoming] = useState(isFirstVisit);
  const leaveWelcome = useCallback(() => {
    rememberVisit();
    setWelcoming(false);
  }, []);
  const isHelping = useBackbow((state) => state.helpOpen);
  const isGuessing = useBackbow((state) => state.lesson?.asking ?? false);
  return (
    <>
      <div className="workbench" data-away={place !== null || undefined} data-guessing={isGuessing || undefined}>
        <a className="skip" href="#controls">
          {APP_WORDS.skip}
        </a>
        <ProjectBar />
        <main className="stage">
          <div className="hero">
            <PartBoundary>
              <Suspense fallback={<div className="verdict-room" />}>
                <Verdict />
              </Suspense>
            </PartBoundary>
            <Picture palette={palette} />
          </div>
          <PictureBar />
          <div className="evidence">
            <Rail />
            <PartBoundary>
              <Suspense>
                <Evidence />
              </Suspense>
            </PartBoundary>
          </div>
          <div className="side" data-lesson={isInLesson || undefined}>
            {isInLesson ? (
              <PartBoundary>
                <Suspense>
                  <LessonPanel />
                </Suspense>
              </PartBoundary>
            ) : (
              <PartBoundary>
                <Suspense>{isWelcoming && <Welcome leave={leaveWelcome} />}</Suspense>
              </PartBoundary>
            )}
            <section id="controls" className="controls" aria-label={CONTROL_WORDS.title} tabIndex={-1}>
              <h2 className="visually-hidden">{CONTROL_WORDS.title}</h2>
              <PartBoundary>
                <Suspense fallback={<p className="quiet">{APP_WORDS.loading}</p>}>
                  <Controls />
                </Suspense>
              </PartBoundary>
            </section>
          </div>
        </main>
      </div>
      {place !== null && (
        <PartBoundary>
          <Suspense fallback={<p className="quiet">{SHEETS_WORDS.loading}</p>}>
            {place.at === 'bench' ? <BenchPage job={place.job} /> : <Sheets sheet={place.at} />}
          </Suspense>
        </PartBoundary>
      )}
      <Notices>
        <NewVersion />
      </Notices>
      <PartBoundary>
        <Suspense>{isHelping && <HelpDialog />}</Suspense>
        <Dialogs />
      </PartBoundary>
      <LiveDescription />
      {isOver && <div className="drop-here">{PROJECT_WORDS.drop}</div>}
    </>
  );
}
