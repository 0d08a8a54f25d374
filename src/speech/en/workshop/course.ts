/** Words of the relief against time. */
import { words } from '../../language.ts';

export const COURSE_WORDS = words('COURSE_WORDS', {
  rodNeutral: 'Rod neutral.',
  flat: 'flat',
  wanted: 'wanted',
  now: 'the moment on the rail',
  time: 'strung for',
  method: (method: string, start: string, settled: string, days: string, end: string) =>
    `${method}: ${start} on the day of stringing, ${settled} after ${days}, ${end} after ten years.`,
  flatLater: (time: string, low: string, high: string) => `Flat after about ${time} (${low} to ${high}).`,
  flatLaterNoBand: (time: string) => `Flat after about ${time}.`,
  never: 'The back-bow outlasts ten years.',
  neverSome: (chance: string) => `The back-bow outlasts ten years; in ${chance} such necks it fades sooner.`,
  fromStart: 'No back-bow under the strings.',
  fromStartSome: (chance: string, time: string) =>
    `No back-bow under the strings; in ${chance} such necks there is one, and in 5 it lasts longer than ${time}.`,
  tenYears: 'ten years',
  ofHundred: (count: number) => `${count} of 100`,
  atOnce: 'at once',
  beyond: 'more than ten years',
  hour: 'h',
  day: 'd',
  week: 'wk',
  month: 'mo',
  year: 'yr',
  table: 'Relief under the strings at some times',
  caption: 'Relief under the strings, rod neutral: minus is a hump, plus a hollow',
  bandColumn: (method: string) => `${method}, 90 of 100 necks`,
});
