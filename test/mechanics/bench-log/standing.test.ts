/** A band is narrowed by measurements that are here, say the same and were accepted here, and by nothing else. */
import { digestOf } from '../../../src/neck/digest.ts';
import { EARLIER_GRIP } from '../../../src/neck/file.ts';
import { STANDARD_LAW } from '../../../src/mechanics/bench-log/law.ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BiteReference } from '../../../src/neck/bite-reference.ts';
import { defaultBuild, type Build } from '../../../src/neck/build.ts';
import type { LogEntry } from '../../../src/mechanics/bench-log/entry.ts';
import { contentHash, newId, withContentId } from '../../../src/mechanics/bench-log/identity.ts';
import { bitePosterior } from '../../../src/mechanics/bench-log/posterior.ts';
import { referenceTo } from '../../../src/mechanics/bench-log/reference.ts';
import { biteLogSpreadOf, biteStanding, isNarrowed, type Measured } from '../../../src/mechanics/bench-log/standing.ts';
import { draw } from '../../draw.ts';
import { ENTRY } from './entries.ts';

const necks = (...sizes: number[]) =>
  sizes.map((size, at) => withContentId({ ...ENTRY, neck: `No. ${at}`, measuredFrettedMm: -size }));
const ENTRIES = necks(0.25, 0.28, 0.26);
const REFERENCE = referenceTo(ENTRIES, bitePosterior(ENTRIES), STANDARD_LAW);
const BUILD: Build = { ...defaultBuild(), biteFactor: REFERENCE.factor, biteReference: REFERENCE };
const HERE: Measured = { benchLog: ENTRIES, adoptedBites: [REFERENCE], earlierBites: [] };
const ELSEWHERE: Measured = { benchLog: [], adoptedBites: [], earlierBites: [] };
/** As a link carries it. */
const SUMMARY: BiteReference = { ...REFERENCE, measurements: [] };

const code = (measured: Measured, build: Build = BUILD) => biteStanding(measured, build).code;

describe('the narrow band', () => {
  it('is that of measurements which are here and were accepted', () => {
    expect(code(HERE)).toBe('in-use');
    expect(biteLogSpreadOf(HERE, BUILD)).toBe(REFERENCE.logSpread);
    expect(isNarrowed(HERE, BUILD)).toBe(true);
    expect(isNarrowed(HERE, { ...BUILD, method: 'glue' })).toBe(false);
  });

  it('does not come of an equal number', () => {
    const { biteReference: _none, ...equal } = BUILD;
    expect(code(HERE, equal)).toBe('unmeasured');
    expect(biteLogSpreadOf(HERE, equal)).toBeUndefined();
    expect(code({ ...HERE, earlierBites: [equal.biteFactor] }, equal)).toBe('earlier');
    expect(biteLogSpreadOf({ ...HERE, earlierBites: [equal.biteFactor] }, equal)).toBeUndefined();
  });

  it('is left when the factor is changed by hand, and back with it', () => {
    expect(code(HERE, { ...BUILD, biteFactor: 1.5 })).toBe('other-factor');
    expect(code(HERE, { ...BUILD, biteFactor: REFERENCE.factor })).toBe('in-use');
  });

  it('is left when the studs are taken for others, since a bite factor means nothing under another law', () => {
    expect(code(HERE, { ...BUILD, studShape: 2 })).toBe('changed');
    expect(code(HERE, { ...BUILD, studSoftnessMm: 0.03 })).toBe('changed');
    expect(biteLogSpreadOf(HERE, { ...BUILD, studShape: 2 })).toBeUndefined();
    expect(code(HERE, { ...BUILD, studShape: BUILD.studShape })).toBe('in-use');
  });

  it('of a build from before there was a shape is that of a reference from then', () => {
    const before = { ...BUILD, ...EARLIER_GRIP };
    const then = { ...REFERENCE, hash: referenceTo(ENTRIES, bitePosterior(ENTRIES), EARLIER_GRIP).hash };
    // SHA-256 of the lines that a reference of file version 1 was made of: ids and hashes of the entries alone.
    const lines = ENTRIES.map((entry) => `${entry.id} ${contentHash(entry)}`).toSorted();
    expect(then.hash).toBe(digestOf(['backbow measurements 1', ...lines].join('\n')).slice(0, 32));
    expect(code({ ...HERE, adoptedBites: [then] }, { ...before, biteReference: then })).toBe('in-use');
  });

  it('is as wide as this device found it, whatever the build says of itself', () => {
    const boasting = { ...BUILD, biteReference: { ...REFERENCE, logSpread: 0.001, necks: 900 } };
    expect(biteLogSpreadOf(HERE, boasting)).toBe(REFERENCE.logSpread);
  });

  it('waits for the log to be read', () => {
    expect(code({ ...HERE, benchLog: null })).toBe('reading');
    expect(biteLogSpreadOf({ ...HERE, benchLog: null }, BUILD)).toBeUndefined();
  });
});

