/** What the next person to pull the frets must know, with room for what was measured. */
import { bindingInUse, type Build } from '../../../neck/build.ts';
import { glueById } from '../../../neck/glues.ts';
import type { UnitSystem } from '../../../neck/units.ts';
import type { GivenKey, QuantityKey } from '../../../neck/quantities.ts';
import { textOf } from '../../../speech/quantity-text.ts';
import type { FretworkPlan } from '../../../fretwork/plan/plan.ts';
import { groupSummary } from '../../workshop/controls/group-summary.ts';
import { METHOD_WORDS } from '../../../speech/en/workshop/workshop.ts';
import { PLAN_WORDS } from '../../../speech/en/pages/papers.ts';
import { Section } from '../section.tsx';
import { bindingMaterialName, choiceName, glueWords, metalName, woodNameIn } from '../../../speech/names.ts';

export function recordRows(build: Build, plan: FretworkPlan, system: UnitSystem): [string, string][] {
  const text = (key: QuantityKey, value: number) => textOf(key, value, system);
  const of = (key: GivenKey) => text(key, build[key] as number);
  const kerf = plan.slots[0].kerfMm;
  const alike = plan.slots.every((slot) => slot.kerfMm === kerf);
  const glue = build.method === 'press' ? undefined : glueById(build.glueKind);
  const lines = bindingInUse(build);
  return [
    [PLAN_WORDS.record.woods, [...new Set(build.laminates.map(({ wood }) => woodNameIn(build, wood)))].join(', ')],
    [PLAN_WORDS.record.board, groupSummary('board', build, system)],
    [PLAN_WORDS.record.wire, metalName(build.wireMetal)],
    [PLAN_WORDS.record.crown, PLAN_WORDS.record.crownOf(of('crownWidthMm'), of('crownHeightMm'))],
    [PLAN_WORDS.record.tang, PLAN_WORDS.record.tangOf(of('tangWidthMm'), of('studWidthMm'), of('tangDepthMm'))],
    [
      PLAN_WORDS.record.kerf,
      alike ? PLAN_WORDS.record.kerfOf(text('kerfMm', kerf)) : PLAN_WORDS.record.kerfVaries(text('kerfMm', kerf)),
    ],
    [PLAN_WORDS.record.depth, PLAN_WORDS.record.depthOf(of('slotDepthMm'), choiceName(build, 'slotBottom'))],
    [
      PLAN_WORDS.record.chamfer,
      build.chamferMm > 0 ? PLAN_WORDS.record.chamferOf(of('chamferMm')) : PLAN_WORDS.record.noChamfer,
    ],
    [PLAN_WORDS.record.method, METHOD_WORDS[build.method].label],
    [PLAN_WORDS.record.glue, glue ? glueWords(glue.id).label : PLAN_WORDS.record.noGlue],
    [PLAN_WORDS.record.release, glue ? glueWords(glue.id).release : PLAN_WORDS.record.releaseDry],
    [
      PLAN_WORDS.record.binding,
      lines.length === 0
        ? PLAN_WORDS.record.unbound
        : PLAN_WORDS.record.lines(
            lines
              .map(({ thicknessMm, material }) =>
                [text('bindingThicknessMm', thicknessMm), material && bindingMaterialName(material)]
                  .filter(Boolean)
                  .join(' '),
              )
              .join(' + '),
            plan.ends[0].linesSawn,
            lines.length,
          ),
    ],
  ];
}

interface RecordProps {
  readonly build: Build;
  readonly plan: FretworkPlan;
  readonly system: UnitSystem;
}

export function RepairRecord({ build, plan, system }: RecordProps) {
  return (
    <Section id="record" title={PLAN_WORDS.record.title} ownPage whole>
      <p>{PLAN_WORDS.record.note}</p>
      <dl className="sheet-record">
        {recordRows(build, plan, system).map(([label, text]) => (
          <div key={label}>
            <dt>{label}</dt>
            <dd>{text}</dd>
          </div>
        ))}
      </dl>
      <h3>{PLAN_WORDS.record.blanks}</h3>
      <dl className="sheet-blanks">
        {PLAN_WORDS.record.blankLabels.map((label) => (
          <div key={label}>
            <dt>{label}</dt>
            <dd />
          </div>
        ))}
        <div className="blank-wide">
          <dt>{PLAN_WORDS.record.remarks}</dt>
          <dd />
        </div>
      </dl>
    </Section>
  );
}
