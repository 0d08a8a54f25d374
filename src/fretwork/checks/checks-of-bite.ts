/** Checks of the tang in its slot: does it bite, and how hard. Bite per wall = (width over the studs − kerf)/2. */
import { say } from '../../speech/language.ts';
import type { Build } from '../../neck/build.ts';
import { atLeast, atMost, check, PRACTICE } from './check-making.ts';
import type { Check } from './check-types.ts';
import { seatGroups, type Seat } from '../kerf.ts';
import * as limits from './limits.ts';

function glueFit(seat: Seat, frets: readonly number[]): Check[] {
  const gap = seat.kerfMm - seat.tangWidthMm;
  if (gap <= limits.MOST_GLUE_GAP_MM) return [];
  const words = {
    reason: say`The gap beside the tang is so wide that the glue has to be filler; it stays soft, or shrinks and lets go.`,
    remedy: say`File the studs down, or take wire with narrower studs and saw a narrower slot.`,
  };
  return [check('loose-glue-fit', 'warn', 'kerfMm', atMost(limits.MOST_GLUE_GAP_MM, gap), PRACTICE, words, frets)];
}

function studs(build: Build, seat: Seat, frets: readonly number[]): Check[] {
  const bite = (seat.studWidthMm - seat.kerfMm) / 2;
  const least = atLeast(limits.LEAST_BITE_MM, bite, 'mm', 3);
  if (bite <= 0) {
    const words = {
      reason: say`The slot is as wide as the studs or wider: nothing bites, and the fret lifts again.`,
      remedy: say`Saw a narrower kerf, take wire with wider studs, or seat as a glue fit.`,
    };
    return [check('no-bite', build.method === 'press' ? 'stop' : 'warn', 'kerfMm', least, PRACTICE, words, frets)];
  }
  if (bite < limits.LEAST_BITE_MM) {
    const words = {
      reason: say`The studs hardly reach into the walls; the ends will lift with the seasons.`,
      remedy: say`Saw a narrower kerf, or glue as well.`,
    };
    return [check('weak-bite', 'warn', 'kerfMm', least, PRACTICE, words, frets)];
  }
  if (bite > limits.MOST_BITE_MM) {
    const words = {
      reason: say`The studs bite too deep: the board bows more than it need, chips at the slots, and can split along the grain.`,
      remedy: say`Saw a wider kerf, or take wire with narrower studs.`,
    };
    const severity = bite > limits.SPLITTING_BITE_MM ? 'stop' : 'warn';
    return [check('too-tight', severity, 'kerfMm', atMost(limits.MOST_BITE_MM, bite, 'mm', 3), PRACTICE, words, frets)];
  }
  return [];
}

function body(build: Build, seat: Seat, frets: readonly number[]): Check[] {
  const wedges = seat.tangWidthMm - seat.kerfMm;
  if (wedges <= 0) return [];
  // In a refret the wider tang may be meant: it is how a bowed neck is bent back.
  const severity = wedges > limits.STRAIGHTENING_BODY_MM && build.job === 'new' ? 'stop' : 'warn';
  const words = {
    reason: say`The kerf is narrower than the tang’s body, so the whole body wedges. A few hundredths of that are used on purpose to bend a bowed neck back; more ruins a straight one.`,
    remedy: say`Saw the kerf at least as wide as the body of the tang, unless the neck is to be bent back.`,
  };
  const measure = atLeast(seat.tangWidthMm, seat.kerfMm, 'mm', 3);
  return [check('body-wedges', severity, 'kerfMm', measure, PRACTICE, words, frets)];
}

/** One set of findings for each slot and tang in use; without frets where all are alike. */
export function biteChecks(build: Build): Check[] {
  const groups = seatGroups(build);
  return groups.flatMap(({ seat, frets }) => {
    const named = groups.length === 1 ? [] : frets;
    return build.method === 'glue' ? glueFit(seat, named) : [...studs(build, seat, named), ...body(build, seat, named)];
  });
}
