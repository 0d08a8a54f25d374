/** The settings in which the necks differ, and copying them to the neck on the bench. */
import type { Build } from '../../neck/build.ts';
import type { Compared } from '../../state/compare/comparison-slice.ts';
import { store, useBackbow } from '../../state/store.ts';
import { problemTexts } from '../../speech/problems.ts';
import { differingSettings, settingsBetween, type DifferingGroup, type SettingId } from './settings.ts';
import { COMPARE_WORDS } from '../../speech/en/pages/compare.ts';

interface SettingsTableProps extends Compared {
  readonly builds: readonly Build[];
  readonly labels: readonly string[];
}

function copy(place: number, settings: readonly SettingId[], group: DifferingGroup, label: string): void {
  const { notify, unitSystem } = store.getState();
  const outcome = store.getState().copyFromColumn(place, settings, COMPARE_WORDS.stepCopy(group.label, label));
  if (outcome.ok) notify('info', COMPARE_WORDS.copied(group.label, label));
  else notify('error', COMPARE_WORDS.refused, problemTexts(outcome.problems, unitSystem));
}

interface GroupProps extends SettingsTableProps {
  readonly group: DifferingGroup;
}

function Group({ group, necks, builds, labels, bench }: GroupProps) {
  return (
    <tbody>
      <tr>
        <th colSpan={labels.length + 1} scope="rowgroup">
          <span className="compare-group">
            {group.label}
            <span className="button-row">
              {bench !== null &&
                necks.map(({ build, place }, index) => {
                  const settings = settingsBetween(group, build, builds[bench]);
                  return index === bench || settings.length === 0 ? null : (
                    <button
                      key={place}
                      type="button"
                      aria-label={COMPARE_WORDS.copyFromName(group.label, labels[index])}
                      onClick={() => copy(place, settings, group, labels[index])}
                    >
                      {COMPARE_WORDS.copyFrom(labels[index])}
                    </button>
                  );
                })}
            </span>
          </span>
        </th>
      </tr>
      {group.settings.map((setting) => (
        <tr key={setting.id}>
          <th scope="row">{setting.label}</th>
          {setting.texts.map((text, index) => (
            <td key={index}>{text}</td>
          ))}
        </tr>
      ))}
    </tbody>
  );
}

export function SettingsTable(props: SettingsTableProps) {
  const { builds, labels, bench } = props;
  const system = useBackbow((state) => state.unitSystem);
  const groups = differingSettings(builds, system);
  return (
    <details className="compare-settings">
      <summary>{COMPARE_WORDS.copyTitle}</summary>
      {groups.length === 0 ? (
        <p>{COMPARE_WORDS.copyNone}</p>
      ) : (
        <>
          <p className="quiet">
            {bench === null ? COMPARE_WORDS.copyNeedsBench : COMPARE_WORDS.copyIntro(labels[bench])}
          </p>
          {/* oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- it scrolls on a phone, so keys must reach it */}
          <section className="table-scroll" tabIndex={0} aria-label={COMPARE_WORDS.copyTitle}>
            <table>
              <thead>
                <tr>
                  <th scope="col">{COMPARE_WORDS.setting}</th>
                  {labels.map((label) => (
                    <th key={label} scope="col">
                      {label}
                    </th>
                  ))}
                </tr>
              </thead>
              {groups.map((group) => (
                <Group key={group.id} group={group} {...props} />
              ))}
            </table>
          </section>
        </>
      )}
    </details>
  );
}
