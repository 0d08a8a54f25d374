import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { defaultBuild } from '../../../src/neck/build.ts';
import { AS_STATED } from '../../../src/mechanics/deviations.ts';
import { seat } from '../../../src/mechanics/seating/seating.ts';
import { deviationsAt, INPUTS, spreadsOf } from '../../../src/mechanics/uncertainty/inputs.ts';
import { deviatedContact, seatOne } from '../../../src/mechanics/uncertainty/one-slot.ts';
import { contactsOf } from '../../../src/mechanics/seating/wire-contact.ts';
import { expectNear } from '../../expect-near.ts';

const deviate = fc.integer({ min: -3000, max: 3000 }).map((thousandths) => thousandths / 1000);
const deviates = fc.array(deviate, {
  minLength: INPUTS.length,
  maxLength: INPUTS.length,
});
const kerf = fc.double({ min: 0.45, max: 0.85, noNaN: true });

describe('one slot (seed 5102)', () => {
  it('deviates as the contacts of a build do', () => {
    fc.assert(
      fc.property(deviates, kerf, (z, kerfMm) => {
        const build = { ...defaultBuild(), kerfMm };
        const deviations = deviationsAt(spreadsOf(build), z);
        const stated = contactsOf(build, AS_STATED);
        const exact = contactsOf(build, deviations);
        for (const i of [0, 11, 21]) {
          const got = deviatedContact(stated[i], deviations);
          for (const key of Object.keys(got) as (keyof typeof got)[]) {
            const error = Math.abs(got[key] - exact[i][key]);
            // Interferences are differences of widths below 1 mm.
            expect(error, `the ${key} of a contact`).toBeLessThanOrEqual(1e-12 * Math.max(1, Math.abs(exact[i][key])));
          }
        }
      }),
      { seed: 5102, numRuns: 50 },
    );
  });

  it('has the force of the full seating of a single slot', () => {
    fc.assert(
      fc.property(deviates, kerf, (z, kerfMm) => {
        const build = { ...defaultBuild(), kerfMm };
        const contact = contactsOf(build, deviationsAt(spreadsOf(build), z))[8];
        const flexibility = 1.5e-5;
        const [exact] = seat([contact], Float64Array.of(flexibility)).forceN;
        expectNear(seatOne(contact, flexibility), exact, 1e-8, 'both iterate to 1e-9 or better');
      }),
      { seed: 5102 },
    );
  });
});
