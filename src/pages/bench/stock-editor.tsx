/** The blades and wires of the workshop, each as it was measured; every change is kept at once and can be undone. */
import { useState, type ReactNode } from 'react';
import { LabelledNumber } from '../../kit/labelled-number.tsx';
import { LimitedText } from '../../kit/limited-text.tsx';
import { useRefusal } from '../../kit/use-refusal.ts';
import { newId } from '../../mechanics/bench-log/identity.ts';
import type { UnitSystem } from '../../neck/units.ts';
import { BENCH_WORDS } from '../../speech/en/bench/bench.ts';
import { STOCK_WORDS } from '../../speech/en/bench/stock.ts';
import { isolated } from '../../speech/isolate.ts';
import { textOf } from '../../speech/quantity-text.ts';
import {
  MOST_STOCK_NAME,
  STOCK_NUMBERS,
  type Blade,
  type StockItem,
  type StockNumber,
  type Wire,
} from '../../state/stock/stock-item.ts';
import { changeStock, MOST_STOCK } from '../../state/stock/stock-store.ts';
import { useStock } from '../../state/stock/use-stock.ts';
import { store } from '../../state/store.ts';
import { SaidLine, type Said } from '../log/said-line.tsx';

/** Step, and digits after the point. */
const STEPS: Readonly<Record<StockNumber, readonly [step: number, digits: number]>> = {
  kerfMm: [0.005, 3],
  spreadMm: [0.001, 3],
  tangWidthMm: [0.005, 3],
  studWidthMm: [0.005, 3],
  studAreaMm2: [0.01, 2],
  studPitchMm: [0.05, 2],
};

interface NumberProps {
  readonly id: StockNumber;
  readonly value: number | null;
  readonly system: UnitSystem;
  readonly set: (value: number) => void;
  readonly empty?: () => void;
}

function StockField({ id, value, system, set, empty }: NumberProps) {
  const [step, digits] = STEPS[id];
  const parameter = { ...STOCK_NUMBERS[id], step, digits, label: STOCK_WORDS[id] };
  return (
    <LabelledNumber
      className="bench-field"
      parameter={parameter}
      value={value}
      system={system}
      set={set}
      {...(empty ? { empty } : {})}
    />
  );
}

interface ItemProps<Item extends StockItem> {
  readonly item: Item;
  /** What it is called where it has no name. */
  readonly title: string;
  readonly system: UnitSystem;
  readonly change: (item: Item) => void;
  readonly remove: () => void;
}

function Item({
  item,
  title,
  change,
  remove,
  children,
}: Omit<ItemProps<StockItem>, 'system'> & { readonly children: ReactNode }) {
  const [draft, setDraft] = useState<string | null>(null);
  // A longer one waits until it is short enough, and says so.
  function keepName(): void {
    const name = (draft ?? item.name).trim();
    if (name.length > MOST_STOCK_NAME) return;
    setDraft(null);
    if (name !== item.name) change({ ...item, name });
  }
  return (
    <li className="bench-item">
      <div onBlur={keepName}>
        <LimitedText label={STOCK_WORDS.name} value={draft ?? item.name} most={MOST_STOCK_NAME} change={setDraft} />
      </div>
      {children}
      <button type="button" aria-label={STOCK_WORDS.removeName(title)} onClick={remove}>
        {STOCK_WORDS.remove}
      </button>
    </li>
  );
}

function BladeItem({ item, system, change, ...rest }: ItemProps<Blade>) {
  return (
    <Item item={item} {...rest} change={(changed) => change(changed as Blade)}>
      <StockField id="kerfMm" value={item.kerfMm} system={system} set={(kerfMm) => change({ ...item, kerfMm })} />
      <StockField
        id="spreadMm"
        value={item.spreadMm}
        system={system}
        set={(spreadMm) => change({ ...item, spreadMm })}
        empty={() => change({ ...item, spreadMm: null })}
      />
    </Item>
  );
}

