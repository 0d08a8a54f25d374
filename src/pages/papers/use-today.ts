/** Today's date, set right again when printing begins: a page may stay open overnight. */
import { useEffect, useState } from 'react';
import { flushSync } from 'react-dom';
import { isoDate } from './date.ts';

const today = () => isoDate(new Date());

export function useToday(): string {
  const [date, setDate] = useState(today);
  useEffect(() => {
    const refresh = () => flushSync(() => setDate(today()));
    window.addEventListener('beforeprint', refresh);
    return () => window.removeEventListener('beforeprint', refresh);
  }, []);
  return date;
}
