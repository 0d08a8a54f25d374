/** Every value of the build, so that paper alone is enough. */
import type { Build } from '../../../neck/build.ts';
import type { UnitSystem } from '../../../neck/units.ts';
import { PLAN_WORDS } from '../../../speech/en/pages/papers.ts';
import { Section } from '../section.tsx';
import { valueRows } from '../value-text.ts';

export function Values({ build, system }: { readonly build: Build; readonly system: UnitSystem }) {
  return (
    <Section id="values" title={PLAN_WORDS.values.title} whole>
      <p>{PLAN_WORDS.values.note}</p>
      <div className="sheet-values">
        {valueRows(build, system).map(({ id, label, rows }) => (
          <div key={id} className="value-group">
            <h3>{label}</h3>
            <dl>
              {rows.map((row) => (
                <div key={row.label} data-long={row.text.length > 34 || undefined}>
                  <dt>{row.label}</dt>
                  <dd>{row.text}</dd>
                </div>
              ))}
            </dl>
          </div>
        ))}
      </div>
    </Section>
  );
}
