/** A maker's own strength: a neck that was made to buzz gives the strength back, and a reading that cannot be is refused. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { defaultBuild, type Build } from '../../src/neck/build.ts';
import { PRESETS } from '../../src/neck/presets.ts';
import { buzzMatchOf, geometryOf, matchHash, type BuzzMatch } from '../../src/playing/buzz-match.ts';
import { joinedStrength, matchForce } from '../../src/playing/own-strength.ts';
import { roomChart } from '../../src/playing/room.ts';
import { setUp } from '../../src/playing/set-up.ts';
import { matchOf } from './matches.ts';
import { expectNear } from '../expect-near.ts';
import { arcLine } from './necks.ts';

const BUILD = defaultBuild();
const PLUCK = 130;

/** What the chart says of a neck with this relief and action: where the note buzzes first, and at which force. */
function chartSays(build: Build, { reliefMm, actionMm, string, note, direction }: BuzzMatch) {
  const set = { ...build, stringHeightFret12Mm: actionMm + build.crownHeightMm };
  // Arcs are the same up to the joint; these necks have few frets beyond, and the notes touch before it.
  return roomChart(setUp(set, arcLine(set, reliefMm)), { forceN: 1, pluckMm: PLUCK, direction })[string][note];
}

describe('a neck that just buzzes', () => {
  test('gives the force at which the chart has it buzz, seed 47', () => {
    let tried = 0;
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 0.4, noNaN: true }),
        fc.double({ min: 0.9, max: 2.5, noNaN: true }),
        fc.integer({ min: 0, max: 5 }),
        fc.integer({ min: 1, max: 6 }),
        fc.constantFrom('along' as const, 'away' as const, 'towards' as const),
        (reliefMm, actionMm, string, note, direction) => {
          const match = matchOf({ reliefMm, actionMm, string, note, direction });
          const { atFret, buzzForceN } = chartSays(BUILD, match);
          // Which fret has the least room at 1 N is not where it buzzes first: of those the least force is.
          const answer = matchForce({ ...match, fret: atFret }, PLUCK);
          if (!answer.ok || atFret >= BUILD.bodyJointFret) return;
          tried += 1;
          expect(answer.forceN).toBeGreaterThanOrEqual(buzzForceN - 1e-9);
          const firsts = Array.from({ length: BUILD.fretCount - note }, (_, i) => note + 1 + i)
            .map((fret) => matchForce({ ...match, fret }, PLUCK))
            .flatMap((each) => (each.ok ? [each.forceN] : []));
          expectNear(Math.min(...firsts), buzzForceN, 0.01, 'the arc of the test bends at 80 places');
        },
      ),
      { seed: 47, numRuns: 20 },
    );
    expect(tried).toBeGreaterThan(8);
  });

  test('says what relief, action and fret tops leave of error, and all together by their squares', () => {
    const match = matchOf();
    const answer = matchForce({ ...match, fret: chartSays(BUILD, match).atFret }, PLUCK);
    if (!answer.ok) throw new Error(answer.refusal.code);
    const { forceN, errorN, fromReliefN, fromActionN, fromFretsN } = answer;
    expectNear(errorN ** 2, fromReliefN ** 2 + fromActionN ** 2 + fromFretsN ** 2, 1e-9, 'apart from each other');
    for (const part of [fromReliefN, fromActionN, fromFretsN]) expect(part).toBeGreaterThan(0);
    const other = matchForce({ ...match, fret: chartSays(BUILD, match).atFret, actionMm: 1.6 + 0.05 }, PLUCK);
    expectNear(other.ok ? other.forceN - forceN : 0, fromActionN, 1e-6, 'a standard deviation more action');
  });

  test('is the same whatever the strength is that it was made to buzz at: more action, more strength', () => {
    const at = (actionMm: number) => {
      const match = matchOf({ actionMm });
      const answer = matchForce({ ...match, fret: chartSays(BUILD, match).atFret }, PLUCK);
      return answer.ok ? answer.forceN : Number.NaN;
    };
    expect(at(2)).toBeGreaterThan(at(1.6));
  });
});

