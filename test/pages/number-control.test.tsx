// @vitest-environment happy-dom
import { cleanup, fireEvent, render, screen } from '@testing-library/react';
import { useState } from 'react';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { defaultBuild, type Build } from '../../src/neck/build.ts';
import type { NumberParameter } from '../../src/neck/parameter-kinds.ts';
import { parameterById } from '../../src/neck/parameters.ts';
import { checkChange } from '../tools/check-change.ts';
import type { UnitSystem } from '../../src/neck/units.ts';
import { NumberControl } from '../../src/pages/workshop/controls/number-control.tsx';
import { parameterWords } from '../../src/speech/names.ts';

afterEach(cleanup);

const log = { changed: [] as number[], begin: vi.fn(), end: vi.fn() };

function Harness({ id, system }: { readonly id: keyof Build; readonly system: UnitSystem }) {
  const parameter = parameterById(id) as NumberParameter;
  const [build, setBuild] = useState<Build>(defaultBuild());
  return (
    <NumberControl
      parameter={parameter}
      value={build[id] as number}
      system={system}
      change={(value) => {
        const problems = checkChange(build, { [id]: value });
        if (problems.length > 0) return { ok: false, problems };
        log.changed.push(value);
        setBuild({ ...build, [id]: value });
        return { ok: true };
      }}
      begin={log.begin}
      end={log.end}
    />
  );
}

function show(id: keyof Build, system: UnitSystem = 'metric') {
  log.changed = [];
  log.begin.mockClear();
  log.end.mockClear();
  render(<Harness id={id} system={system} />);
  const slider = screen.getByRole<HTMLInputElement>('slider');
  const field = screen.getByRole<HTMLInputElement>('textbox');
  return { slider, field, message: screen.getByRole('alert') };
}

describe('the slider', () => {
  test('has name, value text with unit, and limits', () => {
    const { slider } = show('kerfMm');
    expect(screen.getByRole('slider', { name: /^Kerf ?, mm$/ })).toBe(slider);
    expect(slider.getAttribute('aria-valuetext')).toBe('0.580\u00a0mm');
    expect([slider.min, slider.max]).toEqual(['0.3', '1.2']);
    const described = document.getElementById(slider.getAttribute('aria-describedby')!);
    expect(described!.textContent).toBe(parameterWords('kerfMm').hint);
  });

  test.each([
    ['ArrowUp', {}, 0.585],
    ['ArrowRight', {}, 0.585],
    ['ArrowDown', {}, 0.575],
    ['ArrowLeft', { shiftKey: true }, 0.5795],
    ['PageUp', {}, 0.63],
    ['PageDown', {}, 0.53],
    ['Home', {}, 0.3],
    ['End', {}, 1.2],
  ])('%s %o goes to %d', (key, modifiers, expected) => {
    const { slider } = show('kerfMm');
    fireEvent.keyDown(slider, { key, ...modifiers });
    expect(log.changed).toEqual([expected]);
  });

  test('makes one gesture of a drag, and of a key that is held', () => {
    const { slider } = show('kerfMm');
    fireEvent.pointerDown(slider);
    for (const value of ['0.6', '0.65', '0.7012']) fireEvent.change(slider, { target: { value } });
    fireEvent.pointerUp(slider);
    fireEvent.blur(slider);
    expect([log.begin.mock.calls.length, log.end.mock.calls.length]).toEqual([1, 1]);
    expect(log.changed).toEqual([0.6, 0.65, 0.7]);
    fireEvent.keyDown(slider, { key: 'ArrowUp' });
    fireEvent.keyDown(slider, { key: 'ArrowUp' });
    fireEvent.keyUp(slider, { key: 'ArrowUp' });
    expect([log.begin.mock.calls.length, log.end.mock.calls.length]).toEqual([2, 2]);
  });

  test('refuses the impossible with the library’s reason and keeps the value', () => {
    const { slider, message } = show('slotDepthMm');
    fireEvent.keyDown(slider, { key: 'End' });
    expect(log.changed).toEqual([]);
    expect(message.textContent).toMatch(
      /^Slot depth is 6\smm; here it can be at most [\d.]+\smm: .* 3\.00\u00a0mm is kept\.$/,
    );
    fireEvent.keyDown(slider, { key: 'ArrowUp' });
    expect(message.textContent).toBe('');
  });

  test('is reset by a double click', () => {
    const { slider } = show('kerfMm');
    fireEvent.keyDown(slider, { key: 'PageUp' });
    fireEvent.doubleClick(slider);
    expect(log.changed).toEqual([0.63, 0.58]);
  });
});

