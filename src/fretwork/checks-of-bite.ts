/** Checks of the tang in its slot: does it bite, and how hard. Bite per wall = (width over the studs − kerf)/2. */
import type { Build } from '../build/build.ts';
import { atLeast, atMost, check, PRACTICE } from './check-making.ts';
import type { Check } from './check-types.ts';
import { workingKerfMm } from './kerf.ts';
import * as limits from './limits.ts';

function glueFit(build: Build): Check[] {
  const gap = workingKerfMm(build) - build.tangWidthMm;
  if (gap <= limits.MOST_GLUE_GAP_MM) return [];
  return [
    check('loose-glue-fit', 'warn', 'kerfMm', atMost(limits.MOST_GLUE_GAP_MM, gap), PRACTICE, {
      reason:
        'The gap beside the tang is so wide that the glue has to be filler; it stays soft, or shrinks and lets go.',
      remedy: 'File the studs down, or take wire with narrower studs and saw a narrower slot.',
    }),
  ];
}

function studs(build: Build): Check[] {
  const bite = (build.studWidthMm - workingKerfMm(build)) / 2;
  const least = atLeast(limits.LEAST_BITE_MM, bite, 'mm', 3);
  if (bite <= 0) {
    return [
      check('no-bite', build.method === 'press' ? 'stop' : 'warn', 'kerfMm', least, PRACTICE, {
        reason: 'The slot is as wide as the studs or wider: nothing bites, and the fret lifts again.',
        remedy: 'Saw a narrower kerf, take wire with wider studs, or seat as a glue fit.',
      }),
    ];
  }
  if (bite < limits.LEAST_BITE_MM) {
    return [
      check('weak-bite', 'warn', 'kerfMm', least, PRACTICE, {
        reason: 'The studs hardly reach into the walls; the ends will lift with the seasons.',
        remedy: 'Saw a narrower kerf, or glue as well.',
      }),
    ];
  }
  if (bite > limits.MOST_BITE_MM) {
    const severity = bite > limits.SPLITTING_BITE_MM ? 'stop' : 'warn';
    return [
      check('too-tight', severity, 'kerfMm', atMost(limits.MOST_BITE_MM, bite, 'mm', 3), PRACTICE, {
        reason:
          'The studs bite too deep: the board bows more than it need, chips at the slots, and can split along the grain.',
        remedy: 'Saw a wider kerf, or take wire with narrower studs.',
      }),
    ];
  }
  return [];
}

function body(build: Build): Check[] {
  const kerf = workingKerfMm(build);
  const wedges = build.tangWidthMm - kerf;
  if (wedges <= 0) return [];
  const severity = wedges > limits.STRAIGHTENING_BODY_MM ? 'stop' : 'warn';
  return [
    check('body-wedges', severity, 'kerfMm', atLeast(build.tangWidthMm, kerf, 'mm', 3), PRACTICE, {
      reason:
        'The kerf is narrower than the tang’s body, so the whole body wedges. A few hundredths of that are used on purpose to bend a bowed neck back; more ruins a straight one.',
      remedy: 'Saw the kerf at least as wide as the body of the tang.',
    }),
  ];
}

export function biteChecks(build: Build): Check[] {
  return build.method === 'glue' ? glueFit(build) : [...studs(build), ...body(build)];
}
