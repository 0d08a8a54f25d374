/** How the necks lie, in one drawing each on one base line, before the strings, strung and at rest; and as solids. */
import { useId } from 'react';
import type { UnitSystem } from '../../neck/units.ts';
import { CUSTOMER_WORDS } from '../../speech/en/pages/customer.ts';
import { Slider } from '../../kit/slider/slider.tsx';
import { lineOf, momentName, MOMENTS, type KnownChoice, type ShownMoment } from './moments.ts';
import { liesSentence } from './sentences.ts';
import { STRIP, stripShapes } from './strip-shapes.ts';

interface StripProps {
  readonly choice: KnownChoice;
  readonly moment: ShownMoment;
  readonly factor: number;
  readonly lengthMm: number;
}

function Strip({ choice, moment, factor, lengthMm }: StripProps) {
  const shapes = stripShapes(choice.prediction, lineOf(choice, moment), factor, lengthMm);
  return (
    <svg className="strip" viewBox={`0 0 ${STRIP.width} ${STRIP.height}`} aria-hidden="true">
      <path className="wood" d={shapes.wood} />
      <path className="board" d={shapes.board} />
      <path className="wire" d={shapes.frets} />
      <path className="bone" d={shapes.nut} />
      {moment !== 'fretted' && <path className="wire" d={shapes.strings} />}
      <path className="straight" d={shapes.level} />
    </svg>
  );
}

interface MomentProps {
  readonly moment: ShownMoment;
  readonly names: readonly string[];
  readonly show: (moment: ShownMoment) => void;
}

function MomentSlider({ moment, names, show }: MomentProps) {
  const label = useId();
  const at = MOMENTS.indexOf(moment);
  return (
    <div className="moment-slider">
      <span id={label} className="visually-hidden">
        {CUSTOMER_WORDS.moment}
      </span>
      <Slider
        aria-labelledby={label}
        aria-valuetext={names[at]}
        min={0}
        max={MOMENTS.length - 1}
        step={1}
        value={at}
        slide={(value) => show(MOMENTS[value])}
      />
      <div className="moment-names">
        {MOMENTS.map((each, index) => (
          <button key={each} type="button" aria-pressed={each === moment} onClick={() => show(each)}>
            {names[index]}
          </button>
        ))}
      </div>
    </div>
  );
}

export interface LiesFigureProps {
  readonly choices: readonly KnownChoice[];
  /** Greater than none: how many times larger than life. */
  readonly factor: number;
  readonly moment: ShownMoment;
  readonly show: (moment: ShownMoment) => void;
  readonly system: UnitSystem;
}

/** On paper there is no slider: every moment stands beside the others. */
function OnPaper({ choices, factor, system, lengthMm, names }: Omit<LiesFigureProps, 'moment' | 'show'> & PaperProps) {
  return (
    <table className="on-paper">
      <thead>
        <tr>
          <th scope="col">{CUSTOMER_WORDS.choices}</th>
          {names.map((name) => (
            <th key={name} scope="col">
              {name}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {choices.map((choice) => (
          <tr key={choice.label}>
            <th scope="row">{choice.label}</th>
            {MOMENTS.map((each) => (
              <td key={each}>
                <Strip choice={choice} moment={each} factor={factor} lengthMm={lengthMm} />
                {liesSentence(lineOf(choice, each).extremeMm, system)}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

interface PaperProps {
  readonly lengthMm: number;
  readonly names: readonly string[];
}

export function LiesFigure({ choices, factor, moment, show, system }: LiesFigureProps) {
  const lengthMm = Math.max(...choices.map(({ prediction }) => prediction.stationXMm.at(-1)!));
  const builds = choices.map(({ build }) => build);
  const names = MOMENTS.map((each) => momentName(each, builds));
  return (
    <>
      <MomentSlider moment={moment} names={names} show={show} />
      <ul className="lies" data-count={choices.length}>
        {choices.map((choice) => (
          <li key={choice.label}>
            <h3>{choice.label}</h3>
            <Strip choice={choice} moment={moment} factor={factor} lengthMm={lengthMm} />
            <p>{liesSentence(lineOf(choice, moment).extremeMm, system)}</p>
          </li>
        ))}
      </ul>
      <OnPaper choices={choices} factor={factor} system={system} lengthMm={lengthMm} names={names} />
      <p className="quiet">{CUSTOMER_WORDS.factor(String(factor))}</p>
    </>
  );
}
