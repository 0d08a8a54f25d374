/** A neck seen from above, drawn small from its own measures: what tells one kind from another at a glance. */
import type { Build } from '../../../neck/build.ts';
import { boardEndMm, boardWidthMm, fretPositionMm } from '../../../neck/neck-shape.ts';
import { woodById } from '../../../neck/woods.ts';

/** Of the head that is drawn, mm. */
const HEAD_MM = 90;
const MARGIN_MM = 6;

export function NeckPicture({ build }: { readonly build: Build }) {
  const end = boardEndMm(build);
  const half = (x: number) => boardWidthMm(build, Math.max(0, x)) / 2;
  const widest = Math.max(half(0), half(end)) * 1.42 + MARGIN_MM;
  const neckWood = woodById(build.laminates[0].wood).colour;
  const head = half(0) * 1.42;
  const strings = build.strings.length;
  const frets = Array.from({ length: build.fretCount }, (_, i) => fretPositionMm(build.scaleLengthMm, i + 1));
  const across = (x: number, index: number) => half(x) * 0.82 * (strings === 1 ? 0 : (2 * index) / (strings - 1) - 1);
  return (
    <svg
      className="neck-from-above"
      viewBox={`${-HEAD_MM - MARGIN_MM} ${-widest} ${end + HEAD_MM + 2 * MARGIN_MM} ${2 * widest}`}
      aria-hidden="true"
    >
      <path
        d={`M0 ${-half(0)}L${-HEAD_MM * 0.35} ${-head}L${-HEAD_MM} ${-head}V${head}H${-HEAD_MM * 0.35}L0 ${half(0)}Z`}
        fill={neckWood}
      />
      <path
        d={`M0 ${-half(0)}L${end} ${-half(end)}V${half(end)}L0 ${half(0)}Z`}
        fill={woodById(build.boardWood).colour}
        className={build.bindingLineCount > 0 ? 'neck-bound' : 'neck-plain'}
      />
      {frets.map((x) => (
        <path key={x} d={`M${x} ${-half(x)}V${half(x)}`} className="neck-fret" />
      ))}
      <path d={`M0 ${-half(0)}V${half(0)}`} className="neck-nut" />
      {Array.from({ length: strings }, (_, i) => (
        <path
          key={i}
          d={`M${-HEAD_MM * 0.5} ${across(0, i)}L0 ${across(0, i)}L${end} ${across(end, i)}`}
          className="neck-string"
        />
      ))}
    </svg>
  );
}
