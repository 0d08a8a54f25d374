/** A setting of the rod in words: turns of the nut, which way, and the per cent of its range beside them. */
import type { NutTurn } from '../mechanics/rod.ts';
import { filedQuantity } from '../neck/quantities.ts';
import { formatNumber } from './quantity.ts';
import { textOf } from './quantity-text.ts';
import { ROD_WORDS } from './en/workshop/rod.ts';

const EIGHTHS = ['', '⅛', '¼', '⅜', '½', '⅝', '¾', '⅞'] as const;

const eighthsOf = (turns: number): number => Math.round(8 * filedQuantity('turnsOfNut', turns));

/** To the eighth of a turn, which is as close as a hand sets it: "⅜ turn", "1½ turns". */
export function turnsText(turns: number): string {
  const eighths = eighthsOf(turns);
  if (eighths === 0) return ROD_WORDS.hardly;
  const [whole, part] = [Math.floor(eighths / 8), EIGHTHS[eighths % 8]];
  return ROD_WORDS.turns(`${whole === 0 ? '' : formatNumber(whole, 0)}${part}`, eighths <= 8);
}

/** The same where a number stands by itself: "<⅛ turn". */
export function turnsNumber(turns: number): string {
  return eighthsOf(turns) === 0 ? ROD_WORDS.hardlyShort : turnsText(turns);
}

export function rodPercentText(percent: number): string {
  return textOf('rodRangePercent', percent, 'metric');
}

/** "⅜ turn clockwise". */
export function nutText({ turns, way }: NutTurn): string {
  return way === 'none' ? ROD_WORDS.snug : ROD_WORDS.setting(turnsText(turns), ROD_WORDS.ways[way]);
}

/** "⅜ turn clockwise (12 %)". */
export function settingText(nut: NutTurn): string {
  return nut.way === 'none' ? nutText(nut) : ROD_WORDS.withPercent(nutText(nut), rodPercentText(nut.percent));
}

/** What the wrench feels; nothing where the nut is not turned. */
export function torqueText({ way, torqueNm, torqueAtLimitNm }: NutTurn): string {
  const newtonMetres = (value: number) => textOf('nutTorqueNm', value, 'metric');
  return way === 'none' ? '' : ROD_WORDS.torque(newtonMetres(torqueNm), newtonMetres(torqueAtLimitNm));
}
