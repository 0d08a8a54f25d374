/** The menu of the bar: every action of the table that concerns the project or the page and has no place of its own. */
import { useEffect, useRef, useState, type MouseEvent, type ReactNode } from 'react';
import { ActionButton } from '../actions/action-button.tsx';
import { comboText } from '../actions/keys.ts';
import { isMac } from '../actions/platform.ts';
import type { ActionGroup } from '../actions/types.ts';
import { PROJECT_WORDS } from '../../../speech/en/workshop/workshop.ts';
import { menuActions } from './daily.ts';
import { LanguageSwitch } from './language-switch.tsx';
import { AppearanceSwitch, UnitSwitch } from './settings.tsx';

function Group({ group }: { readonly group: ActionGroup }) {
  return (
    <ul>
      {menuActions(group).map(({ id, keys: [key] }) => (
        <li key={id}>
          <ActionButton id={id} />
          {key === undefined ? null : <kbd aria-hidden="true">{comboText(key, isMac())}</kbd>}
        </li>
      ))}
    </ul>
  );
}

/** @param children what stands above the rest */
export function BarMenu({ children }: { readonly children: ReactNode }) {
  const [open, setOpen] = useState(false);
  const box = useRef<HTMLDivElement>(null);
  const button = useRef<HTMLButtonElement>(null);

  useEffect(() => {
    if (!open) return undefined;
    const leave = (event: Event) => {
      if (event.target instanceof Node && !box.current!.contains(event.target)) setOpen(false);
    };
    const onKeyDown = (event: KeyboardEvent) => {
      if (event.key !== 'Escape') return;
      setOpen(false);
      button.current!.focus();
    };
    document.addEventListener('pointerdown', leave);
    document.addEventListener('focusin', leave);
    document.addEventListener('keydown', onKeyDown);
    return () => {
      document.removeEventListener('pointerdown', leave);
      document.removeEventListener('focusin', leave);
      document.removeEventListener('keydown', onKeyDown);
    };
  }, [open]);

  /** An action that has been chosen closes the menu; a choice from a list does not. */
  function onClick(event: MouseEvent): void {
    if (!(event.target as Element).closest('button')) return;
    button.current!.focus();
    setOpen(false);
  }

  return (
    <div ref={box} className="bar-menu">
      <button ref={button} type="button" aria-expanded={open} aria-controls="bar-menu" onClick={() => setOpen(!open)}>
        {PROJECT_WORDS.menu}
      </button>
      {/* oxlint-disable-next-line jsx-a11y/click-events-have-key-events, jsx-a11y/no-static-element-interactions -- it only notes the clicks of its buttons */}
      <div id="bar-menu" className="bar-menu-list" hidden={!open} onClick={onClick}>
        {children ? <div className="bar-menu-daily">{children}</div> : null}
        <Group group="project" />
        <div className="bar-menu-settings">
          <UnitSwitch />
          <AppearanceSwitch />
          <LanguageSwitch />
        </div>
        <Group group="page" />
      </div>
    </div>
  );
}
