// @vitest-environment happy-dom
import { cleanup, fireEvent, render, screen } from '@testing-library/react';
import { useState } from 'react';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { defaultBuild, MOST_NAME, MOST_NOTES } from '../../src/neck/build.ts';
import { checkChange } from '../tools/check-change.ts';
import { LimitedText } from '../../src/kit/limited-text.tsx';
import { NeckCard } from '../../src/pages/library/neck-card.tsx';
import { ProjectBar } from '../../src/pages/workshop/project/project-bar.tsx';
import { writeProject } from '../../src/neck/file.ts';
import { fitsPage } from '../../src/state/share/page-text.ts';
import { PAGE_LIMITS } from '../../src/state/share/shared.ts';
import { store } from '../../src/state/store.ts';
import { problemTexts } from '../../src/speech/problems.ts';

const initial = store.getState();
beforeEach(() => store.setState(initial, true));
afterEach(cleanup);

const LONG = 'n'.repeat(MOST_NAME + 50);

function Field({ rows }: { readonly rows?: number }) {
  const [text, setText] = useState('');
  return <LimitedText label="Your note" most={3000} value={text} change={setText} {...(rows ? { rows } : {})} />;
}

test.each([undefined, 4])(
  'a pasted text that is too long is kept whole, and refused while it is (rows: %s)',
  (rows) => {
    render(<Field {...(rows ? { rows } : {})} />);
    const field = screen.getByLabelText<HTMLInputElement>('Your note');
    expect(field.hasAttribute('maxlength')).toBe(false);
    const pasted = 'x'.repeat(3001);
    fireEvent.change(field, { target: { value: pasted } });
    expect(field.value).toBe(pasted);
    expect(field.getAttribute('aria-invalid')).toBe('true');
    const sentence = 'Your note has 3001 characters; it takes at most 3000 characters.';
    expect(screen.getByRole('alert').textContent).toBe(sentence);
    expect(document.getElementById(field.getAttribute('aria-describedby')!)!.textContent).toBe(sentence);
    fireEvent.change(field, { target: { value: pasted.slice(1) } });
    expect(field.hasAttribute('aria-invalid')).toBe(false);
    expect(screen.getByRole('alert').textContent).toBe('');
  },
);

const nameField = () => screen.getByLabelText<HTMLInputElement>('Name of the build');

test('a name that is too long stays in the field of the bar and does not reach the build; shortened it does', () => {
  render(<ProjectBar />);
  const before = store.getState().build.name;
  fireEvent.change(nameField(), { target: { value: LONG } });
  fireEvent.blur(nameField());
  expect(nameField().value).toBe(LONG);
  expect(store.getState().build.name).toBe(before);
  expect(screen.getByRole('alert').textContent).toBe(
    `Name of the build has 250 characters; it takes at most 200 characters. “${before}” is kept.`,
  );
  fireEvent.change(nameField(), { target: { value: LONG.slice(50) } });
  expect(screen.getByRole('alert').textContent).toBe('');
  fireEvent.blur(nameField());
  expect(store.getState().build.name).toBe(LONG.slice(50));
});

test('a name that was refused is gone from the field when another neck comes to the bench', () => {
  const { rerender } = render(<ProjectBar />);
  fireEvent.change(nameField(), { target: { value: LONG } });
  fireEvent.blur(nameField());
  store.getState().replaceBuild({ ...defaultBuild(), name: 'Another' }, 'Open');
  rerender(<ProjectBar />);
  expect(nameField().value).toBe('Another');
});

test('a neck of the library is not renamed to a name that is too long', () => {
  const build = { ...defaultBuild(), name: 'Ash' };
  const entry = {
    id: 'one',
    name: build.name,
    createdAt: 0,
    changedAt: 0,
    revision: 1,
    project: writeProject(build),
    picture: null,
    deletedAt: null,
  };
  const renamed: string[] = [];
  const nothing = () => undefined;
  render(
    <NeckCard
      entry={entry}
      isOnBench={false}
      actions={{
        open: nothing,
        duplicate: nothing,
        remove: nothing,
        rename: (_entry, name) => {
          renamed.push(name);
        },
      }}
    />,
  );
  fireEvent.click(screen.getByRole('button', { name: 'Rename “Ash”' }));
  const field = screen.getByLabelText<HTMLInputElement>('New name of “Ash”');
  fireEvent.change(field, { target: { value: LONG } });
  fireEvent.submit(field);
  expect(renamed).toEqual([]);
  expect(field.value).toBe(LONG);
  expect(screen.getByRole('alert').textContent).toBe(
    'New name of “Ash” has 250 characters; it takes at most 200 characters.',
  );
  fireEvent.change(field, { target: { value: LONG.slice(50) } });
  fireEvent.submit(field);
  expect(renamed).toEqual([LONG.slice(50)]);
});

test('the build refuses longer names and notes with the number of characters and what it takes', () => {
  const said = (change: object) => problemTexts(checkChange(defaultBuild(), change), 'metric');
  expect(said({ name: 'n'.repeat(MOST_NAME) })).toEqual([]);
  expect(said({ name: LONG })).toEqual(['Name of the build (name) is 250 characters long; it takes at most 200.']);
  expect(said({ notes: 'n'.repeat(MOST_NOTES + 1) })).toEqual([
    'Notes (notes) is 10001 characters long; it takes at most 10000.',
  ]);
});

test.each(['from', 'to', 'note'] as const)('no link is made of a customer’s page whose “%s” is too long', (field) => {
  const texts = { from: '', to: '', note: '' };
  expect(fitsPage({ ...texts, [field]: 'x'.repeat(PAGE_LIMITS[field]) })).toBe(true);
  expect(fitsPage({ ...texts, [field]: 'x'.repeat(PAGE_LIMITS[field] + 1) })).toBe(false);
});
