/** How long each measurement takes in this workshop, kept on this device. A device that refuses to keep it forgets it. */
import { useState } from 'react';
import {
  MEASUREMENT_IDS,
  MINUTES_RANGE,
  STANDARD_MINUTES,
  type MeasurementId,
  type Minutes,
} from '../../verdict/what-to-measure.ts';

const KEY = 'backbow.minutes';

const isMinutes = (value: unknown): value is number =>
  typeof value === 'number' && value >= MINUTES_RANGE.least && value <= MINUTES_RANGE.most;

/** Whatever is not the minutes of a measurement that is known here is as in the standard. */
export function readMinutes(text: string | null): Minutes {
  let stored: unknown;
  try {
    stored = JSON.parse(text ?? '{}');
  } catch {
    return STANDARD_MINUTES;
  }
  if (typeof stored !== 'object' || stored === null) return STANDARD_MINUTES;
  const given = stored as Readonly<Record<string, unknown>>;
  const own = MEASUREMENT_IDS.map((id): [MeasurementId, number] => {
    const value = Object.hasOwn(given, id) ? given[id] : undefined;
    return [id, isMinutes(value) ? value : STANDARD_MINUTES[id]];
  });
  return Object.fromEntries(own) as Minutes;
}

/** As it is kept: what differs from the standard; empty where nothing does. */
export function writeMinutes(minutes: Minutes): string {
  const own = MEASUREMENT_IDS.filter((id) => minutes[id] !== STANDARD_MINUTES[id]);
  return own.length === 0 ? '' : JSON.stringify(Object.fromEntries(own.map((id) => [id, minutes[id]])));
}

function kept(): string | null {
  try {
    return localStorage.getItem(KEY);
  } catch {
    return null;
  }
}

function keep(minutes: Minutes): void {
  try {
    const text = writeMinutes(minutes);
    if (text === '') localStorage.removeItem(KEY);
    else localStorage.setItem(KEY, text);
  } catch {
    // Storage refused or full: they hold until the list is closed.
  }
}

export function useMinutes(): readonly [Minutes, (id: MeasurementId, value: number) => void] {
  const [minutes, setMinutes] = useState(() => readMinutes(kept()));
  return [
    minutes,
    (id, value) => {
      const changed = { ...minutes, [id]: value };
      setMinutes(changed);
      keep(changed);
    },
  ];
}