describe('a stranger’s build', () => {
  it('narrows nothing where its measurements are not', () => {
    expect(code(ELSEWHERE)).toBe('not-here');
    const others = necks(0.31, 0.22);
    const own = referenceTo(others, bitePosterior(others), STANDARD_LAW);
    expect(code({ ...ELSEWHERE, benchLog: others, adoptedBites: [own] })).toBe('not-here');
    expect(isNarrowed({ ...ELSEWHERE, benchLog: others, adoptedBites: [own] }, BUILD)).toBe(false);
  });

  it('is not accepted by having the measurements: that takes a yes', () => {
    expect(code({ ...HERE, adoptedBites: [] })).toBe('not-accepted');
    expect(isNarrowed({ ...HERE, adoptedBites: [] }, BUILD)).toBe(false);
  });

  it('that names ids of this log with a hash of its own is seen through', () => {
    const forged = { ...BUILD, biteReference: { ...REFERENCE, hash: 'f'.repeat(32) } };
    expect(code(HERE, forged)).toBe('changed');
    expect(isNarrowed(HERE, forged)).toBe(false);
  });

  it('that names an accepted hash with another factor is seen through', () => {
    const forged = { ...BUILD, biteFactor: 3, biteReference: { ...REFERENCE, factor: 3 } };
    expect(isNarrowed(HERE, forged)).toBe(false);
  });
});

describe('a link', () => {
  const linked = { ...BUILD, biteReference: SUMMARY };

  it('that comes home is known by its hash', () => {
    expect(code(HERE, linked)).toBe('in-use');
    expect(code({ ...HERE, benchLog: [...ENTRIES, ...necks(0.4)] }, linked)).toBe('in-use');
  });

  it('on the workshop’s other device is offered when the whole log is what it speaks of', () => {
    expect(code({ ...HERE, adoptedBites: [] }, linked)).toBe('not-accepted');
    expect(code(ELSEWHERE, linked)).toBe('not-here');
  });

  it('is noticed too when what it speaks of has changed', () => {
    expect(biteStanding({ ...HERE, benchLog: ENTRIES.slice(1) }, linked)).toMatchObject({
      code: 'changed',
      deleted: 1,
    });
  });
});

describe('entries behind a band', () => {
  it('that are deleted or changed are noticed, each one of them and each thing that they say', () => {
    const changes: readonly Partial<LogEntry>[] = [
      { measuredFrettedMm: -0.2501 },
      { gaugeErrorMm: 0.021 },
      { neck: 'another' },
      { rod: 'snug' },
      { date: '2026-02-15' },
      { predictedFrettedMm: -0.2 },
    ];
    for (const at of ENTRIES.keys()) {
      const deleted = { ...HERE, benchLog: ENTRIES.toSpliced(at, 1) };
      expect(biteStanding(deleted, BUILD)).toMatchObject({ code: 'changed', deleted: 1 });
      expect(isNarrowed(deleted, BUILD)).toBe(false);
      for (const change of changes) {
        const edited = { ...HERE, benchLog: ENTRIES.with(at, { ...ENTRIES[at], ...change }) };
        expect(biteStanding(edited, BUILD)).toMatchObject({ code: 'changed', deleted: 0 });
        expect(isNarrowed(edited, BUILD)).toBe(false);
      }
    }
    expect(biteStanding({ ...HERE, benchLog: [] }, BUILD)).toMatchObject({ code: 'changed', deleted: 3 });
  });

  it('put back as they were, they hold again', () => {
    expect(code({ ...HERE, benchLog: ENTRIES.map((entry) => ({ ...entry })) })).toBe('in-use');
  });

  it('new ones beside them change nothing', () => {
    expect(
      code({ ...HERE, benchLog: [...necks(0.9), ...ENTRIES].map((e, at) => (at ? e : { ...e, id: newId() })) }),
    ).toBe('in-use');
  });
});

const DRAWN = draw(5000, 5000);

it('no build is narrowed without a reference of this device, whatever is put together (seed 1207)', () => {
  const mostly = <T>(sound: T, other: fc.Arbitrary<T>) => fc.oneof({ weight: 3, arbitrary: fc.constant(sound) }, other);
  const reference = fc.record({
    factor: fc.constantFrom(REFERENCE.factor, 1, 1.4),
    measurements: mostly(
      ENTRIES.map(({ id }) => id),
      fc.subarray(ENTRIES.map(({ id }) => id)),
    ),
    hash: fc.constantFrom(REFERENCE.hash, '0'.repeat(32)),
    necks: fc.constantFrom(1, 3),
    logSpread: fc.constantFrom(0.01, REFERENCE.logSpread),
  });
  const measured = fc.record({
    benchLog: mostly(ENTRIES, fc.option(fc.subarray(ENTRIES))),
    adoptedBites: mostly<readonly BiteReference[]>([REFERENCE], fc.constant([])),
    earlierBites: fc.subarray([REFERENCE.factor, 1]),
  });
  let narrowed = 0;
  fc.assert(
    fc.property(fc.option(reference), measured, fc.constantFrom(REFERENCE.factor, 1, 1.4), (of, device, biteFactor) => {
      const build = { ...defaultBuild(), biteFactor, ...(of ? { biteReference: of } : {}) };
      const spread = biteLogSpreadOf(device, build);
      const isSound =
        of?.hash === REFERENCE.hash &&
        of.factor === REFERENCE.factor &&
        biteFactor === REFERENCE.factor &&
        device.adoptedBites.length === 1 &&
        device.benchLog?.length === ENTRIES.length &&
        (of.measurements.length === ENTRIES.length || of.measurements.length === 0);
      expect(spread).toBe(isSound ? REFERENCE.logSpread : undefined);
      if (isSound) narrowed += 1;
    }),
    { seed: 1207, numRuns: DRAWN },
  );
  expect(narrowed).toBeGreaterThan(DRAWN / 100);
});