describe('a reading that cannot be', () => {
  const refusal = (change: Partial<BuzzMatch>) => {
    const answer = matchForce(matchOf(change), PLUCK);
    return answer.ok ? null : answer.refusal;
  };

  test('on a fret before the one that is stopped, or on that itself', () => {
    expect(refusal({ note: 5, fret: 5 })).toEqual({ code: 'not-beyond' });
    expect(refusal({ note: 5, fret: 3 })).toEqual({ code: 'not-beyond' });
  });

  test('where the string lies on the fret without being plucked', () => {
    expect(refusal({ reliefMm: -0.8, actionMm: 0.5, note: 1, fret: 6 })).toMatchObject({ code: 'lies-on' });
  });

  test('where another fret comes first, it says which and at what force', () => {
    const said = refusal({ note: 1, fret: 21, reliefMm: 0.1 });
    expect(said?.code).toBe('other-first');
    if (said?.code !== 'other-first') return;
    expect(said.fret).toBeLessThan(21);
    expect(said.forceN).toBeLessThan(said.wouldTakeN);
  });

  test('is not refused for a neighbour that comes first within the errors', () => {
    const match = matchOf();
    const first = chartSays(BUILD, match).atFret;
    expect(matchForce({ ...match, fret: first + 1 }, PLUCK).ok).toBe(true);
    expect(
      matchForce({ ...match, fret: first + 1, reliefErrorMm: 0.005, actionErrorMm: 0.01, fretErrorMm: 0.001 }, PLUCK)
        .ok,
    ).toBe(false);
  });

  test('whose errors are as large as the strength', () => {
    const match = matchOf({ actionErrorMm: 0.5, reliefErrorMm: 0.5, actionMm: 0.9 });
    expect(refusal({ ...match, fret: chartSays(BUILD, match).atFret })).toEqual({ code: 'too-unsure' });
  });
});

describe('several matches joined', () => {
  test('that agree count by their errors, and the band narrows', () => {
    const one = { forceN: 1.2, errorN: 0.24 };
    const alone = joinedStrength([one])!;
    expectNear(alone.forceN, 1.2, 1e-9, 'itself');
    expectNear(alone.p95N, 1.2 * Math.exp(1.645 * 0.2), 1e-9, 'log-normal');
    const four = joinedStrength([one, one, one, one])!;
    expectNear(Math.log(four.p95N / four.forceN), Math.log(alone.p95N / alone.forceN) / 2, 1e-9, 'root of four');
    const sure = joinedStrength([one, { forceN: 1, errorN: 0.05 }])!;
    expect(Math.abs(sure.forceN - 1)).toBeLessThan(Math.abs(sure.forceN - 1.2));
  });

  test('that scatter beyond their errors leave a wider band than their errors say', () => {
    const wide = joinedStrength([0.5, 1, 2].map((forceN) => ({ forceN, errorN: 0.05 * forceN })))!;
    expectNear(wide.forceN, 1, 1e-9, 'symmetric in ln F');
    // Three values, ln 2 apart: τ² = s² of the sample less that of the errors; the mean has a third of both.
    expectNear(Math.log(wide.p95N), 1.645 * Math.sqrt(Math.log(2) ** 2 / 3), 1e-9, 'worked by hand');
  });

  test('of none is nothing', () => expect(joinedStrength([])).toBeNull());
});

describe('the document', () => {
  test.each(PRESETS.map(({ id, build }) => [id, build] as const))('on %s comes back as it was kept', (_id, build) => {
    const match = matchOf({ neck: geometryOf(build) });
    expect(buzzMatchOf(JSON.parse(JSON.stringify(match)))).toEqual(match);
  });

  test.each([
    ['no number', { reliefMm: '0.2' }],
    ['a number out of its range', { actionErrorMm: 5 }],
    ['a string that the neck has not', { string: 9 }],
    ['an unknown direction', { direction: 'sideways' }],
    ['a neck that cannot be', { neck: { ...geometryOf(BUILD), fretCount: 3 } }],
    ['no id', { id: '' }],
  ])('with %s is none', (_what, change) => {
    expect(buzzMatchOf({ ...matchOf(), ...change })).toBeNull();
  });

  test('has a hash of what it says, whatever its id', () => {
    const match = matchOf();
    expect(matchHash({ ...match, id: 'another' })).toBe(matchHash(match));
    expect(matchHash({ ...match, reliefMm: 0.21 })).not.toBe(matchHash(match));
  });
});
