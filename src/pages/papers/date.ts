/** A date as year-month-day (ISO 8601) in the local calendar: nobody can take the day for the month. */
export function isoDate(date: Date): string {
  const part = (value: number, digits: number) => String(value).padStart(digits, '0');
  return `${part(date.getFullYear(), 4)}-${part(date.getMonth() + 1, 2)}-${part(date.getDate(), 2)}`;
}