describe('the field', () => {
  function type(field: HTMLInputElement, text: string) {
    fireEvent.focus(field);
    fireEvent.change(field, { target: { value: text } });
  }

  test('takes what is typed on Enter and on leaving', () => {
    const { field } = show('kerfMm');
    type(field, '0,6');
    fireEvent.keyDown(field, { key: 'Enter' });
    type(field, '0.61');
    fireEvent.blur(field);
    expect(log.changed).toEqual([0.6, 0.61]);
    expect(field.value).toBe('0.610');
  });

  test('takes any length unit, and shows the one of the page', () => {
    const { field } = show('kerfMm', 'inch');
    expect(field.value).toBe('0.0228');
    expect(screen.getByText('Kerf').textContent).toBe('Kerf, in');
    type(field, '0.6 mm');
    fireEvent.keyDown(field, { key: 'Enter' });
    expect(log.changed).toEqual([0.6]);
    expect(field.value).toBe('0.0236');
  });

  test('refuses what is out of range, keeps the typed text while it is being mended, and never clamps', () => {
    const { field, message } = show('kerfMm');
    type(field, '3');
    fireEvent.keyDown(field, { key: 'Enter' });
    expect(log.changed).toEqual([]);
    expect(field.value).toBe('3');
    expect(field.getAttribute('aria-invalid')).toBe('true');
    expect(message.textContent).toBe(
      'Kerf cannot be 3.000\u00a0mm: it takes 0.3 to 1.2\u00a0mm. 0.580\u00a0mm is kept.',
    );
    fireEvent.blur(field);
    expect(field.value).toBe('0.580');
    expect(message.textContent).toMatch(/is kept/);
    type(field, '0.6');
    fireEvent.keyDown(field, { key: 'Enter' });
    expect(message.textContent).toBe('');
  });

  test('refuses what is no number', () => {
    const { field, message } = show('fretCount');
    type(field, 'many');
    fireEvent.blur(field);
    expect(message.textContent).toBe('“many” is not a number. Frets takes 12 to 36. 22 is kept.');
    type(field, '22.5');
    fireEvent.blur(field);
    expect(message.textContent).toBe('Frets cannot be 22.5: it takes a whole number, 12 to 36. 22 is kept.');
  });

  test('forgets what was typed on Escape', () => {
    const { field, message } = show('kerfMm');
    type(field, '9');
    fireEvent.keyDown(field, { key: 'Enter' });
    fireEvent.keyDown(field, { key: 'Escape' });
    expect(field.value).toBe('0.580');
    expect(message.textContent).toBe('');
    fireEvent.blur(field);
    expect(log.changed).toEqual([]);
  });

  test('steps with the upright arrows and the Page keys, and leaves the others to the text', () => {
    const { field } = show('kerfMm');
    fireEvent.keyDown(field, { key: 'ArrowUp' });
    fireEvent.keyDown(field, { key: 'PageDown' });
    expect(log.changed).toEqual([0.585, 0.535]);
    for (const key of ['ArrowLeft', 'Home', 'End']) {
      expect(fireEvent.keyDown(field, { key })).toBe(true);
    }
    expect(log.changed).toHaveLength(2);
  });
});

test('a value that is not the standard one can be reset by name', () => {
  const { slider } = show('kerfMm');
  expect(screen.queryByRole('button')).toBeNull();
  fireEvent.keyDown(slider, { key: 'ArrowUp' });
  fireEvent.click(screen.getByRole('button', { name: 'Reset Kerf to 0.580\u00a0mm' }));
  expect(log.changed).toEqual([0.585, 0.58]);
});
