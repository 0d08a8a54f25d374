// @vitest-environment happy-dom
import { act, cleanup, fireEvent, render, screen, within } from '@testing-library/react';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { defaultBuild } from '../../src/neck/build.ts';
import { GROUPS, type GroupId, type Parameter } from '../../src/neck/parameter-kinds.ts';
import { isRelevant, PARAMETERS } from '../../src/neck/parameters.ts';
import { PRESETS } from '../tools/presets.ts';
import Controls from '../../src/pages/workshop/controls/controls.tsx';
import { useReveal } from '../../src/pages/workshop/controls/reveal-store.ts';
import { store } from '../../src/state/store.ts';
import { groupName, parameterName, parameterWords } from '../../src/speech/names.ts';

const first = store.getState();
const ALL = PARAMETERS as readonly Parameter[];

beforeEach(() => {
  store.setState({ ...first, build: defaultBuild() });
});
afterEach(cleanup);

/** The controls with these groups open, the others shut. */
function show(...groups: readonly GroupId[]): HTMLElement {
  const { container } = render(<Controls />);
  const wanted = groups.map(groupName);
  for (const group of container.querySelectorAll('details')) {
    act(() => {
      group.open = wanted.includes(group.querySelector('h3')!.textContent);
      fireEvent(group, new Event('toggle'));
    });
  }
  return container;
}

const showAll = (): HTMLElement => show(...GROUPS);

/** Ids of the parameters whose controls are there. */
function shown(container: HTMLElement): string[] {
  return [...container.querySelectorAll<HTMLElement>('[data-parameter]')]
    .map((row) => row.dataset['parameter']!)
    .filter((id) => !id.startsWith('laminates'));
}

const relevant = () => ALL.filter((row) => isRelevant(row, store.getState().build)).map((row) => row.id);
const row = (container: HTMLElement, id: string) => container.querySelector<HTMLElement>(`[data-parameter="${id}"]`)!;

test('the groups stand in the order of the work', () => {
  render(<Controls />);
  expect(screen.getAllByRole('heading', { level: 3 }).map((heading) => heading.textContent)).toEqual(
    GROUPS.map(groupName),
  );
});

test('every parameter of the table that is of use has its control, in the order of the table', () => {
  const container = showAll();
  const byGroup = GROUPS.flatMap((group) => ALL.filter((parameter) => parameter.group === group));
  const expected = byGroup.map(({ id }) => id).filter((id) => relevant().includes(id));
  expect(shown(container)).toEqual(expected);
});

test('every control has a name, a description and an input of its kind', () => {
  const container = showAll();
  for (const parameter of ALL.filter(({ id }) => relevant().includes(id))) {
    const control = within(row(container, parameter.id));
    const role = { number: 'slider', choice: 'combobox', flag: 'checkbox' }[parameter.kind];
    const input = control.getByRole(role, { name: (name) => name.startsWith(parameterName(parameter.id)) });
    const described = input.getAttribute('aria-describedby')!;
    expect(document.getElementById(described)!.textContent).toBe(parameterWords(parameter.id).hint);
  }
});

test('no two elements have the same id', () => {
  const ids = [...showAll().querySelectorAll('[id]')].map((element) => element.id);
  expect(new Set(ids).size).toBe(ids.length);
});

describe('the shape of the studs', () => {
  const shapes = (container: HTMLElement) =>
    within(within(row(container, 'studShape')).getByRole('group', { name: 'Shape of the studs' })).getAllByRole(
      'button',
    );
  const pressed = (container: HTMLElement) =>
    shapes(container).map((button) => button.getAttribute('aria-pressed') === 'true');

  test('is chosen by its drawing, each one a step to undo', () => {
    const container = show('wire');
    expect(shapes(container).map((button) => button.getAttribute('aria-label'))).toEqual([
      'Block: ends in a flat as large as its foot; sets 0',
      'Ridge: ends in an edge; sets 1',
      'Point: ends in a point; sets 2',
    ]);
    expect(pressed(container)).toEqual([false, true, false]);
    for (const [index, value] of [0, 1, 2].entries()) {
      fireEvent.click(shapes(container)[index]);
      expect(store.getState().build.studShape).toBe(value);
      expect(pressed(container)).toEqual([0, 1, 2].map((each) => each === value));
    }
    act(() => store.getState().undo());
    expect(store.getState().build.studShape).toBe(1);
  });

  test('may lie between two drawings, and then none is pressed', () => {
    const container = show('wire');
    act(() => void store.getState().change({ studShape: 0.5 }, 'Shape of the studs'));
    expect(pressed(container)).toEqual([false, false, false]);
    expect(within(row(container, 'studShape')).getByRole<HTMLInputElement>('textbox').value).toBe('0.50');
  });
});

