/** What else can be read on a neck: strings and rod on a dial, the bow after each quarter; closed until somebody wants it. */
import type { ReactNode } from 'react';
import { NUT_WAYS, STRINGS_STATES } from '../../mechanics/bench-log/entry.ts';
import { QUARTERS } from '../../mechanics/neck-readings/readings.ts';
import { LOG_WORDS } from '../../speech/en/pages/log.ts';
import { unitLabel } from '../../speech/quantity.ts';
import { useBackbow } from '../../state/store.ts';
import type { DraftBow, DraftNumber, EntryDraft, FromBuild } from './entry-draft.ts';
import { ChoiceField } from './form-fields.tsx';

interface FurtherFieldsProps {
  readonly draft: EntryDraft;
  readonly set: (change: Partial<EntryDraft>) => void;
  /** What was predicted. */
  readonly shown: FromBuild;
  readonly isNew: boolean;
  readonly hasRod: boolean;
  readonly fields: {
    readonly number: (field: DraftNumber, label: string) => ReactNode;
    readonly bow: (field: DraftBow, label: string, predictedMm: number | null) => ReactNode;
  };
}

export function FurtherFields(props: FurtherFieldsProps) {
  const { draft, shown, isNew, fields } = props;
  const unit = unitLabel(
    'mm',
    useBackbow((state) => state.unitSystem),
  );
  const hasDial = isNew || draft.measuredPullMm !== '' || draft.measuredRodMm !== '';
  // Of an entry that is changed what was read: the prediction of its day knows of nothing else.
  const quarters = QUARTERS.filter((quarter) => isNew || shown[`predictedQuarter${quarter}Mm`] !== null);
  return (
    <>
      {hasDial && <DialFields {...props} unit={unit} />}
      {quarters.length > 0 && (
        <details className="log-circumstances">
          <summary>{LOG_WORDS.quartersTitle}</summary>
          <p className="quiet">{LOG_WORDS.quartersIntro}</p>
          <div className="log-fields">
            {quarters.map((quarter) => (
              <div key={quarter}>
                {fields.bow(
                  `measuredQuarter${quarter}Mm`,
                  LOG_WORDS.measuredQuarter[quarter](unit),
                  shown[`predictedQuarter${quarter}Mm`],
                )}
              </div>
            ))}
          </div>
        </details>
      )}
    </>
  );
}

function DialFields({
  draft,
  set,
  shown,
  isNew,
  hasRod,
  fields,
  unit,
}: FurtherFieldsProps & { readonly unit: string }) {
  const { number, bow } = fields;
  const hasPull = isNew || shown.predictedPullMm !== null;
  const isRodRead = isNew ? hasRod : shown.predictedRodMm !== null;
  return (
    <details className="log-circumstances">
      <summary>{LOG_WORDS.dialTitle}</summary>
      <p className="quiet">{LOG_WORDS.dialIntro}</p>
      <div className="log-fields">
        {isNew && number('dialFret', LOG_WORDS.dialFret)}
        {number('dialErrorMm', LOG_WORDS.dialError(unit))}
        {hasPull && bow('measuredPullMm', LOG_WORDS.measuredPull(unit), shown.predictedPullMm)}
        {isRodRead && isNew && (
          <>
            {number('rodTurns', LOG_WORDS.rodTurns)}
            <ChoiceField
              label={LOG_WORDS.rodWay}
              value={draft.rodWay}
              options={NUT_WAYS}
              nameOf={(way) => LOG_WORDS.nutWays[way]}
              change={(rodWay) => set({ rodWay })}
            />
            <ChoiceField
              label={LOG_WORDS.rodStrings}
              value={draft.rodStrings}
              options={STRINGS_STATES}
              nameOf={(strings) => LOG_WORDS.stringsStates[strings]}
              change={(rodStrings) => set({ rodStrings })}
            />
          </>
        )}
        {isRodRead && bow('measuredRodMm', LOG_WORDS.measuredRod(unit), shown.predictedRodMm)}
      </div>
    </details>
  );
}
