/**
 * The canvas and its fiber root. Fiber's own Canvas registers all of three; this one registers nothing, because the scene is
 * made of ready objects, and so keeps the page small.
 */
import { createRoot, invalidate, type ReconcilerRoot, type RootStore } from '@react-three/fiber';
import { useEffect, useRef, useState, type ReactNode } from 'react';
import { NoToneMapping, PerspectiveCamera, WebGLRenderer } from 'three';
import type { Unavailable } from './types.ts';

export interface HostProps {
  readonly children: ReactNode;
  readonly onUnavailable?: (reason: Unavailable | null) => void;
}

const MOST_PIXELS_PER_PIXEL = 2;

export function SceneHost({ children, onUnavailable }: HostProps) {
  const box = useRef<HTMLDivElement>(null);
  const [root, setRoot] = useState<ReconcilerRoot<HTMLCanvasElement> | null>(null);
  const drawn = useRef<RootStore | null>(null);
  const unavailable = useRef(onUnavailable);
  useEffect(() => {
    unavailable.current = onUnavailable;
  });

  useEffect(() => {
    const holder = box.current;
    if (!holder) return;
    const canvas = document.createElement('canvas');
    canvas.style.cssText = 'display:block;position:absolute;inset:0;width:100%;height:100%';
    let gl: WebGLRenderer;
    try {
      gl = new WebGLRenderer({ canvas, antialias: true, alpha: false, powerPreference: 'high-performance' });
    } catch {
      unavailable.current?.('noWebGl');
      return;
    }
    gl.toneMapping = NoToneMapping;
    holder.append(canvas);
    const made = createRoot(canvas);
    const camera = new PerspectiveCamera(20, 1, 1, 5000);
    let alive = true;
    const drawNow = (): void => {
      const state = drawn.current?.getState();
      if (state?.internal.active) state.advance(performance.now());
    };
    const configure = (): void => {
      const width = holder.clientWidth;
      const height = holder.clientHeight;
      if (width === 0 || height === 0) return;
      void made
        .configure({
          gl,
          camera,
          frameloop: 'demand',
          flat: true,
          dpr: [1, MOST_PIXELS_PER_PIXEL],
          size: { width, height, top: 0, left: 0 },
        })
        .then(() => {
          if (alive) setRoot(made);
        });
      // A canvas of a new size is blank: it is drawn before the page is shown again, not one frame later.
      drawNow();
    };
    const sizes = new ResizeObserver(configure);
    sizes.observe(holder);
    configure();
    const lost = (event: Event): void => {
      event.preventDefault();
      unavailable.current?.('contextLost');
    };
    const restored = (): void => {
      unavailable.current?.(null);
      // Nothing has changed in the scene, so nobody else would ask for a frame.
      invalidate();
    };
    canvas.addEventListener('webglcontextlost', lost);
    canvas.addEventListener('webglcontextrestored', restored);
    return () => {
      alive = false;
      sizes.disconnect();
      canvas.removeEventListener('webglcontextlost', lost);
      canvas.removeEventListener('webglcontextrestored', restored);
      setRoot(null);
      drawn.current = null;
      made.unmount();
      gl.dispose();
      canvas.remove();
    };
  }, []);

  useEffect(() => {
    if (root) drawn.current = root.render(children);
  }, [root, children]);

  return <div ref={box} style={{ position: 'absolute', inset: 0 }} />;
}
