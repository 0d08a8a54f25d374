/** Slots, seating with its glue, and the levelling budget: one row for each fret. */
import type { UnitSystem } from '../../../neck/units.ts';
import { formatNumber } from '../../../speech/quantity.ts';
import { ownStrengthText } from '../../../speech/playing/matches.ts';
import { textOf } from '../../../speech/quantity-text.ts';
import {
  levellingTable,
  playingTable,
  seatingTable,
  setUpTable,
  slotTable,
  type Table,
} from '../../../fretwork/plan/tables.ts';
import { PLAN_WORDS } from '../../../speech/en/pages/papers.ts';
import { DataTable } from '../data-table.tsx';
import type { SheetPlan } from '../../../verdict/sheet-plan.ts';
import { Section } from '../section.tsx';
import { glueWords } from '../../../speech/names.ts';

interface TablesProps {
  readonly sheet: SheetPlan;
  readonly system: UnitSystem;
  readonly onSave: (table: Table) => void;
}

export function Slots({ sheet, system, onSave }: TablesProps) {
  const table = slotTable(sheet.plan);
  return (
    <Section id="slots" title={PLAN_WORDS.tables.slots.title} table={table} onSave={onSave} whole>
      <p>{PLAN_WORDS.tables.slots.note}</p>
      <DataTable
        table={table}
        system={system}
        keep={['fretXMm', 'fromLastFretMm', 'fromPreviousFretMm', 'boardWidthMm']}
        // A slot that runs out through both edges is as long as the board is wide.
        {...(sheet.plan.slots.every((slot) => slot.open) ? { without: ['slotLengthMm'] } : {})}
      />
    </Section>
  );
}

function GlueFacts({ sheet, system }: Omit<TablesProps, 'onSave'>) {
  const { glue, glueRecipe } = sheet.plan;
  if (!glueRecipe) return null;
  const words = PLAN_WORDS.glue;
  const [from, to] = glueRecipe.openMinutes;
  return (
    <p>
      <b>
        {words.title}, {glueWords(glueRecipe.id).label}:
      </b>{' '}
      {words.total(textOf('glueTotalMm3', glue.totalMm3, system), formatNumber(glue.totalMl, 1))}{' '}
      {words.open(String(from), String(to))}{' '}
      {words.clamp(String(glueRecipe.clampMinutes), String(glueRecipe.fullHours))}{' '}
      {words.stiffness(textOf('glueModulusMPa', glueRecipe.modulusMPa, system))} <b>{words.cleanUp}:</b>{' '}
      {glueWords(glueRecipe.id).cleanUp} <b>{words.release}:</b> {glueWords(glueRecipe.id).release}
    </p>
  );
}

export function Seating({ sheet, system, onSave }: TablesProps) {
  const table = seatingTable(sheet.plan);
  return (
    <Section id="seating" title={PLAN_WORDS.tables.seating.title} table={table} onSave={onSave}>
      <GlueFacts sheet={sheet} system={system} />
      <DataTable table={table} system={system} keep={['seatingTurn', 'quarter']} />
    </Section>
  );
}

export function Levelling({ sheet, system, onSave }: TablesProps) {
  const table = levellingTable(sheet.plan);
  const words = PLAN_WORDS.levelling;
  return (
    <Section id="levelling" title={PLAN_WORDS.tables.levelling.title} table={table} onSave={onSave} whole>
      <p>
        {words[sheet.levelledIn]} {sheet.levellingAssumed ? words.assumed : ''}
      </p>
      {table ? <DataTable table={table} system={system} keep={['takenOffMm', 'crownLeftMm']} /> : <p>{words.none}</p>}
    </Section>
  );
}

/** What a turn of the rod does to the action; nothing without a rod. */
export function turnText({ setUp: { actionPerTurnMm } }: Pick<SheetPlan, 'setUp'>, system: UnitSystem): string {
  if (actionPerTurnMm === null) return '';
  const size = textOf('actionPerTurnMm', Math.abs(actionPerTurnMm), system);
  return actionPerTurnMm < 0 ? PLAN_WORDS.turn.lowers(size) : PLAN_WORDS.turn.raises(size);
}

export function Heights({ sheet, system, onSave }: TablesProps) {
  const table = setUpTable(sheet.plan);
  const { title, note } = PLAN_WORDS.tables.setUp;
  return (
    <Section id="setUp" title={title} table={table} onSave={onSave} whole>
      <p>
        {note} {turnText(sheet, system)}
      </p>
      {table && <DataTable table={table} system={system} keep={table.columns} />}
    </Section>
  );
}

/** What the set-up is good for, and what was assumed of the player. */
export function playedText(
  { setUp: { actionMm, pluckMm, own } }: Pick<SheetPlan, 'setUp'>,
  system: UnitSystem,
): string {
  const said = PLAN_WORDS.playing(textOf('actionMm', actionMm, system), textOf('pluckFromSaddleMm', pluckMm, system));
  return own ? `${said} ${PLAN_WORDS.ownPlaying(ownStrengthText(own.own, system))}` : said;
}

export function Played({ sheet, system, onSave }: TablesProps) {
  const table = playingTable(sheet.plan);
  const { title, note } = PLAN_WORDS.tables.playing;
  return (
    <Section id="playing" title={title} table={table} onSave={onSave} whole>
      <p>
        {note} {playedText(sheet, system)}
      </p>
      {table && <DataTable table={table} system={system} keep={table.columns} />}
    </Section>
  );
}
