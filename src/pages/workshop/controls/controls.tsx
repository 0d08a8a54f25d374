/** The controls, in the order of the work: one group after the other, few of them open at first. */
import { useEffect, useRef, useState, type ReactNode } from 'react';
import { GROUPS, type GroupId } from '../../../neck/parameter-kinds.ts';
import { useBackbow } from '../../../state/store.ts';
import { BindingEditor } from '../lists/binding-editor.tsx';
import { LaminatesEditor } from '../lists/laminates-editor.tsx';
import { OwnWoodsEditor } from '../lists/own-woods-editor.tsx';
import { RegionsEditor } from '../lists/regions-editor.tsx';
import { ReliefsEditor } from '../lists/reliefs-editor.tsx';
import { StringsEditor } from '../lists/strings-editor.tsx';
import { groupSummary } from './group-summary.ts';
import { Hint } from './hint.tsx';
import { GroupPanel, parametersOf } from './leva-panel.tsx';
import { useReveal } from './reveal-store.ts';
import './controls.css';
import { groupName } from '../../../speech/names.ts';

/** The kerf decides most, so its group greets the newcomer. */
const OPEN_AT_FIRST: ReadonlySet<GroupId> = new Set<GroupId>(['slots', 'seating']);

/** Where there is room they stand in two columns: what is sawn and seated, and what comes after. */
const AFTER_SEATING = GROUPS.indexOf('seating') + 1;
const COLUMNS: readonly (readonly GroupId[])[] = [GROUPS.slice(0, AFTER_SEATING), GROUPS.slice(AFTER_SEATING)];

/** Lists that belong to a group and do not fit one control. */
const LISTS: Partial<Record<GroupId, () => ReactNode>> = {
  neck: () => (
    <>
      <LaminatesEditor />
      <OwnWoodsEditor part="neck" />
    </>
  ),
  board: () => <OwnWoodsEditor part="board" />,
  edges: () => <BindingEditor />,
  strings: () => <StringsEditor />,
  existing: () => (
    <>
      <ReliefsEditor />
      <RegionsEditor />
    </>
  ),
};

/** Group of the lists, which are no parameters. */
const GROUP_OF_LIST: Readonly<Record<string, GroupId>> = {
  strings: 'strings',
  binding: 'edges',
  laminates: 'neck',
  ownWoods: 'neck',
  regions: 'existing',
  startingReliefMm: 'existing',
};

function belongsTo(parameter: string, group: GroupId): boolean {
  return GROUP_OF_LIST[parameter] === group || parametersOf(group).some(({ id }) => id === parameter);
}

function Group({ id, label }: { readonly id: GroupId; readonly label: string }) {
  const [open, setOpen] = useState(OPEN_AT_FIRST.has(id));
  const details = useRef<HTMLDetailsElement>(null);
  const summary = useBackbow((state) => groupSummary(id, state.build, state.unitSystem));
  const revealed = useReveal((state) =>
    state.revealed && belongsTo(state.revealed.parameter, id) ? state.revealed : null,
  );
  const [opened, setOpened] = useState(revealed);
  if (revealed !== opened) {
    setOpened(revealed);
    if (revealed) setOpen(true);
  }

  useEffect(() => {
    if (!revealed) return undefined;
    // leva shows its rows one turn after the group has opened.
    const frame = requestAnimationFrame(() => {
      const control =
        details.current?.querySelector(`[data-parameter="${revealed.parameter}"]`) ??
        details.current?.querySelector('.list-editor');
      control?.scrollIntoView({ block: 'nearest' });
      control?.querySelector<HTMLElement>('input, select')?.focus();
    });
    return () => cancelAnimationFrame(frame);
  }, [revealed]);

  return (
    <details ref={details} className="group" open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <h3>{label}</h3>
        <span className="group-summary">{summary}</span>
      </summary>
      {open && (
        <>
          <GroupPanel key={id} group={id} />
          {LISTS[id]?.()}
        </>
      )}
    </details>
  );
}

export default function Controls() {
  return (
    <>
      <div className="groups">
        {COLUMNS.map((ids) => (
          <div key={ids[0]} className="group-column">
            {ids.map((id) => (
              <Group key={id} id={id} label={groupName(id)} />
            ))}
          </div>
        ))}
      </div>
      <Hint />
    </>
  );
}
