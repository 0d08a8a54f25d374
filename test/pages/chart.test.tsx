// @vitest-environment happy-dom
import { cleanup, fireEvent, render, screen } from '@testing-library/react';
import { act } from 'react';
import { afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { createPredictor } from '../../src/mechanics/predict.ts';
import { filedValue } from '../../src/neck/quantities.ts';
import { METHODS, type Prediction } from '../../src/mechanics/prediction-types.ts';
import { sampleLine } from '../../src/mechanics/relief.ts';
import { BowChart } from '../../src/pages/workshop/chart/bow-chart.tsx';
import { chartScales, printedFrets } from '../../src/pages/workshop/chart/chart-scales.ts';
import { rangeMm, rangeOn, wholeBoard, withFrom, withTo, zoomed } from '../../src/pages/workshop/chart/fret-range.ts';
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

  test('as a table has the same numbers, fret by fret', async () => {
    render(<BowChart />);
    fireEvent.click(screen.getByRole('checkbox', { name: 'as a table' }));
    await screen.findByRole('table');
    const rows = [...document.querySelectorAll('tbody tr')];
    expect(rows).toHaveLength(22);
    const cells = rows.map((row) => row.querySelector('td')!.textContent.replace('−', '-'));
    const { reliefMm } = prediction.methods.press.fretted;
    cells.forEach((cell, index) => {
      const relief = sampleLine(prediction.stationXMm, reliefMm, prediction.fretXMm[index]);
      // As files hold it, and that to two digits.
      expect(cell).toBe(filedValue(relief, 'mm').toFixed(2).replace('-0.00', '0.00'));
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

  test('shows the part of the board that is chosen, and the whole of it again', () => {
    render(<BowChart />);
    const numbers = () => [...document.querySelectorAll('.fret-tick')].length;
    expect(numbers()).toBe(22);
    const whole = document.querySelector('path[data-chosen]')!.getAttribute('d');
    fireEvent.change(screen.getByRole('combobox', { name: 'Shown from fret' }), { target: { value: '3' } });
    fireEvent.change(screen.getByRole('combobox', { name: 'Shown to fret' }), { target: { value: '14' } });
    expect(numbers()).toBe(12);
    expect(document.querySelector('path[data-chosen]')!.getAttribute('d')).not.toBe(whole);
    fireEvent.click(screen.getByRole('button', { name: 'whole board' }));
    expect(numbers()).toBe(22);
    expect(document.querySelector('path[data-chosen]')!.getAttribute('d')).toBe(whole);
    expect(screen.queryByRole('button', { name: 'whole board' })).toBeNull();
  });

  test('zooms about the fret under the pointer with Ctrl and the wheel, and leaves the wheel alone without', () => {
    render(<BowChart />);
    const drawing = screen.getByRole('img');
    drawing.getBoundingClientRect = () => new DOMRect(0, 0, 960, 170);
    const numbers = () => [...document.querySelectorAll('.fret-tick')].length;
    // The wheel of happy-dom knows no Ctrl: a press of the mouse stands in for it.
    const turn = (deltaY: number, ctrlKey: boolean) =>
      fireEvent(
        drawing,
        Object.assign(new MouseEvent('wheel', { clientX: 480, ctrlKey, bubbles: true, cancelable: true }), { deltaY }),
      );
    expect(turn(-240, false)).toBe(true);
    expect(numbers()).toBe(22);
    expect(turn(-240, true)).toBe(false);
    const closer = numbers();
    expect(closer).toBeLessThan(22);
    turn(2400, true);
    expect(numbers()).toBe(22);
  });

  test('shows where the relief is wanted, as wide as the checks allow', () => {
    render(<BowChart />);
    const rect = document.querySelector('.target rect')!;
    expect(Number(rect.getAttribute('height'))).toBeGreaterThan(0);
    const level = Number(document.querySelector('.straightedge line')!.getAttribute('y1'));
    // Relief is a hollow: it lies below the straightedge.
    expect(Number(rect.getAttribute('y'))).toBeGreaterThan(level);
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
  expect(y.domain()[1] - y.domain()[0]).toBeGreaterThanOrEqual(0.2);
});

test('fret numbers never touch', () => {
  const at = prediction.fretXMm.map((xMm) => xMm / 2);
  const printed = printedFrets(at, 22);
  expect([printed[0], printed.at(-1)]).toEqual([1, 22]);
  for (let index = 1; index < printed.length; index += 1) {
    expect(at[printed[index] - 1] - at[printed[index - 1] - 1]).toBeGreaterThanOrEqual(22);
  }
});

describe('the part of the board that is shown', () => {
  const FRETS = 22;

  test('never comes closer than two frets, and its other end makes way', () => {
    expect(withFrom({ from: 0, to: 5 }, 9, FRETS)).toEqual({ from: 9, to: 11 });
    expect(withFrom({ from: 0, to: 22 }, 22, FRETS)).toEqual({ from: 20, to: 22 });
    expect(withTo({ from: 9, to: 22 }, 3)).toEqual({ from: 1, to: 3 });
    expect(withTo({ from: 0, to: 22 }, 1)).toEqual({ from: 0, to: 2 });
  });

  test('zooms about a fret, by one fret at least, and stays on the board', () => {
    let range = wholeBoard(FRETS);
    for (let turn = 0; turn < 60; turn += 1) range = zoomed(range, 12, 0.97, FRETS);
    expect(range.to - range.from).toBe(2);
    expect(range.from <= 12 && range.to >= 12).toBe(true);
    for (let turn = 0; turn < 60; turn += 1) range = zoomed(range, 12, 1.02, FRETS);
    expect(range).toEqual(wholeBoard(FRETS));
    expect(zoomed({ from: 18, to: 22 }, 22, 2, FRETS)).toEqual({ from: 14, to: 22 });
  });

  test('is the whole board again on a board with fewer frets', () => {
    expect(rangeOn({ from: 12, to: 22 }, 20)).toEqual(wholeBoard(20));
    expect(rangeOn({ from: 12, to: 20 }, 20)).toEqual({ from: 12, to: 20 });
  });

  test('begins at the nut and ends with the board', () => {
    expect(rangeMm({ from: 0, to: 3 }, [30, 50, 70], 90)).toEqual([0, 90]);
    expect(rangeMm({ from: 1, to: 2 }, [30, 50, 70], 90)).toEqual([30, 50]);
  });
});
