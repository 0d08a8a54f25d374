/** From a pressed key to an action. */
import type { BackbowStore } from '../../../state/store.ts';
import { openPlace } from '../../papers/route.ts';
import { ACTIONS } from './table.ts';
import { KEY_WORDS } from '../../../speech/en/workshop/keys.ts';
import type { Action, KeyCombo } from './types.ts';

type KeyPress = Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'altKey' | 'shiftKey'>;

/** The press as a combo; Shift counts only together with Mod, since it is part of signs such as "?". */
export function comboOf(press: KeyPress): KeyCombo {
  const key = press.key.length === 1 ? press.key.toUpperCase() : press.key;
  if (press.ctrlKey || press.metaKey) return `Mod+${press.shiftKey ? 'Shift+' : ''}${key}`;
  return key;
}

const BY_COMBO: ReadonlyMap<KeyCombo, Action> = new Map(
  ACTIONS.flatMap((action) => action.keys.map((combo) => [combo, action] as const)),
);

/** Where letters are text. A number field with nothing typed yet takes Mod combinations, so that undo reaches the build. */
function isTyping(target: EventTarget | null, isMod: boolean): boolean {
  if (!(target instanceof HTMLElement)) return false;
  if (target.isContentEditable || target.matches('textarea, select')) return true;
  if (!target.matches('input')) return false;
  const type = target.type;
  if (['range', 'checkbox', 'radio', 'button'].includes(type)) return false;
  return !(isMod && target.dataset['idle'] === 'true');
}

/** Acts on keys anywhere in the page. @returns a function that stops it */
export function listenToKeys(store: BackbowStore, target: Pick<Window, 'addEventListener' | 'removeEventListener'>) {
  function onKeyDown(event: KeyboardEvent): void {
    if (event.defaultPrevented || event.altKey || event.isComposing) return;
    const state = store.getState();
    const isMod = event.ctrlKey || event.metaKey;
    const action = BY_COMBO.get(comboOf(event));
    if (!action || isTyping(event.target, isMod)) return;
    if (!isMod && !state.singleKeys && action.id !== 'help') return;
    if ((state.helpOpen && action.id !== 'help') || state.dialog !== null) return;
    // Over a paper nothing of the picture or the rail is in sight, and at the bench nothing of the neck in the workshop.
    const place = openPlace();
    if (place !== null && (action.group === 'view' || action.group === 'job')) return;
    if (place?.at === 'bench' && action.group !== 'page') return;
    event.preventDefault();
    if (action.enabled?.(state) === false) return;
    void action.run(store);
  }
  target.addEventListener('keydown', onKeyDown);
  return () => target.removeEventListener('keydown', onKeyDown);
}

/** A combo as it is printed on the keys of this machine. */
export function comboText(combo: KeyCombo, isMac: boolean): string {
  return combo
    .replace('Mod+', isMac ? '⌘ ' : `${KEY_WORDS.control} `)
    .replace('Shift+', isMac ? '⇧ ' : `${KEY_WORDS.shift} `);
}
