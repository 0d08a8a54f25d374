// The wrapper is an image to assistive technology (a label on a canvas alone is lost) and takes the focus, because keys turn it.
/* oxlint-disable jsx-a11y/prefer-tag-over-role, jsx-a11y/no-noninteractive-tabindex */
import { useFrame, useThree } from '@react-three/fiber';
import {
  useEffect,
  useImperativeHandle,
  useLayoutEffect,
  useMemo,
  useRef,
  useState,
  type Ref,
  type RefObject,
} from 'react';
import type { PerspectiveCamera } from 'three';
import { listenForGestures } from './camera/gestures.ts';
import { exportPicture } from './export-picture.ts';
import { SceneHost } from './host.tsx';
import type { Ink } from './overlay/ink.ts';
import { PictureFailed } from './picture-failed.ts';
import { fretAt, type PointedFret } from './pick.ts';
import { createStage, type Stage } from './stage.ts';
import type { NeckSceneHandle, NeckSceneProps, SceneStats } from './types.ts';

interface ContentsProps extends NeckSceneProps {
  readonly wrapperRef: RefObject<HTMLDivElement | null>;
  readonly overlayRef: RefObject<HTMLCanvasElement | null>;
  readonly handleRef: RefObject<NeckSceneHandle | null>;
}

/** The overlay's context at the size of the picture. */
function inkOf(
  overlay: HTMLCanvasElement | null,
  width: number,
  height: number,
  dpr: number,
  props: NeckSceneProps,
): Ink | null {
  const context = overlay?.getContext('2d');
  if (!overlay || !context) return null;
  const [w, h] = [Math.round(width * dpr), Math.round(height * dpr)];
  if (overlay.width !== w || overlay.height !== h) {
    overlay.width = w;
    overlay.height = h;
  }
  context.setTransform(dpr, 0, 0, dpr, 0, 0);
  return { context, width, height, palette: props.palette, font: getComputedStyle(overlay).fontFamily };
}

function Contents(props: ContentsProps) {
  const gl = useThree((state) => state.gl);
  const camera = useThree((state) => state.camera) as PerspectiveCamera;
  const scene = useThree((state) => state.scene);
  const invalidate = useThree((state) => state.invalidate);
  const size = useThree((state) => state.size);
  const dpr = useThree((state) => state.viewport.dpr);
  const { wrapperRef, overlayRef, handleRef, lineSource } = props;
  const [stage, setStage] = useState<Stage | null>(null);
  const latest = useRef(props);

  useLayoutEffect(() => {
    latest.current = props;
  });

  useLayoutEffect(() => {
    const made = createStage(latest.current, () => invalidate());
    setStage(made);
    return () => {
      setStage(null);
      made.dispose();
    };
  }, [invalidate]);

  useLayoutEffect(() => {
    if (stage && stage.props() !== props) stage.setProps(props);
  }, [stage, props]);

  useLayoutEffect(() => {
    if (!stage) return;
    return lineSource.subscribe(() => stage.readLine());
  }, [stage, lineSource]);

  useEffect(() => {
    invalidate();
  }, [stage, size, dpr, invalidate]);

  useEffect(() => {
    // three has made its state anew by then: its listener came first.
    const canvas = gl.domElement;
    const restored = (): void => invalidate();
    canvas.addEventListener('webglcontextrestored', restored);
    return () => canvas.removeEventListener('webglcontextrestored', restored);
  }, [gl, invalidate]);

  useEffect(() => {
    const element = wrapperRef.current;
    if (!stage || !element) return;
    let hovered: number | null = null;
    const hover = (pointed: PointedFret | null): void => {
      stage.hover(pointed);
      const fret = pointed?.fret ?? null;
      if (fret === hovered) return;
      hovered = fret;
      latest.current.onHoverFret?.(fret);
    };
    return listenForGestures(element, {
      director: stage.director,
      fit: () => stage.fit(false),
      hover: (at) => hover(at && fretAt(stage, camera, element.clientWidth, element.clientHeight, at)),
      pick(at) {
        const pointed = fretAt(stage, camera, element.clientWidth, element.clientHeight, at);
        if (pointed) latest.current.onPickFret?.(pointed.fret);
      },
    });
  }, [stage, wrapperRef, camera]);

  useEffect(() => {
    if (!stage) return;
    handleRef.current = {
      fit: () => stage.fit(false),
      exportPng: (options) => exportPicture(stage, gl, scene, camera, overlayRef.current, options),
      stats: () => stage.stats(gl),
    };
    return () => {
      handleRef.current = null;
    };
  }, [stage, handleRef, gl, scene, camera, overlayRef]);

  // The size as it is now, not as it was when React last rendered: right after a resize they differ.
  useFrame(({ size: { width, height }, viewport }) => {
    if (!stage) return;
    const ink = inkOf(overlayRef.current, width, height, viewport.dpr, latest.current);
    if (stage.draw(gl, scene, camera, ink)) invalidate();
    latest.current.onFrame?.(stage.frames());
  }, 1);

  return stage ? <primitive object={stage.root} dispose={null} /> : null;
}

const NOTHING: SceneStats = {
  frames: 0,
  triangles: 0,
  drawCalls: 0,
  geometries: 0,
  textures: 0,
  programs: 0,
  bendMs: 0,
  rebuildMs: 0,
};

/** The props of the last render as long as none of them changed, so that the picture renders only when one did. */
function useSame(props: NeckSceneProps): NeckSceneProps {
  const [kept, setKept] = useState(props);
  const keys = new Set([...Object.keys(kept), ...Object.keys(props)]) as Set<keyof NeckSceneProps>;
  const same = [...keys].every((key) => kept[key] === props[key]);
  if (!same) setKept(props);
  return same ? kept : props;
}

/** The picture of the neck. Fills its parent, which must be positioned and have a size. */
export function NeckScene({ ref, ...props }: NeckSceneProps & { readonly ref?: Ref<NeckSceneHandle> }) {
  const wrapper = useRef<HTMLDivElement>(null);
  const overlay = useRef<HTMLCanvasElement>(null);
  const inner = useRef<NeckSceneHandle>(null);
  useImperativeHandle(
    ref,
    () => ({
      fit: () => inner.current?.fit(),
      exportPng: (options) => inner.current?.exportPng(options) ?? Promise.reject(new PictureFailed('not-drawn')),
      stats: () => inner.current?.stats() ?? NOTHING,
    }),
    [],
  );
  const contents = useSame(props);
  const scene = useMemo(
    () => <Contents {...contents} wrapperRef={wrapper} overlayRef={overlay} handleRef={inner} />,
    [contents],
  );
  return (
    <div
      ref={wrapper}
      role="img"
      aria-label={props.label}
      tabIndex={0}
      className="neck-scene"
      style={{ position: 'absolute', inset: 0, touchAction: 'pan-x pan-y', cursor: 'grab', overflow: 'hidden' }}
    >
      <SceneHost onUnavailable={props.onUnavailable}>{scene}</SceneHost>
      <canvas
        ref={overlay}
        aria-hidden="true"
        style={{ position: 'absolute', inset: 0, width: '100%', height: '100%', pointerEvents: 'none' }}
      />
    </div>
  );
}
