// @vitest-environment happy-dom
import { cleanup, fireEvent, render, screen } from '@testing-library/react';
import { act } from 'react';
import { afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { createPredictor } from '../../src/mechanics/predict.ts';
import { METHODS, type Prediction } from '../../src/mechanics/prediction-types.ts';
import { sampleLine } from '../../src/mechanics/relief.ts';
import { BowChart } from '../../src/panels/chart/bow-chart.tsx';
import { chartScales, printedFrets } from '../../src/panels/chart/chart-scales.ts';
import { store } from '../../src/state/store.ts';

const first = store.getState();
let prediction: Prediction;
beforeAll(() => {
  prediction = createPredictor().predict(first.build);
});
beforeEach(() => {
  store.setState({ ...first, solution: { build: first.build, prediction, version: 1 } });
});
afterEach(cleanup);

const paths = () => [...document.querySelectorAll('path.fret-line')].map((path) => path.getAttribute('data-method'));

describe('the chart', () => {
  test('draws one line for each method, the chosen one over the others, and all in words', () => {
    render(<BowChart />);
    expect(new Set(paths())).toEqual(new Set(METHODS));
    expect(paths().at(-1)).toBe('press');
    const words = screen.getByRole('img').getAttribute('aria-label')!;
    expect(words).toMatch(
      /^Line of the fret tops against a straightedge, all 22 frets in, no strings\. press fit: 0\.\d\d\smm back-bow/,
    );
  });

  test('draws the chosen line alone when asked', () => {
    render(<BowChart />);
    fireEvent.click(screen.getByRole('checkbox', { name: 'all three lines' }));
    expect(paths()).toEqual(['press']);
  });

  test('as a table has the same numbers, fret by fret', () => {
    render(<BowChart />);
    fireEvent.click(screen.getByRole('checkbox', { name: 'as a table' }));
    const rows = [...document.querySelectorAll('tbody tr')];
    expect(rows).toHaveLength(22);
    const cells = rows.map((row) => row.querySelector('td')!.textContent!.replace('−', '-'));
    const { reliefMm } = prediction.methods.press.fretted;
    cells.forEach((cell, index) => {
      const relief = sampleLine(prediction.stationXMm, reliefMm, prediction.fretXMm[index]!);
      expect(cell).toBe(relief.toFixed(2).replace('-0.00', '0.00'));
    });
  });

  test('marks the fret that is pointed at anywhere, without rendering', () => {
    render(<BowChart />);
    const cursor = document.querySelector<SVGGElement>('.cursor')!;
    expect(cursor.style.display).toBe('none');
    store.getState().hoverFret(12);
    expect(cursor.style.display).toBe('');
    expect(cursor.textContent).toMatch(/^fret 12: 0\.\d\d\smm back-bow$/);
    store.getState().hoverFret(null);
    expect(cursor.style.display).toBe('none');
  });

  test('follows the rail', () => {
    render(<BowChart />);
    const line = () => document.querySelector('path[data-chosen]')!.getAttribute('d');
    const before = line();
    act(() => store.getState().setRail({ phase: 'strung' }));
    expect(line()).not.toBe(before);
    expect(screen.getByRole('img').getAttribute('aria-label')).toMatch(/just strung/);
  });
});

test('a hump stands above the straightedge, and everything lies inside the drawing', () => {
  const size = { width: 800, height: 200 };
  const { x, y } = chartScales(size, 500, [-0.4, 0.1]);
  expect(y(-0.4)).toBeLessThan(y(0));
  expect(y(0)).toBeLessThan(y(0.1));
  for (const px of [y(-0.4), y(0.1)]) expect(px > 0 && px < size.height).toBe(true);
  expect(x(500)).toBeLessThanOrEqual(size.width);
});

test('a bow of next to nothing is not blown up to fill the drawing', () => {
  const { y } = chartScales({ width: 800, height: 200 }, 500, [0.0001, -0.0001]);
  expect(y.domain()[1]! - y.domain()[0]!).toBeGreaterThanOrEqual(0.2);
});

test('fret numbers never touch', () => {
  const at = prediction.fretXMm.map((xMm) => xMm / 2);
  const printed = printedFrets(at, 22);
  expect([printed[0], printed.at(-1)]).toEqual([1, 22]);
  for (let index = 1; index < printed.length; index += 1) {
    expect(at[printed[index]! - 1]! - at[printed[index - 1]! - 1]!).toBeGreaterThanOrEqual(22);
  }
});
