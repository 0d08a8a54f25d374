// @vitest-environment happy-dom
/** A bow that is typed: no sign, no way taken for granted, and never the other way round. */
import { cleanup, fireEvent, render, screen } from '@testing-library/react';
import { useState } from 'react';
import { afterEach, describe, expect, test } from 'vitest';
import { BowNumber } from '../../src/kit/bow-number.tsx';
import type { BowWay } from '../../src/neck/bow-way.ts';
import type { Outcome } from '../../src/state/build-slice.ts';

afterEach(cleanup);

const PARAMETER = { label: 'Bow', unit: 'mm', min: -1, max: 1.5, step: 0.01, digits: 2 } as const;

function show(
  first: number,
  presumed?: BowWay,
): { readonly values: number[]; readonly messages: (string | undefined)[] } {
  const values: number[] = [];
  const messages: (string | undefined)[] = [];
  function Holder() {
    const [value, setValue] = useState(first);
    return (
      <BowNumber
        parameter={PARAMETER}
        name="Bow"
        value={value}
        system="metric"
        presumed={presumed}
        change={(wanted): Outcome => {
          values.push(wanted);
          setValue(wanted);
          return { ok: true };
        }}
        refused={(message) => messages.push(message)}
      />
    );
  }
  render(<Holder />);
  return { values, messages };
}

const field = () => screen.getByRole<HTMLInputElement>('textbox');
const radio = (name: string) => screen.getByRole<HTMLInputElement>('radio', { name });

function type(text: string): void {
  fireEvent.change(field(), { target: { value: text } });
  fireEvent.keyDown(field(), { key: 'Enter' });
}

describe('a size without a way', () => {
  test('changes nothing and asks; the answer makes it what was meant', () => {
    const { values } = show(0);
    expect([radio('hump').checked, radio('hollow').checked]).toEqual([false, false]);
    type('0.14');
    expect(values).toEqual([]);
    expect(screen.getByText(/0\.14\smm: is it a hump or a hollow\?/)).toBeTruthy();
    fireEvent.click(radio('hump'));
    expect(values).toEqual([-0.14]);
    expect(screen.queryByText(/is it a hump/)).toBeNull();
    expect(field().value).toBe('0.14');
  });

  test('goes the way that is presumed, where one is', () => {
    const { values } = show(0, 'hollow');
    type('0.14');
    expect(values).toEqual([0.14]);
  });
});

describe('a sign', () => {
  test.each(['-0.14', '−0.14', '+0.14', '–0.14', '- 0.14'])('“%s” is refused, whichever way is chosen', (text) => {
    const { values, messages } = show(0.2);
    type(text);
    fireEvent.click(radio('hump'));
    expect(values).toEqual([-0.2]);
    expect(messages).toContain('Choose hump or hollow; the size takes no sign.');
  });
});

describe('a bow that is there', () => {
  test('shows its way and its size, keeps the way when another size is typed, and turns when the way is chosen', () => {
    const { values } = show(-0.3);
    expect(radio('hump').checked).toBe(true);
    expect(field().value).toBe('0.30');
    type('0.25');
    type('0');
    type('0.1');
    fireEvent.click(radio('hollow'));
    expect(values).toEqual([-0.25, 0, -0.1, 0.1]);
  });

  test('ends where its way ends: a hump at 1 mm, a hollow at 1.5', () => {
    const { values, messages } = show(-0.3);
    type('1.2');
    expect(values).toEqual([]);
    expect(messages.at(-1)).toMatch(/0 to 1\smm/);
    fireEvent.click(radio('hollow'));
    type('1.2');
    expect(values).toEqual([0.3, 1.2]);
  });

  test('steps by keys without turning', () => {
    const { values } = show(-0.01);
    for (let press = 0; press < 4; press += 1) fireEvent.keyDown(field(), { key: 'ArrowDown' });
    fireEvent.keyDown(field(), { key: 'ArrowUp' });
    expect(values.every((value) => value <= 0)).toBe(true);
    expect(values.at(-1)).toBe(-0.01);
  });
});
