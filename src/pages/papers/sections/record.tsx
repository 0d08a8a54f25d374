/** What the next person to pull the frets must know, with room for what was measured. */
import { bindingInUse, type Build } from '../../../neck/build.ts';
import { glueById } from '../../../neck/glues.ts';
import { metalById } from '../../../neck/metals.ts';
import { formatQuantity, type UnitSystem } from '../../../neck/units.ts';
import type { FretworkPlan } from '../../../fretwork/plan/plan.ts';
import { groupSummary } from '../../workshop/controls/group-summary.ts';
import { METHOD_WORDS } from '../../../speech/en/workshop.ts';
import { PLAN_WORDS } from '../../../speech/en/papers.ts';
import { Section } from '../section.tsx';
import { choiceText, woodText } from '../value-text.ts';

const WORDS = PLAN_WORDS.record;

function recordRows(build: Build, plan: FretworkPlan, system: UnitSystem): [string, string][] {
  const mm = (value: number, digits = 2) => formatQuantity(value, 'mm', digits, system);
  const kerf = plan.slots[0]!.kerfMm;
  const alike = plan.slots.every((slot) => slot.kerfMm === kerf);
  const glue = build.method === 'press' ? undefined : glueById(build.glueKind);
  const lines = bindingInUse(build);
  return [
    [WORDS.woods, [...new Set(build.laminates.map(({ wood }) => woodText(wood)))].join(', ')],
    [WORDS.board, groupSummary('board', build, system)],
    [WORDS.wire, metalById(build.wireMetal).label],
    [WORDS.crown, WORDS.crownOf(mm(build.crownWidthMm), mm(build.crownHeightMm))],
    [WORDS.tang, WORDS.tangOf(mm(build.tangWidthMm, 3), mm(build.studWidthMm, 3), mm(build.tangDepthMm))],
    [WORDS.kerf, alike ? WORDS.kerfOf(mm(kerf, 3)) : WORDS.kerfVaries(mm(kerf, 3))],
    [WORDS.depth, WORDS.depthOf(mm(build.slotDepthMm), choiceText(build, 'slotBottom'))],
    [WORDS.chamfer, build.chamferMm > 0 ? WORDS.chamferOf(mm(build.chamferMm)) : WORDS.noChamfer],
    [WORDS.method, METHOD_WORDS[build.method].label],
    [WORDS.glue, glue ? glue.label : WORDS.noGlue],
    [WORDS.release, glue ? glue.release : WORDS.releaseDry],
    [
      WORDS.binding,
      lines.length === 0
        ? WORDS.unbound
        : WORDS.lines(
            lines.map((line) => mm(line.thicknessMm)).join(' + '),
            Math.min(build.linesSawnThrough, lines.length),
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
    <Section id="record" title={WORDS.title} ownPage whole>
      <p>{WORDS.note}</p>
      <dl className="sheet-record">
        {recordRows(build, plan, system).map(([label, text]) => (
          <div key={label}>
            <dt>{label}</dt>
            <dd>{text}</dd>
          </div>
        ))}
      </dl>
      <h3>{WORDS.blanks}</h3>
      <dl className="sheet-blanks">
        {WORDS.blankLabels.map((label) => (
          <div key={label}>
            <dt>{label}</dt>
            <dd />
          </div>
        ))}
        <div className="blank-wide">
          <dt>{WORDS.remarks}</dt>
          <dd />
        </div>
      </dl>
    </Section>
  );
}
