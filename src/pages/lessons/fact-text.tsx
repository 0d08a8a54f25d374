/** A paragraph of a lesson with its numbers filled in. */
import { useBackbow } from '../../state/store.ts';
import { filled, measure, measureText, type Bench } from './quantities.ts';
import type { Quantity } from './types.ts';
import { useComing } from './use-bench.ts';

interface FactTextProps {
  readonly text: string;
  readonly facts: Readonly<Record<string, Quantity>>;
  readonly bench: Bench | null;
}

export function FactText({ text, facts, bench }: FactTextProps) {
  const system = useBackbow((state) => state.unitSystem);
  const coming = useComing();
  const say = (name: string): string => {
    const quantity = facts[name];
    return bench && quantity ? measureText(measure(quantity, bench), system) : '…';
  };
  if (!bench && text.includes('{')) return <p className="quiet">{coming}</p>;
  return <p>{filled(text, say)}</p>;
}
