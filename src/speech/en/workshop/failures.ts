/** Why something could not be computed or drawn. Each stands in the middle of a sentence. */
import { words } from '../../language.ts';

export const FAILURE_WORDS = words('FAILURE_WORDS', {
  noSuchFret: (fret: string, frets: string) => `this neck has no fret ${fret}: its frets are 1 to ${frets}`,
  days: (days: string) => `days since stringing is ${days}; it must be 0 or more days`,
  narrower: (kerf: string, before: string) => `the slot is ${kerf} wide; it must be no narrower than it was, ${before}`,
  rod: (percent: string, least: string, most: string) => `rod setting is ${percent}; it must be ${least} to ${most} %`,
  relief: (relief: string, least: string, most: string) =>
    `the relief you want is ${relief}; it must be ${least} to ${most}`,
  kerf: (least: string, tang: string, most: string) =>
    `no kerf fits this wire: at least ${least} for its tang of ${tang}, at most ${most} under its studs and crown`,
  stretches: (count: string, most: string) =>
    `number of stretches is ${count}; it must be a whole number from 1 to ${most}`,
  noTangs: 'at least one stretch and one tang are needed',
  combinations: (tangs: string, stretches: string, combinations: string, most: string) =>
    `${tangs} tangs in ${stretches} stretches make ${combinations} combinations; at most ${most} can be tried`,
  seating: (force: string) => `the seating forces did not settle: ${force} are left`,
  samples: (samples: string, least: string, most: string) =>
    `number of samples is ${samples}; it must be a whole number from ${least} to ${most}`,
  seed: (seed: string) => `seed is ${seed}; it must be a whole number`,
  biteSpread: (spread: string) => `spread of ln bite is ${spread}; it must be 0 or more`,
  matrix: (row: string, pivot: string) => `the matrix is not positive definite: pivot ${row} is ${pivot}`,
  element: (x: string, y: string) => `an element is turned inside out at x = ${x}, y = ${y}`,
  brokeOff: 'the calculation broke off',
  stoppedRepeatedly: 'the calculation stopped several times in a row',
  pictures: {
    'no-picture-file': 'this browser cannot make a picture file',
    'not-drawn': 'the picture is not drawn yet',
  },
});
