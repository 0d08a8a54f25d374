import { spokenLocale } from '../../speech/language.ts';

/** A moment as people say it, in the language of the page: the time today, the date before. */
export function formatWhen(at: number, now: number = Date.now(), locale: string = spokenLocale()): string {
  const then = new Date(at);
  const isToday = then.toDateString() === new Date(now).toDateString();
  return new Intl.DateTimeFormat(
    locale,
    isToday ? { hour: '2-digit', minute: '2-digit' } : { year: 'numeric', month: 'short', day: 'numeric' },
  ).format(then);
}
