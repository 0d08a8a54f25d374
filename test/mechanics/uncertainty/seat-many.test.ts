/** The seating of many samples beside the seating of each by itself. */
import { expect, it } from 'vitest';
import { defaultBuild } from '../../../src/neck/build.ts';
import { AS_STATED } from '../../../src/mechanics/deviations.ts';
import { contactsOf } from '../../../src/mechanics/seating/wire-contact.ts';
import { deviationsAt, INPUTS, spreadsOf } from '../../../src/mechanics/uncertainty/inputs.ts';
import { normalDeviates } from '../../../src/mechanics/uncertainty/normal.ts';
import { CONTACT_INPUTS, deviatedContact, seatOne } from '../../../src/mechanics/uncertainty/one-slot.ts';
import { seatMany, type ManyDeviations } from '../../../src/mechanics/uncertainty/seat-many.ts';
import { expectNear } from '../../expect-near.ts';

const SAMPLES = 400;

it.each([
  ['studs alone', { kerfMm: 0.58 }],
  ['studs that hardly reach the walls', { kerfMm: 0.77 }],
  ['a body that bears', { kerfMm: 0.49 }],
  ['blocks', { studShape: 0 }],
  ['points in a wide kerf', { studShape: 2, kerfMm: 0.66 }],
])('finds the same forces with %s (seed 5)', (_what, change) => {
  const build = { ...defaultBuild(), ...change };
  const contact = contactsOf(build, AS_STATED)[8];
  const z = normalDeviates(5, SAMPLES, INPUTS.length);
  const each = Array.from({ length: SAMPLES }, (_, i) =>
    deviationsAt(
      spreadsOf(build),
      INPUTS.map((__, row) => z[row * SAMPLES + i]),
    ),
  );
  const on = Object.fromEntries(
    CONTACT_INPUTS.map((input) => [input, Float64Array.from(each, (deviations) => deviations[input])]),
  ) as unknown as ManyDeviations;
  const softer = Float64Array.from(each, ({ boardModulus }) => 1 / boardModulus);
  const found = seatMany(contact, 4e-5, on, softer);
  each.forEach((deviations, i) => {
    const alone = seatOne(deviatedContact(contact, deviations), 4e-5 * softer[i]);
    expectNear(found[i], alone, 1e-6, 'it stops at a ten-millionth');
  });
  expect(found.filter((force) => force > 0).length).toBeGreaterThan(SAMPLES / 4);
});
