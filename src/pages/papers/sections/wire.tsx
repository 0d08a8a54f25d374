/** The wire: pieces, what to order, how to cut and bend it, the metals side by side. */
import type { UnitSystem } from '../../../neck/units.ts';
import { formatNumber } from '../../../speech/quantity.ts';
import { textOf } from '../../../speech/quantity-text.ts';
import { gaugedRadiusMm, WRONG_RADII } from '../../../fretwork/bending.ts';
import { METAL_FACTS } from '../../../fretwork/plan/metal-comparison.ts';
import type { FretworkPlan } from '../../../fretwork/plan/plan.ts';
import { cuttingTable, metalTable, wireTable, type Table } from '../../../fretwork/plan/tables.ts';
import { PLAN_WORDS } from '../../../speech/en/pages/papers.ts';
import { WRONG_RADIUS_TEXTS } from '../../../speech/en/fretwork/wire.ts';
import { metalFactSource, metalFactText } from '../../../speech/metal-facts.ts';
import { DataTable, SheetTable } from '../data-table.tsx';
import { Section } from '../section.tsx';
import { metalShortName, metalSource } from '../../../speech/names.ts';

interface WireProps {
  readonly plan: FretworkPlan;
  readonly system: UnitSystem;
  readonly onSave: (table: Table) => void;
}

function Order({ plan, system }: Omit<WireProps, 'onSave'>) {
  const length = (mm: number) => textOf('wireTotalMm', mm, system);
  const { order } = plan;
  const cutting = order.sticks?.plan;
  const facts = [
    PLAN_WORDS.order.inFrets(length(order.fretsMm)),
    PLAN_WORDS.order.spare(order.spareFrets),
    PLAN_WORDS.order.total(length(order.totalMm)),
    ...(cutting && order.sticks
      ? [
          PLAN_WORDS.order.sticks(order.sticks.toOrder, length(cutting.stickLengthMm)),
          PLAN_WORDS.order.waste(length(cutting.wasteMm)),
        ]
      : []),
    ...(order.coil ? [PLAN_WORDS.order.coil(formatNumber(order.coil.turns, 1))] : []),
  ];
  return (
    <p>
      <b>{PLAN_WORDS.order.title}:</b> {facts.join('; ')}.{' '}
      {cutting
        ? cutting.provenFewest
          ? PLAN_WORDS.order.fewest
          : PLAN_WORDS.order.perhapsFewer(cutting.fewestPossible)
        : ''}
    </p>
  );
}

function bendText({ bend }: FretworkPlan, system: UnitSystem): string {
  const words = PLAN_WORDS.bend;
  if (bend.direction === 'none') return words.none;
  const radius = (mm: number) => textOf('bendToRadiusMm', Math.abs(mm), system);
  const stays = textOf('bendStaysPercent', bend.stays * 100, system);
  const wanted = Number.isFinite(bend.wantedRadiusMm)
    ? words.wanted(radius(bend.wantedRadiusMm))
    : words.wantedStraight;
  const how = !Number.isFinite(gaugedRadiusMm(bend.bendToRadiusMm))
    ? words.openStraight(stays)
    : bend.bendToRadiusMm < 0
      ? words.open(radius(bend.bendToRadiusMm), stays)
      : words.to(radius(bend.bendToRadiusMm), stays);
  return `${wanted} ${how} ${words.tightest}`;
}

function Bending({ plan, system }: Omit<WireProps, 'onSave'>) {
  const words = PLAN_WORDS.bend;
  const columns = [
    { id: 'when', header: words.when, kind: 'words' },
    { id: 'happens', header: words.happens, kind: 'words' },
    { id: 'remedy', header: words.remedy, kind: 'words' },
  ] as const;
  return (
    <Section id="bend" title={words.title} whole>
      <p>{bendText(plan, system)}</p>
      <SheetTable
        caption={words.wrongTitle}
        columns={columns}
        rows={WRONG_RADII.map((id) => WRONG_RADIUS_TEXTS[id]).map(({ when, happens, remedy }) => [
          when,
          happens,
          remedy,
        ])}
        className="table-words"
      />
    </Section>
  );
}

export function Wire({ plan, system, onSave }: WireProps) {
  const wire = wireTable(plan);
  const cutting = cuttingTable(plan);
  const words = PLAN_WORDS.tables;
  return (
    <>
      <Section id="wire" title={words.wire.title} table={wire} onSave={onSave}>
        <p>{words.wire.note}</p>
        <DataTable
          table={wire}
          system={system}
          keep={['arcLengthMm', 'cutLengthMm']}
          // Where tangs go to the edge nothing is nipped; where slots do, no crown rests on what is left whole.
          {...(plan.ends.every((end) => end.nipMm === 0)
            ? { without: ['nipMm', 'tangLengthMm', 'shelfMm'] }
            : plan.ends.every((end) => end.slotOpen)
              ? { without: ['shelfMm'] }
              : {})}
        />
      </Section>
      <Section id="cutting" title={words.cutting.title} table={cutting} onSave={onSave} whole>
        <Order plan={plan} system={system} />
        {cutting && (
          <DataTable
            table={cutting}
            system={system}
            keep={['frets', 'pieceLengthsMm', 'stickLeftMm']}
            alike={PLAN_WORDS.alike}
          />
        )}
      </Section>
      <Bending plan={plan} system={system} />
    </>
  );
}

/** Where the figures of each metal come from, in one line. */
function metalSources({ metals }: FretworkPlan): string {
  const bySource = new Map<string, string[]>();
  for (const { metal } of metals) {
    const source = metalSource(metal);
    bySource.set(source, [...(bySource.get(source) ?? []), metalShortName(metal.id)]);
  }
  return [...bySource].map(([source, labels]) => `${[...new Set(labels)].join(', ')}: ${source}`).join('; ');
}

export function Metals({ plan, system, onSave }: WireProps) {
  const table = metalTable(plan);
  const { facts } = PLAN_WORDS;
  return (
    <Section id="metals" title={PLAN_WORDS.tables.metals.title} table={table} onSave={onSave}>
      <p>{PLAN_WORDS.tables.metals.note}</p>
      <DataTable
        table={table}
        system={system}
        keep={['nickel', 'bendToRadiusMm', 'bendStaysPercent']}
        without={['figures']}
        alike={PLAN_WORDS.alike}
      />
      <p className="sheet-small">
        {PLAN_WORDS.metalSources}: {metalSources(plan)}.
      </p>
      <h3>{facts.title}</h3>
      <ul className="sheet-facts">
        {METAL_FACTS.map((fact) => (
          <li key={fact.id}>
            {metalFactText(fact)} <small>{metalFactSource(fact)}</small>
          </li>
        ))}
      </ul>
    </Section>
  );
}
