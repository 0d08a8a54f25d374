/** A number of a try strip: named, with its unit, empty until somebody enters it. */
import { LabelledNumber } from '../../kit/labelled-number.tsx';
import { STRIP_NUMBERS, type StripNumber } from '../../mechanics/try-strip/document.ts';
import { STRIP_WORDS } from '../../speech/en/pages/strips.ts';
import { useBackbow } from '../../state/store.ts';

type Shown =
  | 'lengthMm'
  | 'widthMm'
  | 'thicknessMm'
  | 'kerfMm'
  | 'kerfErrorMm'
  | 'frets'
  | 'days'
  | 'sizeMm'
  | 'errorMm'
  | 'loadG'
  | 'spanMm'
  | 'sagMm'
  | 'massG'
  | 'frequencyHz';

/** Step, and digits after the point. */
const STEPS: Readonly<Record<Shown, readonly [step: number, digits: number]>> = {
  lengthMm: [1, 0],
  widthMm: [0.5, 1],
  thicknessMm: [0.1, 1],
  kerfMm: [0.01, 2],
  kerfErrorMm: [0.001, 3],
  frets: [1, 0],
  days: [1, 0],
  sizeMm: [0.05, 2],
  errorMm: [0.01, 2],
  loadG: [10, 0],
  spanMm: [1, 0],
  sagMm: [0.05, 2],
  massG: [1, 1],
  frequencyHz: [1, 1],
};

interface StripFieldProps {
  readonly name: Shown & StripNumber;
  readonly value: number | null;
  readonly set: (value: number | null) => void;
}

export function StripField({ name, value, set }: StripFieldProps) {
  const system = useBackbow((state) => state.unitSystem);
  const [step, digits] = STEPS[name];
  const parameter = {
    ...STRIP_NUMBERS[name],
    step,
    digits,
    label: name === 'sizeMm' ? STRIP_WORDS.size : STRIP_WORDS[name],
    ...(name === 'frets' ? { integer: true as const } : {}),
  };
  return (
    <LabelledNumber
      className="strip-field"
      parameter={parameter}
      hideUnit={name === 'days'}
      value={value}
      system={system}
      set={set}
      empty={() => set(null)}
    />
  );
}
