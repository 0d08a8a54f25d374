/**
 * Says aloud, for those who do not see the list, that a build cannot be made as it stands: which stops have come and which
 * have gone, once nothing has moved for a moment.
 */
import { useEffect, useRef, useState } from 'react';
import type { Check } from '../../../fretwork/checks/check-types.ts';
import { STOP_WORDS } from '../../../speech/en/workshop/stops.ts';
import { onLanguage } from '../../../speech/language.ts';
import { store } from '../../../state/store.ts';
import { checkNumbers, labelOf } from '../../../speech/checks.ts';

/** Longer than a prediction takes to follow a slider, ms. */
const REST_MS = 900;
/** Said in full; of the rest only how many there are. */
const MOST_SAID = 2;

type Stops = ReadonlyMap<string, Check>;

function stopsOf(checks: readonly Check[]): Stops {
  const stops = checks.filter((check) => check.severity === 'stop');
  return new Map(stops.map((check) => [`${check.code} ${check.parameter}`, check]));
}

/** What has changed from one list to the next, in one or two short sentences; empty when nothing has. */
export function stopsSaid(before: Stops, now: Stops): string {
  const { unitSystem } = store.getState();
  const come = [...now].filter(([key]) => !before.has(key)).map(([, check]) => check);
  const gone = [...before].filter(([key]) => !now.has(key)).map(([, check]) => labelOf(check.parameter));
  const said = come
    .slice(0, MOST_SAID)
    .map((check) => STOP_WORDS.stop(labelOf(check.parameter), checkNumbers(check, unitSystem)));
  const more = come.length > MOST_SAID ? [STOP_WORDS.more(come.length - MOST_SAID)] : [];
  const solved = gone.length > 0 ? [STOP_WORDS.solved([...new Set(gone)], now.size)] : [];
  return [...said, ...more, ...solved].join(' ');
}

export function SpokenStops({ checks }: { readonly checks: readonly Check[] }) {
  const [text, setText] = useState('');
  const told = useRef<Stops>(new Map());
  const latest = useRef(checks);

  useEffect(() => {
    latest.current = checks;
    let timer: ReturnType<typeof setTimeout> | undefined;
    function tell(): void {
      // A thumb that is still held may go back yet.
      if (store.getState().gesture !== null) {
        timer = setTimeout(tell, REST_MS);
        return;
      }
      const now = stopsOf(latest.current);
      const said = stopsSaid(told.current, now);
      told.current = now;
      if (said !== '') setText(said);
    }
    timer = setTimeout(tell, REST_MS);
    return () => clearTimeout(timer);
  }, [checks]);

  // What was said is not said again in another language.
  useEffect(() => onLanguage(() => setText('')), []);

  return (
    <p className="visually-hidden" aria-live="assertive">
      {text}
    </p>
  );
}
