/** The verdict above the picture: one line of what to do, what comes of it and how sure that is. */
import { useEffect, useMemo, useRef, useState } from 'react';
import { useAnswer } from '../../../state/answers/use-answer.ts';
import { currentBands, type Solution } from '../../../state/solution-slice.ts';
import { useFollowed } from '../../../state/follow.ts';
import { store, useBackbow } from '../../../state/store.ts';
import { onLanguage } from '../../../speech/language.ts';
import { VERDICT_WORDS } from '../../../speech/en/workshop/verdict.ts';
import { leastChangeText, spokenVerdict, verdictClauses, type Clause } from '../../../speech/answers/verdict.ts';
import { changeOf } from '../../../verdict/in-short/least-change.ts';
import type { Uncertainty } from '../../../mechanics/uncertainty/types.ts';
import { USUAL_DIRECTION } from '../../../verdict/set-up-figures.ts';
import { feelOf, verdictOf, type Feel, type Verdict as Said } from '../../../verdict/in-short/verdict.ts';
import { useCoarse } from '../../../kit/use-coarse.ts';
import { useMedia } from '../../../kit/use-media.ts';
import { useReveal } from '../controls/reveal-store.ts';
import './verdict.css';

/** Longer than a prediction takes to follow a slider, ms. */
const REST_MS = 250;
const SPOKEN_REST_MS = 1200;
const HAND = { strength: 'medium', direction: USUAL_DIRECTION } as const;
/** Where the window is narrow the rest of it stands with what it rests on, so that the neck stays in sight. */
const WIDE = '(min-width: 62rem)';
/** What decides and how it plays have a line of their own where the whole of the rest fits on two. */
const ROOMY = '(min-width: 110rem)';
const SHORT: ReadonlySet<Clause['id']> = new Set<Clause['id']>(['not', 'expect', 'rod']);
const QUIET: ReadonlySet<Clause['id']> = new Set<Clause['id']>(['decides', 'feel']);

/** A solution once nothing has moved for a moment; null until then. */
function useRested(solution: Solution | null): Solution | null {
  const [rested, setRested] = useState<Solution | null>(null);
  useEffect(() => {
    const timer = setTimeout(() => setRested(solution), REST_MS);
    return () => clearTimeout(timer);
  }, [solution]);
  return rested === solution ? rested : null;
}

/** Of each solution, for both places that say a part of it where the window is narrow. */
const verdicts = new WeakMap<Solution, { readonly uncertainty: Uncertainty | null; readonly verdict: Said }>();
const feels = new WeakMap<Solution, Feel>();

function verdictFor(solution: Solution, uncertainty: Uncertainty | null): Said {
  const known = verdicts.get(solution);
  if (known?.uncertainty === uncertainty) return known.verdict;
  const verdict = verdictOf(solution, uncertainty);
  verdicts.set(solution, { uncertainty, verdict });
  return verdict;
}

function feelFor(solution: Solution): Feel {
  const feel = feels.get(solution) ?? feelOf(solution, HAND);
  feels.set(solution, feel);
  return feel;
}

interface Known {
  readonly verdict: Said;
  readonly clauses: readonly Clause[];
  readonly isStale: boolean;
}

function useVerdict(): Known | null {
  const solution = useFollowed((state) => state.solution);
  const system = useFollowed((state) => state.unitSystem);
  const uncertainty = useFollowed(currentBands);
  const isStale = useBackbow((state) => solution?.build !== state.build);
  const rested = useRested(solution);
  const verdict = solution && verdictFor(solution, uncertainty);
  const feel = rested && feelFor(rested);
  return verdict && { verdict, clauses: verdictClauses(verdict, feel, system), isStale };
}

function open(clause: Clause): void {
  if (!clause.opens) return;
  if ('origin' in clause.opens) store.getState().showOrigin(clause.opens.origin);
  else useReveal.getState().reveal(clause.opens.control);
}

/** With a mouse each clause is a way to what it rests on; fingers find the same in the figures and controls below. */
function ClauseText({ clause }: { readonly clause: Clause }) {
  const isCoarse = useCoarse();
  const { id, text, opens } = clause;
  return opens && !isCoarse ? (
    <button type="button" className="clause" data-clause={id} onClick={() => open(clause)}>
      {text}
    </button>
  ) : (
    <span className="clause" data-clause={id}>
      {text}
    </span>
  );
}

