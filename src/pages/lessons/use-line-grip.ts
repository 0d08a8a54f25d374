/**
 * Bowing the guessed line in its drawing. A mouse takes the nearest handle along, wherever it presses. A finger moves a
 * handle only after a tap on it has chosen it: any other movement over the drawing scrolls the page.
 */
import { useRef, useState, type MouseEvent, type PointerEvent } from 'react';
import { BOX, HANDLES, type LineScales } from './line-curve.ts';

/** The handle whose grip was met, by its place among the handles. */
function handleOf(target: EventTarget): number | null {
  const grip = target instanceof Element ? target.closest<HTMLElement>('[data-handle]') : null;
  return grip ? Number(grip.dataset['handle']) : null;
}

/** @param setHandle puts the handle of a place among the handles at a height, relief in mm */
export function useLineGrip(asking: boolean, scales: LineScales, setHandle: (index: number, reliefMm: number) => void) {
  const drawing = useRef<HTMLDivElement>(null);
  const held = useRef<number | null>(null);
  const [chosen, setChosen] = useState<number | null>(null);

  /** Where the pointer is, in the drawing's own units. */
  function placeOf(event: PointerEvent): readonly [number, number] {
    const box = drawing.current!.getBoundingClientRect();
    return [
      ((event.clientX - box.left) / box.width) * BOX.width,
      ((event.clientY - box.top) / box.height) * BOX.height,
    ];
  }

  function drag(event: PointerEvent): void {
    if (held.current !== null) setHandle(held.current, scales.reliefAt(placeOf(event)[1]));
  }

  function grip(event: PointerEvent<HTMLElement>): void {
    if (!asking) return;
    if (event.pointerType === 'touch' || event.pointerType === 'pen') {
      const met = handleOf(event.target);
      held.current = event.isPrimary && met !== null && met === chosen ? met : null;
      return;
    }
    const share = scales.shareAt(placeOf(event)[0]);
    const distances = HANDLES.map((at) => Math.abs(at - share));
    held.current = distances.indexOf(Math.min(...distances));
    event.currentTarget.setPointerCapture(event.pointerId);
    drag(event);
  }

  const release = (): void => {
    held.current = null;
  };

  const choose = (event: MouseEvent): void => {
    const met = handleOf(event.target);
    if (asking && met !== null) setChosen(met);
  };

  return {
    drawing,
    chosen,
    setChosen,
    handlers: {
      onPointerDown: grip,
      onPointerMove: drag,
      onPointerUp: release,
      onPointerCancel: release,
      onClick: choose,
    },
  };
}
