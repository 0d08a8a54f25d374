/** Keeps the screen on while a component is there, where the browser can (W3C Screen Wake Lock). */
import { useEffect, useState } from 'react';

/** Null until it is known. */
export function useAwake(): boolean | null {
  const [isAwake, setAwake] = useState<boolean | null>(null);
  useEffect(() => {
    let lock: WakeLockSentinel | undefined;
    let over = false;
    const letGo = () => void lock?.release().catch(() => undefined);
    async function ask(): Promise<void> {
      // The browser lets go by itself when the page is out of sight, and grants nothing to one that is.
      if (document.visibilityState !== 'visible') return;
      try {
        const { wakeLock } = navigator as { readonly wakeLock?: WakeLock };
        if (!wakeLock) {
          setAwake(false);
          return;
        }
        lock = await wakeLock.request('screen');
        if (over) letGo();
        else setAwake(true);
      } catch {
        if (!over) setAwake(false);
      }
    }
    const again = () => void ask();
    again();
    document.addEventListener('visibilitychange', again);
    return () => {
      over = true;
      document.removeEventListener('visibilitychange', again);
      letGo();
    };
  }, []);
  return isAwake;
}
