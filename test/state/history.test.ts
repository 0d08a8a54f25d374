import { expect, test } from 'vitest';
import { defaultBuild } from '../../src/neck/build.ts';
import { EMPTY_HISTORY, MAX_STEPS, recordStep, sameBuild, stepBack, stepForward } from '../../src/state/history.ts';

const builds = Array.from({ length: 4 }, (_, index) => ({ ...defaultBuild(), name: `build ${index}` }));
const [first, second, third, fourth] = builds as [
  (typeof builds)[0],
  (typeof builds)[0],
  (typeof builds)[0],
  (typeof builds)[0],
];

test('going back and forward returns the very builds, each step with its name', () => {
  const history = recordStep(recordStep(EMPTY_HISTORY, 'one', first), 'two', second);
  const back = stepBack(history, third)!;
  expect([back.label, back.build]).toEqual(['two', second]);
  const further = stepBack(back.history, back.build)!;
  expect([further.label, further.build]).toEqual(['one', first]);
  expect(stepBack(further.history, further.build)).toBeUndefined();
  const forward = stepForward(further.history, further.build)!;
  expect([forward.label, forward.build]).toEqual(['one', second]);
  expect(stepForward(forward.history, forward.build)!.build).toBe(third);
});

test('a new step forgets what was undone', () => {
  const back = stepBack(recordStep(EMPTY_HISTORY, 'one', first), second)!;
  const branched = recordStep(back.history, 'other', first);
  expect(stepForward(branched, fourth)).toBeUndefined();
  expect(stepBack(branched, fourth)!.build).toBe(first);
});

test('only the latest steps are kept', () => {
  let history = EMPTY_HISTORY;
  for (let step = 0; step < MAX_STEPS + 5; step += 1) history = recordStep(history, `step ${step}`, first);
  expect(history.past).toHaveLength(MAX_STEPS);
  expect(history.past[0].label).toBe('step 5');
});

test('builds are the same when all they say is the same', () => {
  expect(sameBuild(first, { ...first })).toBe(true);
  expect(sameBuild(first, { ...first, strings: first.strings.map((string) => ({ ...string })) })).toBe(true);
  expect(sameBuild(first, { ...first, kerfMm: first.kerfMm + 0.005 })).toBe(false);
  expect(sameBuild(first, { ...first, strings: first.strings.slice(1) })).toBe(false);
});
