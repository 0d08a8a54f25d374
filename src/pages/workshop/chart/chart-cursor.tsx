/** The fret under the pointer, here or in the picture. It is moved by hand: hovering renders no React. */
import { useCallback, useRef } from 'react';
import type { Prediction, ReliefLine } from '../../../mechanics/prediction-types.ts';
import { sampleLine } from '../../../mechanics/relief.ts';
import { MARGIN, type ChartScales, type ChartSize } from './chart-scales.ts';
import { useHoveredFret } from './use-hovered-fret.ts';

/** A line and the frets under it. */
export interface FrettedLine {
  readonly prediction: Pick<Prediction, 'fretXMm' | 'stationXMm'>;
  readonly line: Pick<ReliefLine, 'reliefMm'>;
}

/** Relief of a line at a fret, mm; undefined where there is no such fret. */
export function reliefAtFret({ prediction, line }: FrettedLine, fret: number): number | undefined {
  const xMm = prediction.fretXMm[fret - 1];
  return xMm === undefined ? undefined : sampleLine(prediction.stationXMm, line.reliefMm, xMm);
}

interface ChartCursorProps {
  /** Each gets a dot; the first says where the fret is. */
  readonly lines: readonly FrettedLine[];
  readonly scales: ChartScales;
  readonly size: ChartSize;
  /** @param reliefMm of the first line */
  readonly says: (fret: number, reliefMm: number) => string;
}

export function ChartCursor({ lines, scales, size, says }: ChartCursorProps) {
  const group = useRef<SVGGElement>(null);
  const text = useRef<SVGTextElement>(null);
  const { x, y } = scales;

  const place = useCallback(
    (fret: number | null) => {
      const found = fret === null ? undefined : lines[0].prediction.fretXMm[fret - 1];
      const [start, end] = x.domain();
      const xMm = found !== undefined && found >= start && found <= end ? found : undefined;
      group.current!.style.display = xMm === undefined ? 'none' : '';
      if (fret === null || xMm === undefined) return;
      const px = x(xMm);
      group.current!.setAttribute('transform', `translate(${px} 0)`);
      group.current!.querySelectorAll('circle').forEach((dot, index) => {
        const line = lines[index];
        const relief = reliefAtFret(line, fret);
        dot.style.display = relief === undefined ? 'none' : '';
        if (relief === undefined) return;
        dot.setAttribute('cx', String(x(line.prediction.fretXMm[fret - 1]) - px));
        dot.setAttribute('cy', String(y(relief)));
      });
      const onLeft = px > size.width * 0.8;
      text.current!.setAttribute('text-anchor', onLeft ? 'end' : 'start');
      text.current!.setAttribute('x', onLeft ? '-6' : '6');
      text.current!.textContent = says(fret, reliefAtFret(lines[0], fret)!);
    },
    [lines, x, y, size, says],
  );
  useHoveredFret(place);

  return (
    <g ref={group} className="cursor" aria-hidden="true" style={{ display: 'none' }}>
      <line y1={MARGIN.top} y2={size.height - MARGIN.bottom} />
      {lines.map((_line, index) => (
        <circle key={index} r={3.5} />
      ))}
      <text ref={text} y={MARGIN.top - 8} />
    </g>
  );
}
