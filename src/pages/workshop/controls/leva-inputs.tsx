/**
 * The inputs that leva shows: its own have no name, no tab stop and no keys, clamp what is typed and show two decimals
 * at most, so every kind of parameter brings its own. leva holds a copy of each value and calls back when an edit
 * begins and ends; the store decides. leva draws a row only for a value of its own, so each row asks for the language.
 */
import { createPlugin, useInputContext, type LevaInputProps } from 'leva/plugin';
import type { ChoiceParameter, FlagParameter, NumberParameter, Parameter } from '../../../neck/parameter-kinds.ts';
import { useLanguage } from '../../../kit/use-language.ts';
import { store, useBackbow } from '../../../state/store.ts';
import { parameterName } from '../../../speech/names.ts';
import { BlankState } from './blank-state.tsx';
import { BiteControl, isBite } from './bite-control.tsx';
import { BowControl, isBow } from './bow-control.tsx';
import { ChoiceControl } from './choice-control.tsx';
import { FlagControl } from './flag-control.tsx';
import { isKerf, KerfControl } from './kerf-control.tsx';
import { MeasuredControl } from './measured-control.tsx';
import { NumberControl } from './number-control.tsx';
import { isStudShape, StudShapeControl } from './stud-shape-control.tsx';
import { changeParameter } from './change-parameter.ts';

interface Input<P extends Parameter, Value> {
  readonly parameter: P;
  /** Not called `value`: leva would take that alone and drop the parameter. */
  readonly stored: Value;
}

interface Settings<P extends Parameter> {
  readonly parameter: P;
}

function NumberInput() {
  const { value, settings, emitOnEditStart, emitOnEditEnd } =
    useInputContext<LevaInputProps<number, Settings<NumberParameter>>>();
  const system = useBackbow((state) => state.unitSystem);
  useLanguage();
  const { parameter } = settings;
  const Control = isBow(parameter)
    ? BowControl
    : isKerf(parameter)
      ? KerfControl
      : isStudShape(parameter)
        ? StudShapeControl
        : isBite(parameter)
          ? BiteControl
          : NumberControl;
  return (
    <Control
      parameter={parameter}
      value={value}
      system={system}
      change={(wanted) => changeParameter(parameter, wanted)}
      begin={emitOnEditStart}
      end={emitOnEditEnd}
    />
  );
}

/** leva knows no empty number: it keeps an empty text in its place, and the value is read from the build. */
function MeasuredInput() {
  const { settings } = useInputContext<LevaInputProps<number | string, Settings<NumberParameter>>>();
  const system = useBackbow((state) => state.unitSystem);
  const build = useBackbow((state) => state.build);
  useLanguage();
  const { parameter } = settings;
  return (
    <MeasuredControl
      parameter={parameter}
      build={build}
      system={system}
      change={(change) => store.getState().change(change, parameterName(parameter.id))}
    />
  );
}

function ChoiceInput() {
  const { value, settings } = useInputContext<LevaInputProps<string, Settings<ChoiceParameter>>>();
  const system = useBackbow((state) => state.unitSystem);
  useLanguage();
  const { parameter } = settings;
  return (
    <ChoiceControl
      parameter={parameter}
      value={value}
      system={system}
      change={(wanted) => changeParameter(parameter, wanted)}
    >
      <BlankState parameter={parameter} />
    </ChoiceControl>
  );
}

function FlagInput() {
  const { value, settings } = useInputContext<LevaInputProps<boolean, Settings<FlagParameter>>>();
  const system = useBackbow((state) => state.unitSystem);
  useLanguage();
  const { parameter } = settings;
  return (
    <FlagControl
      parameter={parameter}
      value={value}
      system={system}
      change={(wanted) => changeParameter(parameter, wanted)}
    />
  );
}

function normalize<P extends Parameter, Value>({ parameter, stored }: Input<P, Value>) {
  return { value: stored, settings: { parameter } };
}

export const numberInput = createPlugin({ component: NumberInput, normalize: normalize<NumberParameter, number> });
export const measuredInput = createPlugin({
  component: MeasuredInput,
  normalize: normalize<NumberParameter, number | string>,
});
export const choiceInput = createPlugin({ component: ChoiceInput, normalize: normalize<ChoiceParameter, string> });
export const flagInput = createPlugin({ component: FlagInput, normalize: normalize<FlagParameter, boolean> });
