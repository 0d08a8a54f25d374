/** What stands in the bar itself; everything else of its groups waits in the menu. */
import { ACTIONS } from '../actions/table.ts';
import type { Action } from '../actions/types.ts';

/** There is room for the daily actions in one row. */
export const ROOMY = '(min-width: 73.75rem)';

/** Actions wanted every day, in the order of the bar. */
export const DAILY: readonly string[] = ['library', 'share', 'plan', 'compare', 'lessons'];

/** Those with a place of their own: in the bar, or as a choice in the menu. */
const ELSEWHERE: ReadonlySet<string> = new Set([...DAILY, 'units']);

/** The actions of the menu, in the order of the table. */
export function menuActions(group: Action['group']): readonly Action[] {
  return ACTIONS.filter((action) => action.group === group && !ELSEWHERE.has(action.id));
}
