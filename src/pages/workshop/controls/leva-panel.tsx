/** The one place that knows leva: the parameters of a group as a leva panel, kept in step with the store. */
import { LevaPanel, useControls, useCreateStore } from 'leva';
import { useEffect } from 'react';
import type { Build } from '../../../neck/build.ts';
import type { GroupId, Parameter } from '../../../neck/parameter-kinds.ts';
import { isRelevant, PARAMETERS } from '../../../neck/parameters.ts';
import { store } from '../../../state/store.ts';
import { choiceInput, flagInput, measuredInput, numberInput } from './leva-inputs.tsx';
import { LEVA_THEME } from './leva-theme.ts';
import { parameterName } from '../../../speech/names.ts';

/** The rows of the parameter table that belong to a group, in the order of the table. */
export function parametersOf(group: GroupId): readonly Parameter[] {
  return (PARAMETERS as readonly Parameter[]).filter((parameter) => parameter.group === group);
}

function inputOf(parameter: Parameter, build: Build) {
  const value: unknown = build[parameter.id as keyof Build];
  switch (parameter.kind) {
    case 'number':
      if (parameter.measured) return measuredInput({ parameter, stored: (value as number | null) ?? '' });
      return numberInput({ parameter, stored: value as number });
    case 'choice':
      return choiceInput({ parameter, stored: value as string });
    case 'flag':
      return flagInput({ parameter, stored: value as boolean });
  }
}

function schemaOf(parameters: readonly Parameter[], build: Build) {
  return Object.fromEntries(
    parameters.map((parameter) => [
      parameter.id,
      {
        ...inputOf(parameter, build),
        // Rows of our own have their name from speech; leva needs any.
        label: parameter.id,
        render: () => isRelevant(parameter, store.getState().build),
        // Makes the value transient for leva: this component need not render again when it changes.
        onChange: () => undefined,
        onEditStart: () => store.getState().beginGesture(parameterName(parameter.id)),
        onEditEnd: () => store.getState().endGesture(),
      },
    ]),
  );
}

/** The values of a group, by parameter. */
function valuesOf(parameters: readonly Parameter[], build: Build): Record<string, unknown> {
  return Object.fromEntries(parameters.map(({ id }) => [id, build[id as keyof Build] ?? '']));
}

/**
 * What leva has to be told of a change of the build: the values of the group that changed, or all of them when another row
 * comes or goes, since leva asks for those again with every value that it is told. Null where there is nothing to tell.
 */
function newsOf(parameters: readonly Parameter[], build: Build, before: Build): Record<string, unknown> | null {
  const comesOrGoes = parameters.some((parameter) => isRelevant(parameter, build) !== isRelevant(parameter, before));
  if (comesOrGoes) return valuesOf(parameters, build);
  const changed = parameters.filter(({ id }) => build[id as keyof Build] !== before[id as keyof Build]);
  return changed.length > 0 ? valuesOf(changed, build) : null;
}

/** Mount it with `key={group}`: leva takes its store once and for all. */
export function GroupPanel({ group }: { readonly group: GroupId }) {
  const levaStore = useCreateStore();
  const parameters = parametersOf(group);
  const [, setAny] = useControls(() => schemaOf(parameters, store.getState().build), { store: levaStore });
  const set = setAny as (values: Record<string, unknown>) => void;

  useEffect(() => {
    const own = parametersOf(group);
    set(valuesOf(own, store.getState().build));
    return store.subscribe(({ build }, { build: before }) => {
      const news = build === before ? null : newsOf(own, build, before);
      if (news) set(news);
    });
  }, [group, set]);

  return <LevaPanel store={levaStore} theme={LEVA_THEME} fill flat titleBar={false} hideCopyButton />;
}
