/** The kerf of the way of seating in hand: for a glue fit the slot is as wide as the studs or wider. */
import { kerfChange, workingKerfMm } from '../../../neck/kerf.ts';
import type { NumberParameter } from '../../../neck/parameter-kinds.ts';
import { kerfNote } from '../../../speech/kerf.ts';
import { parameterName } from '../../../speech/names.ts';
import { store, useBackbow } from '../../../state/store.ts';
import { NumberControl, type NumberControlProps } from './number-control.tsx';

export function isKerf({ id }: NumberParameter): boolean {
  return id === 'kerfMm';
}

export function KerfControl(props: NumberControlProps) {
  const { parameter } = props;
  const build = useBackbow((state) => state.build);
  const standard = { kerfMm: parameter.default, studWidthMm: build.studWidthMm };
  const isGlueFit = build.method === 'glue';
  const own = isGlueFit
    ? {
        ...parameter,
        min: Math.max(parameter.min, build.studWidthMm),
        max: Math.max(parameter.max, build.studWidthMm),
        default: workingKerfMm(standard, 'glue'),
      }
    : parameter;
  return (
    <NumberControl
      {...props}
      parameter={own}
      value={workingKerfMm(build, build.method)}
      change={(wanted) => {
        const { build: current, gesture, change } = store.getState();
        return change(kerfChange(current, wanted, gesture?.before), parameterName(parameter.id));
      }}
    >
      <output className="blank-state quiet">{kerfNote(build, props.system)}</output>
    </NumberControl>
  );
}
