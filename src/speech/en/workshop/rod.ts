/** Words of the rod: what a hand does with its nut. */
import { words } from '../../language.ts';

export const ROD_WORDS = words('ROD_WORDS', {
  /** Of a number such as ⅜, 1 or 1½. */
  turns: (count: string, isOne: boolean) => `${count}\u00a0${isOne ? 'turn' : 'turns'}`,
  hardly: 'less than ⅛\u00a0turn',
  /** The same where a number stands. */
  hardlyShort: '<\u2009⅛\u00a0turn',
  ways: { clockwise: 'clockwise', anticlockwise: 'anticlockwise', none: '' },
  snug: 'nut snug, not turned',
  setting: (turns: string, way: string) => `${turns} ${way}`,
  withPercent: (setting: string, percent: string) => `${setting} (${percent})`,
  torque: (here: string, most: string) => `The wrench then feels ${here}; ${most} is the most that the rod takes.`,
  quarter: (change: string) => `Each quarter turn moves it by ${change}.`,
  seen: 'Turns are counted from where the nut is snug, as you see them from behind the wrench. Reckoned for a right-handed nut on one coarse thread; a double thread needs half as many.',
});
