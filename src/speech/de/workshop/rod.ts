/** Der Halsspannstab: was die Hand an der Mutter tut. */
import type * as english from '../../en/workshop/rod.ts';

export const ROD_WORDS: typeof english.ROD_WORDS = {
  turns: (count, isOne) => `${count}\u00a0${isOne ? 'Umdrehung' : 'Umdrehungen'}`,
  hardly: 'weniger als ⅛\u00a0Umdrehung',
  hardlyShort: '<\u2009⅛\u00a0Umdrehung',
  ways: { clockwise: 'rechtsherum', anticlockwise: 'linksherum', none: '' },
  snug: 'Mutter eben angelegt, nicht gedreht',
  setting: (turns, way) => `${turns} ${way}`,
  withPercent: (setting, percent) => `${setting} (${percent})`,
  torque: (here, most) => `Der Schlüssel spürt dann ${here}; mehr als ${most} verträgt der Spannstab nicht.`,
  quarter: (change) => `Jede Vierteldrehung ändert sie um ${change}.`,
  seen: 'Gezählt wird ab der eben angelegten Mutter, so wie man sie hinter dem Schlüssel sieht. Gerechnet für eine Mutter mit Rechtsgewinde auf einem einzelnen Regelgewinde; ein Doppelgewinde braucht halb so viel.',
};
