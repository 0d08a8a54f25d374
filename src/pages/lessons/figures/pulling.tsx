/** Two refrets side by side: pull both frets, and see what becomes of a sharp and of a chamfered edge. */
import { useId, useState } from 'react';
import { workingKerfMm } from '../../../neck/kerf.ts';
import { formatQuantity } from '../../../speech/quantity.ts';
import { useBackbow } from '../../../state/store.ts';
import { Slider } from '../../../kit/slider/slider.tsx';
import type { Bench } from '../quantities.ts';
import { LESSON_FIGURE_WORDS } from '../../../speech/en/pages/lessons.ts';
import { boardPath, chipPaths, chipShare, fretPaths, isSharp, VIEW, type SlotSizes } from './pulling-shapes.ts';

interface SlotDrawingProps {
  readonly sizes: SlotSizes;
  readonly chamferMm: number;
  readonly share: number;
  readonly caption: string;
}

function SlotDrawing({ sizes, chamferMm, share, caption }: SlotDrawingProps) {
  const hatch = useId();
  const chipped = chipShare(sizes, share, chamferMm);
  const { crown, tang } = fretPaths(sizes, share);
  const { halfMm, upMm, downMm } = VIEW;
  return (
    <figure>
      <svg
        viewBox={`${-halfMm} ${-upMm} ${2 * halfMm} ${upMm + downMm}`}
        role="img"
        aria-label={chipped > 0.5 ? LESSON_FIGURE_WORDS.chippedLabel(caption) : caption}
      >
        <defs>
          <pattern id={hatch} width="0.35" height="0.35" patternUnits="userSpaceOnUse" patternTransform="rotate(90)">
            <line x1="0" x2="0" y1="0" y2="0.35" />
          </pattern>
        </defs>
        <path className="board" d={boardPath(sizes, chamferMm, chipped)} />
        <path d={boardPath(sizes, chamferMm, chipped)} fill={`url(#${hatch})`} />
        <path className="wire" d={tang} />
        <path className="wire" d={crown} />
        {chipPaths(sizes, chipped).map((path, index) => (
          <path key={index} className="chip" d={path} />
        ))}
      </svg>
      <figcaption>{caption}</figcaption>
    </figure>
  );
}

export function PullingFigure({ bench }: { readonly bench: Bench }) {
  const pull = useId();
  const [share, setShare] = useState(0);
  const system = useBackbow((state) => state.unitSystem);
  const { build } = bench;
  const sizes = { ...build, kerfMm: workingKerfMm(build, build.method) };
  const chamfer = formatQuantity(build.chamferMm, 'mm', 2, system);
  return (
    <div className="pulling">
      <div className="pair">
        <SlotDrawing sizes={sizes} chamferMm={0} share={share} caption={LESSON_FIGURE_WORDS.sharp} />
        <SlotDrawing
          sizes={sizes}
          chamferMm={build.chamferMm}
          share={share}
          caption={
            isSharp(build.chamferMm) ? LESSON_FIGURE_WORDS.alsoSharp(chamfer) : LESSON_FIGURE_WORDS.chamfered(chamfer)
          }
        />
      </div>
      <div className="field">
        <span id={pull}>{LESSON_FIGURE_WORDS.pull}</span>
        <Slider
          aria-labelledby={pull}
          min={0}
          max={1}
          step={0.02}
          value={share}
          aria-valuetext={LESSON_FIGURE_WORDS.pulled(`${Math.round(100 * share)} %`)}
          slide={setShare}
        />
      </div>
      <p className="quiet">{LESSON_FIGURE_WORDS.illustration}</p>
    </div>
  );
}
