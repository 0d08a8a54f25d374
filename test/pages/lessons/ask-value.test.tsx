/** @vitest-environment happy-dom */
/** The question for a number, while the neck is still being computed and once it is. */
import { cleanup, render, screen } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { AskValue } from '../../../src/pages/lessons/ask-value.tsx';
import { forgetGuesses, guess } from '../../../src/pages/lessons/guesses.ts';

afterEach(() => {
  cleanup();
  forgetGuesses();
});

const relief = { kind: 'value', of: { q: 'relief', at: { phase: 'bare' } }, min: -0.4, max: 0.4, step: 0.01 } as const;
const force = { kind: 'value', of: { q: 'wedgeForce' }, min: 0, max: 2000, step: 10 } as const;

test.each([
  [relief, null, 'flat'],
  [relief, -0.05, '0.05\u00a0mm back-bow'],
  [relief, 0.12, '0.12\u00a0mm relief'],
  [force, 450, '450\u00a0N'],
])('a guess has its unit before anything is computed: %#', (ask, made, said) => {
  if (made !== null) guess('step', { kind: 'value', value: made });
  render(<AskValue ask={ask} step="step" bench={null} asking />);
  const slider = screen.getByRole('slider', { name: 'Your guess' });
  expect([slider.getAttribute('aria-valuetext'), document.querySelector('.value')?.textContent]).toEqual([said, said]);
});