describe('a control', () => {
  test('changes the build, and one drag is one step to undo', () => {
    const container = show('slots');
    const slider = within(row(container, 'kerfMm')).getByRole('slider');
    fireEvent.pointerDown(slider);
    for (const value of ['0.6', '0.62', '0.64']) fireEvent.change(slider, { target: { value } });
    fireEvent.pointerUp(slider);
    expect(store.getState().build.kerfMm).toBe(0.64);
    expect(store.getState().history.past.map(({ label }) => label)).toEqual(['Kerf']);
    act(() => store.getState().undo());
    expect(within(row(container, 'kerfMm')).getByRole<HTMLInputElement>('textbox').value).toBe('0.580');
  });

  test('follows the build when another one takes its place', () => {
    const container = showAll();
    for (const preset of PRESETS) {
      act(() => void store.getState().replaceBuild(preset.build, preset.label));
      const select = within(row(container, 'boardWood')).getByRole<HTMLSelectElement>('combobox');
      expect(select.value).toBe(preset.build.boardWood);
      expect(new Set(shown(container))).toEqual(new Set(relevant()));
    }
  });

  test('appears and goes with the conditions of the table', () => {
    const container = show('board', 'time');
    expect(shown(container)).not.toContain('radiusLastFretMm');
    fireEvent.change(within(row(container, 'boardShape')).getByRole('combobox'), { target: { value: 'cone' } });
    expect(shown(container)).toContain('radiusLastFretMm');
    fireEvent.click(within(row(container, 'climateOn')).getByRole('checkbox'));
    expect(shown(container)).toContain('boardMoistureChange');
  });

  test('switches its unit with the page, and no value of the build', () => {
    const container = showAll();
    const { build } = store.getState();
    act(() => store.getState().setUnitSystem('inch'));
    expect(within(row(container, 'scaleLengthMm')).getByRole<HTMLInputElement>('textbox').value).toBe('25.51');
    expect(row(container, 'scaleLengthMm').textContent).toContain('Scale length, in');
    act(() => store.getState().setUnitSystem('metric'));
    expect(store.getState().build).toBe(build);
  });

  test('refuses a choice that is impossible here, and keeps the build', () => {
    act(() => void store.getState().change({ slotBottom: 'flat', slotDepthMm: 5.5 }, 'flat'));
    const container = show('slots');
    fireEvent.change(within(row(container, 'slotBottom')).getByRole('combobox'), { target: { value: 'radiused' } });
    expect(store.getState().build.slotBottom).toBe('flat');
    expect(within(row(container, 'slotBottom')).getByRole('alert').textContent).toMatch(
      /Slot depth is 5\.5\smm.*is kept/,
    );
  });
});

test('pointing at a control opens its group and gives it the focus', async () => {
  const { container } = render(<Controls />);
  expect(row(container, 'boardWood')).toBeNull();
  act(() => useReveal.getState().reveal('boardWood'));
  await act(() => new Promise((resolve) => requestAnimationFrame(resolve)));
  expect(row(container, 'boardWood').contains(document.activeElement)).toBe(true);
});

