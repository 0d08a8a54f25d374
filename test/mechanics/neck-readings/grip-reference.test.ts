/** What a build's grip rests on: by reference, as this device has it, and nothing narrowed by what a file or link says of it. */
import { describe, expect, test } from 'vitest';
import { ENTRY } from '../bench-log/entries.ts';
import { STRIP } from '../try-strip/strips.ts';
import {
  gripStanding,
  isNarrowed,
  narrowingOptions,
  type GripHere,
  type Measured,
} from '../../../src/mechanics/bench-log/standing.ts';
import { gripReferenceTo, othersIn, resolveGrip } from '../../../src/mechanics/neck-readings/grip-reference.ts';
import { defaultBuild, type Build } from '../../../src/neck/build.ts';
import { readProject, writeProject } from '../../../src/neck/file.ts';
import { readLink, writeLink } from '../../../src/state/share/link.ts';
import { stampHere } from '../../../src/verdict/stamp.ts';

const NECK = defaultBuild();
const OTHER = { ...ENTRY, id: 'bcdfghjklmnpqr' };
const OWN = {
  ...ENTRY,
  id: 'zxwvtsrqpnmlkj',
  dialFret: 7,
  dialErrorMm: 0.01,
  measuredPullMm: 0.3,
  predictedPullMm: 0.28,
};
const EVIDENCE = { strips: [{ strip: STRIP, ownBoard: true }], entries: [OTHER], own: [OWN] };
const HEARD = {
  taken: { biteFactor: 1.21, studShape: 0.94 },
  posterior: { bite: { p05: 0.9, p50: 1.21, p95: 1.6 } },
};
const REFERENCE = gripReferenceTo(NECK, EVIDENCE, HEARD);
const BUILD: Build = { ...NECK, ...HEARD.taken, gripReference: REFERENCE };
const found = resolveGrip(REFERENCE.documents, [STRIP], [OTHER, OWN]);

const nothing: Measured = { benchLog: [], adoptedBites: [], earlierBites: [] };
const deviceWith = (here: GripHere) => ({ ...nothing, gripsHere: { [REFERENCE.hash]: here } });
const accepted = (is: boolean) => {
  if (found.code !== 'here') throw new Error(found.code);
  return deviceWith({ ...found, accepted: is });
};

describe('documents', () => {
  test('are found by id and hash, each in its part', () => {
    expect(found).toEqual({ code: 'here', evidence: EVIDENCE });
    expect(REFERENCE).toMatchObject({ measured: 3, biteLow: 0.9, biteHigh: 1.6 });
    expect(REFERENCE.documents.map(({ kind, ownBoard }) => [kind, ownBoard])).toEqual([
      ['strip', true],
      ['neck', undefined],
      ['own', undefined],
    ]);
  });

  test('that are gone or say something else are told', () => {
    expect(resolveGrip(REFERENCE.documents, [], [OTHER, OWN])).toEqual({ code: 'changed', gone: 1, edited: 0 });
    const edited = [{ ...STRIP, slotDepthMm: 2.9 }];
    expect(resolveGrip(REFERENCE.documents, edited, [OWN])).toEqual({ code: 'changed', gone: 1, edited: 1 });
    expect(resolveGrip(REFERENCE.documents, [], [])).toEqual({ code: 'not-here' });
    expect(resolveGrip([], [STRIP], [OTHER, OWN])).toEqual({ code: 'not-here' });
  });

  test('of another board, or of a changed neck, are another set', () => {
    const other = gripReferenceTo(NECK, { ...EVIDENCE, strips: [{ strip: STRIP, ownBoard: false }] }, HEARD);
    const thinner = gripReferenceTo({ ...NECK, scaleLengthMm: 628 }, EVIDENCE, HEARD);
    expect(new Set([REFERENCE.hash, other.hash, thinner.hash]).size).toBe(3);
    // A neck that was not read itself may become another: what it took over still holds.
    const strips = { ...EVIDENCE, own: [] };
    const ofOne = gripReferenceTo(NECK, strips, HEARD);
    expect(gripReferenceTo({ ...NECK, scaleLengthMm: 628 }, strips, HEARD).hash).toBe(ofOne.hash);
  });

  test('an entry read on the neck itself is not heard as another neck too', () => {
    expect(othersIn([OTHER, OWN], [OWN])).toEqual([OTHER]);
  });
});

describe('the bands', () => {
  test('are narrowed by what is here, says the same and was accepted', () => {
    expect(narrowingOptions(accepted(true), BUILD)).toEqual({ evidence: EVIDENCE });
    expect(isNarrowed(accepted(true), BUILD)).toBe(true);
    expect(stampHere(accepted(true), BUILD)).not.toBe(stampHere(nothing, BUILD));
  });

  test.each([
    ['not looked up yet', nothing, BUILD, 'reading'],
    ['not accepted', accepted(false), BUILD, 'not-accepted'],
    ['not here', deviceWith({ code: 'not-here' }), BUILD, 'not-here'],
    ['changed', deviceWith({ code: 'changed', gone: 1, edited: 0 }), BUILD, 'changed'],
    ['another bite by hand', accepted(true), { ...BUILD, biteFactor: 1.3 }, 'other-grip'],
    ['another shape by hand', accepted(true), { ...BUILD, studShape: 1 }, 'other-grip'],
  ] as const)('are as wide as of an unmeasured grip: %s', (_why, device, build, code) => {
    expect(gripStanding(device, build)?.code).toBe(code);
    expect(narrowingOptions(device, build)).toEqual({});
    expect(isNarrowed(device, build)).toBe(false);
    expect(stampHere(device, build)).toBe(stampHere(nothing, build));
  });

  test('a neck that was changed since it was read keeps strips and other necks, and not its own readings', () => {
    const changed = { ...BUILD, slotDepthMm: 2.5 };
    expect(gripStanding(accepted(true), changed)).toMatchObject({ code: 'in-use', isOther: true });
    expect(narrowingOptions(accepted(true), changed).evidence).toEqual({ ...EVIDENCE, own: [] });
    // What is wanted of it, and its name, change nothing.
    for (const same of [
      { ...BUILD, name: 'No. 3' },
      { ...BUILD, targetReliefMm: 0.3 },
    ])
      expect(gripStanding(accepted(true), same)).toMatchObject({ isOther: false });
  });
});

describe('on their way', () => {
  test('a file keeps the reference, and a link a summary that names no document', () => {
    const file = readProject(writeProject(BUILD));
    expect(file).toMatchObject({ ok: true, build: { gripReference: REFERENCE } });
    const written = writeLink({
      builds: [NECK, BUILD],
      page: { from: '', to: '', note: '', advised: null, names: [] } as never,
    });
    const link = written.ok ? readLink(written.text) : undefined;
    if (!link?.ok) throw new Error('no link');
    const [plain, summary] = link.shared.builds;
    expect(plain.gripReference).toBeUndefined();
    expect(summary.gripReference).toEqual({ ...REFERENCE, documents: [] });
    expect(narrowingOptions(nothing, summary)).toEqual({});
  });

  test('a reference with numbers out of range is refused with its name', () => {
    const text = writeProject({ ...BUILD, gripReference: { ...REFERENCE, biteFactor: 400 } });
    const read = readProject(text);
    expect(read.ok).toBe(false);
    expect(JSON.stringify(read)).toContain('gripReference');
  });
});
