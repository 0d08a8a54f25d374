/** An ear for as long as a dialog is open. */
import { useEffect, useState, useSyncExternalStore } from 'react';
import { Ear, type Hearing } from './ear.ts';

export function useHearing(): readonly [Hearing, Ear] {
  const [ear] = useState(() => new Ear());
  useEffect(() => ear.close, [ear]);
  return [useSyncExternalStore(ear.watch, ear.now), ear];
}