describe('the strings', () => {
  test('change as a set, keep their tuning, and take the tuning of another number of strings', () => {
    show('strings');
    fireEvent.change(screen.getByRole('combobox', { name: /^Set/ }), { target: { value: 'six-9-42' } });
    expect(store.getState().build.strings.map(({ pitch }) => pitch)).toEqual([64, 59, 55, 50, 45, 40]);
    fireEvent.change(screen.getByRole('combobox', { name: 'Tuning' }), { target: { value: 'six-drop-d' } });
    expect(store.getState().build.strings.at(-1)!.pitch).toBe(38);
    fireEvent.change(screen.getByRole('combobox', { name: /^Set/ }), { target: { value: 'four-45-105' } });
    expect(store.getState().build.strings.map(({ pitch }) => pitch)).toEqual([43, 38, 33, 28]);
  });

  test('can be changed one by one, and what is out of range is refused', () => {
    show('strings');
    const field = screen.getByRole<HTMLInputElement>('textbox', { name: 'String 1, diameter' });
    fireEvent.change(field, { target: { value: '0.3' } });
    fireEvent.blur(field);
    expect(store.getState().build.strings[0].diameterMm).toBe(0.3);
    fireEvent.change(field, { target: { value: '9' } });
    fireEvent.blur(field);
    expect(store.getState().build.strings[0].diameterMm).toBe(0.3);
    expect(screen.getByText(/String 1, diameter cannot be 9.000.mm: it takes 0.15 to 4.mm/)).toBeDefined();
  });

  test('can be added and taken off', () => {
    show('strings');
    fireEvent.click(screen.getByRole('button', { name: 'Add a lower string' }));
    expect(store.getState().build.strings).toHaveLength(7);
    expect(store.getState().build.strings.at(-1)!.pitch).toBe(35);
    fireEvent.click(screen.getByRole('button', { name: 'Take the last string off' }));
    expect(store.getState().build.strings).toHaveLength(6);
  });
});

test('laminates always fill the width', () => {
  show('neck');
  fireEvent.change(screen.getByRole('combobox', { name: 'Neck made of' }), { target: { value: '3' } });
  const { laminates } = store.getState().build;
  expect(laminates).toHaveLength(3);
  const share = screen.getByRole<HTMLInputElement>('textbox', { name: /^Share of the width, centre piece/ });
  fireEvent.change(share, { target: { value: '50' } });
  fireEvent.blur(share);
  const shares = store.getState().build.laminates.map((laminate) => laminate.share);
  expect(shares[0]).toBe(0.5);
  // Shares are stored to nine digits.
  expect(Number(shares.reduce((sum, part) => sum + part, 0).toFixed(6))).toBe(1);
  fireEvent.change(share, { target: { value: '99' } });
  fireEvent.blur(share);
  expect(store.getState().build.laminates.map((laminate) => laminate.share)).toEqual(shares);
});

test('stretches of frets can be added, changed and taken away', () => {
  show('existing');
  fireEvent.click(screen.getByRole('button', { name: 'Add a stretch of frets' }));
  const field = screen.getByRole('textbox', { name: 'Stretch 1, to fret' });
  fireEvent.change(field, { target: { value: '5' } });
  fireEvent.blur(field);
  expect(store.getState().build.regions[0]).toMatchObject({ fromFret: 1, toFret: 5, kerfMm: 0.58 });
  fireEvent.click(screen.getByRole('button', { name: 'Take stretch 1 away' }));
  expect(store.getState().build.regions).toEqual([]);
});

test('binding lines show as many as are in use', () => {
  const container = show('edges');
  expect(screen.queryByRole('textbox', { name: 'Thickness of line 1' })).toBeNull();
  fireEvent.change(within(row(container, 'bindingLineCount')).getByRole('textbox'), { target: { value: '2' } });
  fireEvent.blur(within(row(container, 'bindingLineCount')).getByRole('textbox'));
  const field = screen.getByRole('textbox', { name: 'Thickness of line 2' });
  fireEvent.change(field, { target: { value: '0.8' } });
  fireEvent.blur(field);
  expect(store.getState().build.binding[1].thicknessMm).toBe(0.8);
});

test('why a value was refused is not read in the units of before', () => {
  const container = show('slots');
  const field = within(row(container, 'kerfMm')).getByRole('textbox');
  fireEvent.change(field, { target: { value: '7' } });
  fireEvent.keyDown(field, { key: 'Enter' });
  const message = () => within(row(container, 'kerfMm')).getByRole('alert').textContent;
  expect(message()).toContain('1.2\u00a0mm');
  act(() => store.getState().setUnitSystem('inch'));
  expect(message()).toBe('');
});