function Clauses({ clauses }: { readonly clauses: readonly Clause[] }) {
  return clauses.map((clause) => (
    <span key={clause.id}>
      <ClauseText clause={clause} />{' '}
    </span>
  ));
}

/** The least change that helps, asked for where the neck does not come out as wanted, and gone with its question. */
function LeastChange() {
  const build = useBackbow((state) => state.build);
  const system = useBackbow((state) => state.unitSystem);
  const key = useMemo(() => JSON.stringify(build), [build]);
  const asked = useAnswer(key, (api) => api.leastChange(build));
  const found = asked.key === key ? asked.value : null;
  if (asked.status === 'failed' || asked.status === 'given-up') return null;
  if (!found) return <span className="quiet">{VERDICT_WORDS.searching}</span>;
  const { change } = found;
  if (!change) return <span data-change="none">{VERDICT_WORDS.noChange}</span>;
  const what = leastChangeText(change, system);
  return (
    <span data-change={change.kind}>
      {VERDICT_WORDS.change(what)}{' '}
      <button
        type="button"
        className="link"
        onClick={() => store.getState().change(changeOf(change), VERDICT_WORDS.step(what))}
      >
        {VERDICT_WORDS.take}
      </button>
    </span>
  );
}

/** Said aloud once nothing has moved for a moment, where it says something else than before. */
function Spoken({ verdict }: { readonly verdict: Said }) {
  const system = useBackbow((state) => state.unitSystem);
  const [text, setText] = useState('');
  const told = useRef<string | null>(null);
  useEffect(() => {
    const timer = setTimeout(() => {
      const now = spokenVerdict(verdict, system);
      // What the page opens with is read with the page.
      if (told.current !== null && told.current !== now) setText(now);
      told.current = now;
    }, SPOKEN_REST_MS);
    return () => clearTimeout(timer);
  }, [verdict, system]);
  useEffect(() => onLanguage(() => setText('')), []);
  return (
    <p className="visually-hidden" aria-live="polite" data-spoken>
      {text}
    </p>
  );
}

export function Verdict() {
  const known = useVerdict();
  const isWide = useMedia(WIDE);
  const isRoomy = useMedia(ROOMY);
  const isAsking = useBackbow((state) => state.lesson?.asking ?? false);
  const isLesson = useBackbow((state) => state.lesson !== null);
  const shown = known?.clauses.filter(({ id }) => isWide || SHORT.has(id)) ?? [];
  const first = shown.filter(({ id }) => id === 'not');
  const line = shown.filter(({ id }) => id !== 'not' && !QUIET.has(id));
  const quiet = isRoomy ? shown.filter(({ id }) => QUIET.has(id)) : [];
  const isNot = first.length > 0;
  return (
    <section
      className="verdict"
      data-keep-clear
      aria-label={VERDICT_WORDS.title}
      data-stale={known?.isStale || undefined}
      data-not={isNot || undefined}
    >
      {known && (
        <>
          {isNot && (
            <p className="verdict-not">
              {/* In a lesson it would do the learner's task. */}
              <Clauses clauses={first} /> {!isLesson && <LeastChange />}
            </p>
          )}
          <p className="verdict-line">
            <Clauses clauses={line} />
          </p>
          {quiet.length > 0 && (
            <p className="verdict-quiet">
              <Clauses clauses={quiet} />
            </p>
          )}
          {/* What a learner has not earned yet is not said either. */}
          {!isAsking && <Spoken verdict={known.verdict} />}
        </>
      )}
    </section>
  );
}

/** What of it has no room above the picture of a narrow window. */
export function VerdictRest() {
  const isWide = useMedia(WIDE);
  const isRoomy = useMedia(ROOMY);
  return isRoomy ? null : <Rest isWide={isWide} />;
}

function Rest({ isWide }: { readonly isWide: boolean }) {
  const known = useVerdict();
  if (!known) return null;
  return (
    <section
      className="verdict verdict-rest"
      aria-label={VERDICT_WORDS.restTitle}
      data-stale={known.isStale || undefined}
    >
      <p>
        <Clauses clauses={known.clauses.filter(({ id }) => (isWide ? QUIET.has(id) : !SHORT.has(id)))} />
      </p>
    </section>
  );
}
