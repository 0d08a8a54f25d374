/**
 * The bench's table as text.
 */
import type { BenchRow } from './measure.ts';

/** Three significant figures, without exponents. */
function figures(value: number): string {
  if (value === 0) return '0';
  const decimals = Math.max(0, 2 - Math.floor(Math.log10(Math.abs(value))));
  return value.toFixed(Math.min(decimals, 6));
}

/**
 * Lays rows out as a Markdown table, which reads as well in a terminal.
 *
 * @param rows - in the order they are to be shown
 */
export function tableOf(rows: readonly BenchRow[]): string {
  const lines = [
    ['what', 'median', '10–90 %', 'unit', 'runs', 'yardstick', '× yardstick', 'aim', ''],
    ...rows.map(({ what, median, low, high, unit, runs, yardstick, aim }) => [
      what,
      figures(median),
      runs === 1 ? '' : `${figures(low)}–${figures(high)}`,
      unit,
      String(runs),
      yardstick === undefined ? '' : figures(yardstick),
      yardstick === undefined ? '' : figures(median / yardstick),
      aim === undefined ? '' : figures(aim),
      aim === undefined ? '' : median <= aim ? 'met' : 'missed',
    ]),
  ];
  const widths = lines.reduce<number[]>(
    (most, line) => line.map((cell, at) => Math.max(most[at] ?? 0, cell.length)),
    [],
  );
  const text = lines.map((line) => `| ${line.map((cell, at) => cell.padEnd(widths[at] ?? 0)).join(' | ')} |`);
  const rule = `| ${widths.map((width) => '-'.repeat(width)).join(' | ')} |`;
  return [text[0], rule, ...text.slice(1)].join('\n');
}
