/** A button for an action of the table: its words, its key, whether it can be used now, whether it is on. */
import type { ReactNode } from 'react';
import { store, useBackbow } from '../../../state/store.ts';
import { comboText } from './keys.ts';
import { isMac } from './platform.ts';
import { actionById } from './table.ts';

interface ActionButtonProps {
  readonly id: string;
  /** Other words on the button; the action's own are then its name. */
  readonly children?: ReactNode;
  readonly className?: string;
}

export function ActionButton({ id, children, className }: ActionButtonProps) {
  const action = actionById(id);
  const label = useBackbow(action.label);
  const enabled = useBackbow((state) => action.enabled?.(state) ?? true);
  const pressed = useBackbow((state) => action.pressed?.(state));
  const key = action.keys[0];
  return (
    <button
      type="button"
      className={className}
      disabled={!enabled}
      aria-pressed={pressed}
      aria-label={children === undefined ? undefined : label}
      title={key ? `${label} (${comboText(key, isMac())})` : label}
      onClick={() => void action.run(store)}
    >
      {children ?? label}
    </button>
  );
}
