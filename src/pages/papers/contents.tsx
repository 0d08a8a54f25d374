/** Leads to the parts of the sheet. Buttons, not links: a link would take the place of the sheet in the address. */
import { PLAN_WORDS } from '../../speech/en/pages/papers.ts';
import { STEP_WORDS } from '../../speech/en/fretwork/steps.ts';

/** The parts in the order of the sheet, with the ids of their sections. */
const parts = () =>
  [
    ['expected', PLAN_WORDS.expected.title],
    ['checks', PLAN_WORDS.checks.title],
    ['steps', STEP_WORDS.title],
    ['quarters', PLAN_WORDS.quarters.title],
    ['slots', PLAN_WORDS.tables.slots.title],
    ['wire', PLAN_WORDS.tables.wire.title],
    ['cutting', PLAN_WORDS.tables.cutting.title],
    ['bend', PLAN_WORDS.bend.title],
    ['seating', PLAN_WORDS.tables.seating.title],
    ['levelling', PLAN_WORDS.tables.levelling.title],
    ['setUp', PLAN_WORDS.tables.setUp.title],
    ['playing', PLAN_WORDS.tables.playing.title],
    ['metals', PLAN_WORDS.tables.metals.title],
    ['record', PLAN_WORDS.record.title],
    ['values', PLAN_WORDS.values.title],
  ] as const;

function leadTo(id: string): void {
  document.getElementById(`sheet-${id}`)?.scrollIntoView();
  document.getElementById(`sheet-${id}-title`)?.focus({ preventScroll: true });
}

export function Contents() {
  return (
    <nav className="sheet-contents screen-only" aria-label={PLAN_WORDS.contents}>
      {parts().map(([id, title]) => (
        <button key={id} type="button" className="link" onClick={() => leadTo(id)}>
          {title}
        </button>
      ))}
    </nav>
  );
}
