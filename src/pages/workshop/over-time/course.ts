/** The course of the relief under the strings, as the picture and the table need it. */
import type { Method, Prediction } from '../../../mechanics/prediction-types.ts';
import { lineAt } from '../../../mechanics/states.ts';
import { courseDays, flatAfterDays } from '../../../mechanics/uncertainty/time-course.ts';
import type { FlatCrossing } from '../../../mechanics/uncertainty/types.ts';
import { timeText } from '../../../speech/times.ts';
import { COURSE_WORDS } from '../../../speech/en/workshop/course.ts';

/** Relief of greatest size under the strings some days after stringing, rod neutral, mm. */
export function reliefAfter(prediction: Prediction, method: Method, days: number): number {
  return lineAt(prediction, method, { strung: true, days, rodPercent: 0 }).extremeMm;
}

export interface Course {
  readonly method: Method;
  readonly days: Float64Array;
  readonly reliefMm: Float64Array;
}

export function courseOf(prediction: Prediction, method: Method): Course {
  const days = courseDays();
  return { method, days, reliefMm: days.map((day) => reliefAfter(prediction, method, day)) };
}

const WEEK = 7;
const MONTH = 30;
const YEAR = 365;

/** A number of days as it is known: "9 hours", "5 days", "3 weeks", "4 months", "2 years", with no false exactness. */
export function roughTime(days: number): string {
  if (days < 1 / 24) return COURSE_WORDS.atOnce;
  if (days < 0.98) return timeText(Math.max(1, Math.round(days * 24)) / 24);
  if (days < 1.5 * WEEK) return timeText(Math.max(1, Math.round(days)));
  if (days < 9.5 * WEEK) return timeText(Math.round(days / WEEK) * WEEK);
  const months = Math.round(days / MONTH);
  if (months < 12) return timeText(months * MONTH);
  return timeText(Math.max(1, Math.round(days / YEAR)) * YEAR);
}

const bound = (days: number | null) => (days === null ? COURSE_WORDS.beyond : roughTime(days));

/** A share below this is not spoken of. */
const SPOKEN_SHARE = 0.05;

/**
 * When the back-bow has gone, in words.
 * @param flat with its range; null while that is being computed
 */
export function flatText(prediction: Prediction, method: Method, flat: FlatCrossing | null): string {
  const days = flat ? flat.days : flatAfterDays(prediction, method);
  if (days !== null) {
    const time = roughTime(days);
    return flat
      ? COURSE_WORDS.flatLater(time, bound(flat.p05Days), bound(flat.p95Days))
      : COURSE_WORDS.flatLaterNoBand(time);
  }
  const chance = (share: number) => COURSE_WORDS.ofHundred(Math.round(100 * share));
  if (reliefAfter(prediction, method, courseDays()[0]) < 0) {
    const sooner = flat ? 1 - flat.shareNever : 0;
    return sooner >= SPOKEN_SHARE ? COURSE_WORDS.neverSome(chance(sooner)) : COURSE_WORDS.never;
  }
  const humped = flat ? 1 - flat.shareFromStart : 0;
  if (!flat || humped <= SPOKEN_SHARE || flat.p95Days === 0) return COURSE_WORDS.fromStart;
  const longest = flat.p95Days === null ? COURSE_WORDS.tenYears : roughTime(Math.max(1 / 24, flat.p95Days));
  return COURSE_WORDS.fromStartSome(chance(humped), longest);
}

/** Times that the axis and the table name, days. */
export const NAMED_DAYS = [1 / 24, 1, WEEK, MONTH, 3 * MONTH, YEAR, 10 * YEAR] as const;

/** A named time on the axis where room is short: "1 h", "3 mo". */
export function shortTime(days: number): string {
  if (days < 1) return `${Math.round(days * 24)} ${COURSE_WORDS.hour}`;
  if (days < WEEK) return `${days} ${COURSE_WORDS.day}`;
  if (days < MONTH) return `${days / WEEK} ${COURSE_WORDS.week}`;
  if (days < YEAR) return `${days / MONTH} ${COURSE_WORDS.month}`;
  return `${days / YEAR} ${COURSE_WORDS.year}`;
}
