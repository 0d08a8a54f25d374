/** The fret under the pointer, here or in the picture. It is moved by hand: hovering renders no React. */
import { useEffect, useRef } from 'react';
import type { UnitSystem } from '../../build/units.ts';
import type { Prediction, ReliefLine } from '../../mechanics/prediction-types.ts';
import { sampleLine } from '../../mechanics/relief.ts';
import { store } from '../../state/store.ts';
import { bowText } from '../words/bow.ts';
import { CHART_WORDS } from '../words/panels.ts';
import { MARGIN, type ChartScales, type ChartSize } from './chart-scales.ts';

interface ChartCursorProps {
  readonly prediction: Prediction;
  readonly line: ReliefLine;
  readonly scales: ChartScales;
  readonly size: ChartSize;
  readonly system: UnitSystem;
}

export function ChartCursor({ prediction, line, scales, size, system }: ChartCursorProps) {
  const group = useRef<SVGGElement>(null);
  const dot = useRef<SVGCircleElement>(null);
  const text = useRef<SVGTextElement>(null);

  useEffect(() => {
    function place(fret: number | null): void {
      const found = fret === null ? undefined : prediction.fretXMm[fret - 1];
      const [start, end] = scales.x.domain() as [number, number];
      const xMm = found !== undefined && found >= start && found <= end ? found : undefined;
      group.current!.style.display = xMm === undefined ? 'none' : '';
      if (fret === null || xMm === undefined) return;
      const relief = sampleLine(prediction.stationXMm, line.reliefMm, xMm);
      const px = scales.x(xMm);
      group.current!.setAttribute('transform', `translate(${px} 0)`);
      dot.current!.setAttribute('cy', String(scales.y(relief)));
      const onLeft = px > size.width * 0.8;
      text.current!.setAttribute('text-anchor', onLeft ? 'end' : 'start');
      text.current!.setAttribute('x', onLeft ? '-6' : '6');
      text.current!.textContent = CHART_WORDS.hover(fret, bowText(relief, system));
    }
    place(store.getState().hoveredFret);
    return store.subscribe((state, before) => {
      if (state.hoveredFret !== before.hoveredFret) place(state.hoveredFret);
    });
  }, [prediction, line, scales, size, system]);

  return (
    <g ref={group} className="cursor" aria-hidden="true" style={{ display: 'none' }}>
      <line y1={MARGIN.top} y2={size.height - MARGIN.bottom} />
      <circle ref={dot} r={3.5} />
      <text ref={text} y={MARGIN.top - 8} />
    </g>
  );
}
