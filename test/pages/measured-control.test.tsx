// @vitest-environment happy-dom
/** Entering what was measured of a blank: nothing changes until all is there, and a slip is asked about, never mended. */
import { act, cleanup, fireEvent, render, within } from '@testing-library/react';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { defaultBuild, type Build } from '../../src/neck/build.ts';
import { measuredModulusMPa } from '../../src/mechanics/elements/materials.ts';
import Controls from '../../src/pages/workshop/controls/controls.tsx';
import { store } from '../../src/state/store.ts';

const first = store.getState();
beforeEach(() => store.setState({ ...first, build: defaultBuild() }));
afterEach(cleanup);

const build = (): Build => store.getState().build;

function show(part: 'Neck' | 'Board' = 'Neck') {
  const { container } = render(<Controls />);
  // The neck and its board are the first two groups.
  for (const group of [...container.querySelectorAll('details')].slice(0, 2)) {
    act(() => {
      group.open = true;
      fireEvent(group, new Event('toggle'));
    });
  }
  const control = (name: string) =>
    within(container.querySelector<HTMLElement>(`[data-parameter="${part.toLowerCase()}Blank${name}"]`)!);
  const field = (name: string) => control(name).getByRole<HTMLInputElement>('textbox');
  const enter = (name: string, text: string) =>
    act(() => {
      fireEvent.change(field(name), { target: { value: text } });
      fireEvent.blur(field(name));
    });
  const choose = (test_: string) =>
    act(() => void fireEvent.change(control('Test').getByRole('combobox'), { target: { value: test_ } }));
  const press = (name: string, button: RegExp) =>
    act(() => void fireEvent.click(control(name).getByRole('button', { name: button })));
  return { control, field, enter, choose, press };
}

/** A maple blank, bent: 40 N on 600 mm of 80 × 22 mm. */
const RIGHT = [
  ['LengthMm', '700'],
  ['WidthMm', '80'],
  ['ThicknessMm', '22'],
  ['SpanMm', '600'],
  ['LoadN', '40'],
] as const;

test('fields start empty, say what is missing, and nothing counts until the last number is there', () => {
  const { control, field, enter, choose } = show();
  choose('sag');
  expect(RIGHT.map(([name]) => field(name).value)).toEqual(['', '', '', '', '']);
  expect(control('LengthMm').queryByRole('slider')).toBeNull();
  for (const [name, text] of RIGHT) {
    expect(control('Test').getByRole('status').textContent).toMatch(/^Still missing: .*Until then/);
    enter(name, text);
    expect(measuredModulusMPa(build(), 'neck')).toBeUndefined();
  }
  enter('SagMm', '0.2');
  expect(measuredModulusMPa(build(), 'neck')).toBeGreaterThan(5000);
  expect(control('Test').getByRole('status').textContent).toMatch(/^Measured: 12\.7\sGPa, beside \d+\.\d\sGPa of /);
});

test('a slip is asked about before it is taken: what was meant, or what was typed', () => {
  const { control, field, enter, choose, press } = show();
  choose('sag');
  for (const [name, text] of RIGHT) enter(name, text);
  enter('SagMm', '2');
  const before = build();
  expect(before.neckBlankSagMm).toBeNull();
  const question = control('SagMm')
    .getAllByRole('alert')
    .map(({ textContent }) => textContent)
    .join(' ');
  expect(question).toMatch(/^2\.00\smm makes this blank 11 times softer than .*: 1\.27\sGPa against \d+\.\d\sGPa\./);
  expect(question).toMatch(/Did you mean 0\.20\smm \(the decimal point\)\?/);
  press('SagMm', /^Take 0\.20\smm$/);
  expect(build().neckBlankSagMm).toBe(0.2);
  // The other way out, from a value that is there.
  enter('SagMm', '2');
  expect(build().neckBlankSagMm).toBe(0.2);
  press('SagMm', /^Keep 2\.00\smm$/);
  expect(build().neckBlankSagMm).toBe(2);
  expect(field('SagMm').value).toBe('2.00');
  expect(control('SagMm').queryByRole('button', { name: /^Keep/ })).toBeNull();
});

test('a slip in another number than the last is proposed there, and both are one step back', () => {
  const { enter, choose, press } = show();
  choose('sag');
  // The load in kilograms.
  for (const [name, text] of RIGHT) enter(name, name === 'LoadN' ? '4.08' : text);
  enter('SagMm', '0.2');
  expect(build().neckBlankSagMm).toBeNull();
  press('SagMm', /^Take 40\.0\d*\sN$/);
  expect([build().neckBlankSagMm, build().neckBlankLoadN]).toEqual([0.2, 40.0111]);
  act(() => store.getState().undo());
  expect([build().neckBlankSagMm, build().neckBlankLoadN]).toEqual([null, 4.08]);
});

test('a span longer than the blank is refused at the field, with both numbers', () => {
  const { control, field, enter, choose } = show();
  choose('sag');
  enter('LengthMm', '500');
  enter('SpanMm', '600');
  expect(build().neckBlankSpanMm).toBeNull();
  expect(control('SpanMm').getByRole('alert').textContent).toMatch(
    /is 600\smm; here it can be at most 500\smm: the blank must reach over both supports\. The field stays empty\.$/,
  );
  expect(field('SpanMm').value).toBe('');
});

test('a field can be emptied, and the species counts again', () => {
  const { enter, choose, press } = show();
  choose('sag');
  for (const [name, text] of [...RIGHT, ['SagMm', '0.2'] as const]) enter(name, text);
  expect(measuredModulusMPa(build(), 'neck')).toBeDefined();
  enter('WidthMm', '');
  expect(build().neckBlankWidthMm).toBeNull();
  expect(measuredModulusMPa(build(), 'neck')).toBeUndefined();
  press('SagMm', /^Empty /);
  expect(build().neckBlankSagMm).toBeNull();
});

test.each(['abc', '0', '99999'])('%s is refused, and the field stays empty', (text) => {
  const { control, enter, choose } = show('Board');
  choose('tap');
  enter('MassG', text);
  expect(build().boardBlankMassG).toBeNull();
  expect(control('MassG').getByRole('alert').textContent).toMatch(/The field stays empty\.$/);
});
