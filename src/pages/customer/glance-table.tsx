/** The choices side by side, in a few words each. */
import type { UnitSystem } from '../../neck/units.ts';
import type { ChoiceFacts } from '../../verdict/choice-facts.ts';
import { glanceRows } from './glance-rows.ts';
import { CUSTOMER_WORDS } from '../../speech/en/pages/customer.ts';

interface GlanceTableProps {
  readonly labels: readonly string[];
  readonly facts: readonly ChoiceFacts[];
  readonly system: UnitSystem;
}

export function GlanceTable({ labels, facts, system }: GlanceTableProps) {
  return (
    // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- it scrolls on a phone, so keys must reach it
    <section className="table-scroll" tabIndex={0} aria-label={CUSTOMER_WORDS.glanceTitle}>
      <h2>{CUSTOMER_WORDS.glanceTitle}</h2>
      <table className="glance">
        <thead>
          <tr>
            <th scope="col">
              <span className="visually-hidden">{CUSTOMER_WORDS.glanceWhat}</span>
            </th>
            {labels.map((label, index) => (
              <th key={index} scope="col">
                {label}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {glanceRows(system).map(({ label, say }) => (
            <tr key={label}>
              <th scope="row">{label}</th>
              {facts.map((choice, index) => (
                <td key={index}>{say(choice)}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
