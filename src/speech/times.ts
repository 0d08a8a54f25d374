/** A span of days as people say it. */
import { TIME_WORDS } from './en/workshop/workshop.ts';

const DAYS_PER_MONTH = 30;
const DAYS_PER_YEAR = 365;

/** 1/24 → "an hour", 7 → "a week", 90 → "3 months", 45 → "45 days". @param days more than 0 */
export function timeText(days: number): string {
  if (days < 1) return TIME_WORDS.hours(Math.max(1, Math.round(days * 24)));
  const whole = (unit: number) => Math.abs(days / unit - Math.round(days / unit)) < 1e-9;
  if (days >= DAYS_PER_YEAR && whole(DAYS_PER_YEAR)) return TIME_WORDS.years(days / DAYS_PER_YEAR);
  if (days >= DAYS_PER_MONTH && days < DAYS_PER_YEAR && whole(DAYS_PER_MONTH)) {
    return TIME_WORDS.months(days / DAYS_PER_MONTH);
  }
  if (days >= 7 && days < 70 && whole(7)) return TIME_WORDS.weeks(days / 7);
  return TIME_WORDS.days(Number(days.toFixed(1)));
}
