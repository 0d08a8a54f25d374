/** A list of the build among the controls: what it is, its entries, and what was refused of it. */
import type { ReactNode } from 'react';
import type { Build } from '../neck/build.ts';
import type { UnitSystem } from '../neck/units.ts';
import { unitLabel } from '../speech/quantity.ts';
import { refusalText } from '../speech/refusal.ts';
import type { Outcome } from '../state/build-slice.ts';
import { store, useBackbow } from '../state/store.ts';
import { useRefusal } from './use-refusal.ts';

export interface ListEdit {
  readonly title: string;
  readonly system: UnitSystem;
  /** Why the last change was refused. */
  readonly refusal: string | undefined;
  /** @param label what is done, for undo */
  readonly change: (change: Partial<Build>, label: string) => Outcome;
}

export function useListEdit(title: string): ListEdit {
  const system = useBackbow((state) => state.unitSystem);
  const [refusal, setRefusal] = useRefusal();
  const change: ListEdit['change'] = (wanted, label) => {
    const outcome = store.getState().change(wanted, label);
    setRefusal(outcome.ok ? undefined : refusalText(outcome.problems, title, system));
    return outcome;
  };
  return { title, system, refusal, change };
}

interface ListEditorProps {
  readonly edit: ListEdit;
  /** Whether it stands under its title, with the unit of its lengths. */
  readonly titled?: boolean;
  readonly children: ReactNode;
}

export function ListEditor({ edit: { title, system, refusal }, titled = false, children }: ListEditorProps) {
  const told = (
    <p className="refusal" role="alert">
      {refusal}
    </p>
  );
  if (!titled) {
    return (
      <div className="list-editor">
        {children}
        {told}
      </div>
    );
  }
  return (
    <fieldset className="list-editor">
      <legend>
        {title}, {unitLabel('mm', system)}
      </legend>
      {children}
      {told}
    </fieldset>
  );
}

interface ListTableProps {
  readonly caption: string;
  /** Over the columns; one in `hidden` is read out and not shown. */
  readonly heads: readonly (string | { readonly hidden: string })[];
  /** Its rows. */
  readonly children: ReactNode;
}

export function ListTable({ caption, heads, children }: ListTableProps) {
  return (
    <div className="table-scroll">
      <table className="list-table">
        <caption className="visually-hidden">{caption}</caption>
        <thead>
          <tr>
            {heads.map((head, at) => (
              <th key={at} scope="col">
                {typeof head === 'string' ? head : <span className="visually-hidden">{head.hidden}</span>}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>{children}</tbody>
      </table>
    </div>
  );
}
