/** What stands on keys that are held down with another. */
import { words } from '../../language.ts';

export const KEY_WORDS = words('KEY_WORDS', { control: 'Ctrl', shift: 'Shift' });
