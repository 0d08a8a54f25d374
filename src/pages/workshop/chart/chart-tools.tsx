/** What the chart shows: over time or along the neck, all lines or one, as a table, which frets; and saving it. */
import { store, useBackbow } from '../../../state/store.ts';
import { lazy, Suspense } from 'react';
import type { ChartShown } from '../../../state/view-slice.ts';
import { CHART_WORDS, CHARTS_WORDS, PICTURE_WORDS } from '../../../speech/en/workshop/workshop.ts';
import { isWhole, LEAST_SPAN, wholeBoard, withFrom, withTo, type FretRange } from './fret-range.ts';

const RoomTools = lazy(async () => ({ default: (await import('../room/room-tools.tsx')).RoomTools }));

const CHARTS: readonly ChartShown[] = ['line', 'time', 'room'];

interface RangeProps {
  readonly range: FretRange;
  readonly frets: number;
  readonly setRange: (range: FretRange) => void;
}

/** From which fret to which, by keyboard as well as by pointer. */
function RangeChoice({ range, frets, setRange }: RangeProps) {
  const name = (fret: number) => (fret === 0 ? PICTURE_WORDS.nutwards : String(fret));
  const choices = (first: number, last: number) =>
    Array.from({ length: last - first + 1 }, (_, index) => (
      <option key={first + index} value={first + index}>
        {name(first + index)}
      </option>
    ));
  return (
    <div className="chart-range">
      <select
        aria-label={CHART_WORDS.rangeFrom}
        title={CHART_WORDS.rangeHint}
        value={range.from}
        onChange={(event) => setRange(withFrom(range, Number(event.currentTarget.value), frets))}
      >
        {choices(0, frets - LEAST_SPAN)}
      </select>
      <span aria-hidden="true">{CHART_WORDS.rangeJoin}</span>
      <select
        aria-label={CHART_WORDS.rangeTo}
        title={CHART_WORDS.rangeHint}
        value={range.to}
        onChange={(event) => setRange(withTo(range, Number(event.currentTarget.value)))}
      >
        {choices(LEAST_SPAN, frets)}
      </select>
      {!isWhole(range, frets) && (
        <button type="button" className="link" onClick={() => setRange(wholeBoard(frets))}>
          {CHART_WORDS.whole}
        </button>
      )}
    </div>
  );
}

interface ChartToolsProps extends RangeProps {
  readonly asTable: boolean;
  readonly setAsTable: (asTable: boolean) => void;
  /** Undefined while there is nothing to save. */
  readonly save: (() => void) | undefined;
}

export function ChartTools({ asTable, setAsTable, save, ...range }: ChartToolsProps) {
  const comparing = useBackbow((state) => state.comparing);
  const chart = useBackbow((state) => state.chart);
  return (
    <div className="chart-tools">
      <div className="chart-buttons">
        <select
          aria-label={CHARTS_WORDS.choice}
          value={chart}
          onChange={(event) => store.getState().setChart(event.currentTarget.value as ChartShown)}
        >
          {CHARTS.map((one) => (
            <option key={one} value={one}>
              {CHARTS_WORDS[one].choice}
            </option>
          ))}
        </select>
        {chart === 'line' && (
          <button type="button" disabled={!save} title={CHART_WORDS.saveHint} onClick={save}>
            {CHART_WORDS.save}
          </button>
        )}
      </div>
      {chart === 'room' ? (
        <Suspense>
          <RoomTools />
        </Suspense>
      ) : (
        <>
          <label className="tick">
            <input
              type="checkbox"
              checked={comparing}
              onChange={(event) => store.getState().setComparing(event.currentTarget.checked)}
            />
            {CHART_WORDS.comparing}
          </label>
          <label className="tick">
            <input type="checkbox" checked={asTable} onChange={(event) => setAsTable(event.currentTarget.checked)} />
            {CHART_WORDS.table}
          </label>
        </>
      )}
      {chart === 'line' && !asTable && <RangeChoice {...range} />}
    </div>
  );
}
