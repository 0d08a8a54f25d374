/** A passing message leaves by itself once it could be read twice, but never while somebody is at it. */
import { useEffect, useState } from 'react';

/** Shortest stay, ms. */
const LEAST_MS = 8_000;
/** For each character: 120 words a minute, half of what is usual for silent reading (common practice, no source). */
const PER_CHARACTER_MS = 90;

/** @returns how long a message of so many characters stays, ms */
export function stayMs(characters: number): number {
  return Math.max(LEAST_MS, characters * PER_CHARACTER_MS);
}

/**
 * @param characters of the message; null = it stays until it is closed
 * @returns for the element of the message: while the pointer or the focus is in it, or the page is not in sight, it stays
 */
export function useLeaving(characters: number | null, leave: () => void) {
  const [isPointed, setPointed] = useState(false);
  const [isFocused, setFocused] = useState(false);
  const [isAway, setAway] = useState(() => document.hidden);
  const isHeld = isPointed || isFocused || isAway;

  useEffect(() => {
    const look = (): void => setAway(document.hidden);
    document.addEventListener('visibilitychange', look);
    return () => document.removeEventListener('visibilitychange', look);
  }, []);

  useEffect(() => {
    if (characters === null || isHeld) return undefined;
    const timer = setTimeout(leave, stayMs(characters));
    return () => clearTimeout(timer);
    // The message is one and the same as long as it has its key; what takes it away may be made anew with every drawing.
    // oxlint-disable-next-line react/exhaustive-deps
  }, [characters, isHeld]);

  return {
    onPointerEnter: () => setPointed(true),
    onPointerLeave: () => setPointed(false),
    onFocus: () => setFocused(true),
    onBlur: () => setFocused(false),
  };
}