function WireItem({ item, system, change, ...rest }: ItemProps<Wire>) {
  const [refusal, setRefusal] = useRefusal();
  function propose(changed: Wire): void {
    const isOver = changed.studWidthMm < changed.tangWidthMm;
    setRefusal(isOver ? STOCK_WORDS.studsOverTang(textOf('tangWidthMm', changed.tangWidthMm, system)) : undefined);
    if (!isOver) change(changed);
  }
  const field = (id: 'studAreaMm2' | 'studPitchMm') => (
    <StockField
      id={id}
      value={item[id]}
      system={system}
      set={(value) => change({ ...item, [id]: value })}
      empty={() => change({ ...item, [id]: null })}
    />
  );
  return (
    <Item item={item} {...rest} change={(changed) => change(changed as Wire)}>
      {(['tangWidthMm', 'studWidthMm'] as const).map((id) => (
        <StockField
          key={id}
          id={id}
          value={item[id]}
          system={system}
          set={(value) => propose({ ...item, [id]: value })}
        />
      ))}
      {field('studAreaMm2')}
      {field('studPitchMm')}
      <p className="refusal" role="alert">
        {refusal}
      </p>
    </Item>
  );
}

/** What a new one begins with: the neck's own. */
function fresh(kind: StockItem['kind']): StockItem {
  const { kerfMm, tangWidthMm, studWidthMm } = store.getState().build;
  const shared = { id: newId(), name: '' };
  return kind === 'blade'
    ? { ...shared, kind, kerfMm, spreadMm: null }
    : { ...shared, kind, tangWidthMm, studWidthMm, studAreaMm2: null, studPitchMm: null };
}

export function StockEditor({ system }: { readonly system: UnitSystem }) {
  const { items, unreadable, trouble } = useStock();
  const [said, say] = useState<Said | null>(null);
  const blades = items.filter((each) => each.kind === 'blade');
  const wires = items.filter((each) => each.kind === 'wire');
  const titleOf = (item: StockItem, number: number) =>
    item.name === ''
      ? item.kind === 'blade'
        ? STOCK_WORDS.blade(number)
        : STOCK_WORDS.wire(number)
      : isolated(item.name);

  function change(out: readonly StockItem[], into: readonly StockItem[], title: string): void {
    changeStock(out, into);
    say({
      title,
      undo: async () => {
        changeStock(into, out);
      },
    });
  }
  const handlers = <Item extends StockItem>(item: Item, index: number) => {
    const title = titleOf(item, index + 1);
    return {
      item,
      title,
      system,
      change: (changed: Item) => change([item], [changed], STOCK_WORDS.changed(title)),
      remove: () => change([item], [], STOCK_WORDS.removed(title)),
    };
  };
  function add(kind: StockItem['kind']): void {
    const item = fresh(kind);
    const count = kind === 'blade' ? blades.length : wires.length;
    change([], [item], STOCK_WORDS.added(titleOf(item, count + 1)));
  }
  const isFull = items.length >= MOST_STOCK;
  return (
    <details className="bench-stock">
      <summary>{STOCK_WORDS.title}</summary>
      <p className="quiet">{STOCK_WORDS.intro}</p>
      {trouble !== null && (
        <p className="refusal" role="alert">
          {STOCK_WORDS.troubles[trouble]}
        </p>
      )}
      <SaidLine said={said} say={() => say({ title: BENCH_WORDS.undone })} />
      <h3>{STOCK_WORDS.blades}</h3>
      {blades.length === 0 && <p className="quiet">{STOCK_WORDS.noBlades}</p>}
      <ul>
        {blades.map((item, index) => (
          <BladeItem key={item.id} {...handlers(item, index)} />
        ))}
      </ul>
      <button type="button" disabled={isFull} onClick={() => add('blade')}>
        {STOCK_WORDS.addBlade}
      </button>
      <h3>{STOCK_WORDS.wires}</h3>
      {wires.length === 0 && <p className="quiet">{STOCK_WORDS.noWires}</p>}
      <ul>
        {wires.map((item, index) => (
          <WireItem key={item.id} {...handlers(item, index)} />
        ))}
      </ul>
      <button type="button" disabled={isFull} onClick={() => add('wire')}>
        {STOCK_WORDS.addWire}
      </button>
      {isFull && <p className="quiet">{STOCK_WORDS.full(MOST_STOCK)}</p>}
      {unreadable > 0 && <p className="quiet">{STOCK_WORDS.unreadable(unreadable)}</p>}
    </details>
  );
}
