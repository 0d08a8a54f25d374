/**
 * The swing of a plucked string, against a sum of standing waves and against pieces of string integrated in time; and what
 * players and makers say of a set-up, held against the presets.
 */
import { PRESETS } from '../../../src/neck/presets.ts';
import { createPredictor } from '../../../src/mechanics/predict.ts';
import { leastRoom, roomChart } from '../../../src/playing/room.ts';
import { setUp } from '../../../src/playing/set-up.ts';
import { boundDepth, idealDepth, pluckHeightMm } from '../../../src/playing/swing.ts';
import { disagreement } from '../../../src/verdict/known-limits.ts';
import { stringAim } from '../../../src/verdict/string-aim.ts';
import { playingOf, stringRoom, type Hand, type Strength } from '../../../src/verdict/string-room.ts';
import { arcLine } from '../../playing/necks.ts';
import { lowestByFourier, lowestInTime } from '../../playing/plucked-string.ts';
import { isSteelSix, LIGHT_STRINGS } from '../limits.ts';
import type { Comparison, PracticeRow, ValueRow } from '../row.ts';

const PLACES: readonly number[] = [0.1, 0.5, 0.9];
const PLUCK = 0.2;

function depths(reference: (u: number) => number, tolerance: number, why: string, places: readonly number[]): Comparison[] {
  return places.map((u) => {
    const printed = reference(u).toFixed(4);
    return {
      label: `${u.toFixed(2)} of the string from the fret`,
      printed,
      reference: Number(printed),
      unit: '',
      tolerance,
      why,
      ours: () => idealDepth(u, PLUCK, 'away'),
    };
  });
}

const summed = lowestByFourier(PLUCK, PLACES, 'away');
const inTime = lowestInTime(PLUCK, 0, 'away');
/** Every tenth or so of the string. */
const IN_TIME_PLACES = inTime.places.filter((_, i) => i % 9 === 4);

const VERIFICATION: readonly ValueRow[] = [
  {
    id: 'pluck-height',
    kind: 'verification',
    subject: 'Playing',
    quantity: 'height of the triangle that a pluck pulls a string into',
    inputs: '1.3 N at 120 mm of 580 mm, tension 70 N',
    source: 'equilibrium at the corner, F = T·(a/q + a/(ℓ − q)): 1.3/(70/120 + 70/460)',
    mark: 'calc',
    comparisons: [
      {
        printed: '1.7675',
        reference: 1.3 / (70 / 120 + 70 / 460),
        unit: 'mm',
        tolerance: 1e-9,
        why: 'the same equation another way',
        ours: () => pluckHeightMm(1.3, 120, 580, 70),
      },
    ],
  },
  {
    id: 'pluck-fourier',
    kind: 'verification',
    subject: 'Playing',
    quantity: 'lowest line of a plucked string over a period, share of the height of the pluck',
    inputs: 'plucked at a fifth of its length from the saddle, away from the board; 400 partials, 400 moments',
    source: 'sum of standing waves, Fletcher & Rossing, The Physics of Musical Instruments, section 2.9',
    mark: 'mem',
    comparisons: depths((u) => summed[PLACES.indexOf(u)] ?? Number.NaN, 0.01, 'the corner takes all partials; these are 400', PLACES),
  },
  {
    id: 'pluck-in-time',
    kind: 'verification',
    subject: 'Playing',
    quantity: 'the same, by integrating the motion in time',
    inputs: 'the same pluck; 120 pieces of string, twenty periods, no stiffness',
    source: 'leapfrog rule on the equation of the string (Courant, Friedrichs & Lewy)',
    mark: 'mem',
    comparisons: depths(
      (u) => inTime.depth[inTime.places.indexOf(u)] ?? Number.NaN,
      0.02,
      'the corner is rounded by half a piece',
      IN_TIME_PLACES,
    ),
  },
  {
    id: 'pluck-bound',
    kind: 'verification',
    subject: 'Playing',
    quantity: 'bound of the partials at mid-string, share of the height of the pluck',
    inputs: 'plucked at a quarter of its length',
    source: 'sum over the odd partials in closed form, 4/(3·√2)',
    mark: 'calc',
    comparisons: [
      {
        printed: '0.9428',
        reference: 4 / (3 * Math.SQRT2),
        unit: '',
        tolerance: 0.01,
        why: 'a hundred partials of all',
        ours: () => boundDepth(0.5, 0.25, 'away'),
      },
    ],
  },
];

const predictor = createPredictor();
const NECKS = PRESETS.map(({ id, build }) => ({ id, build, prediction: predictor.predict(build) }));
type Neck = (typeof NECKS)[number];
const hand = (strength: Strength): Hand => ({ strength, direction: 'along' });

const mm = (value: number) => `${value.toFixed(2).replace('-', '−')} mm`;

function judged(necks: readonly Neck[], holds: (neck: Neck) => boolean, shows: (neck: Neck) => string) {
  return { holds: necks.every(holds), seen: necks.map((neck) => `${neck.id} ${shows(neck)}`).join('; ') };
}

/** Where a neck buzzes first, played medium, with an arc of relief. */
function worstFret({ build }: Neck, reliefMm: number): number {
  return leastRoom(roomChart(setUp(build, arcLine(build, reliefMm)), playingOf(build, hand('medium')))).atFret;
}

const practice = (id: string, printed: string, statements: PracticeRow['statements']): PracticeRow => ({
  id,
  kind: 'practice',
  subject: 'Practice',
  quantity: 'how a neck plays as it is set up',
  inputs: 'the presets, strung and settled, rod set; plucked along the board, a fifth of the scale from the saddle',
  source: 'common practice, no source',
  mark: 'practice',
  printed,
  statements,
});

const PRACTICE: readonly PracticeRow[] = [
  practice('set-up-clean', 'a usual set-up is clean under a light hand; a heavy one makes it buzz', [
    {
      says: 'played softly (0.5 N) no note buzzes',
      judge: () =>
        judged(
          NECKS,
          (neck) => stringRoom(neck, hand('soft')).buzzing === 0,
          (neck) => `${mm(stringRoom(neck, hand('soft')).least.leastMm)} of room`,
        ),
    },
    {
      says: 'played hard (2 N) every six-string buzzes somewhere, and asks for a higher action',
      judge: () =>
        judged(
          NECKS.filter(({ build }) => build.strings.length === 6),
          (neck) =>
            stringRoom(neck, hand('hard')).buzzing > 0 &&
            stringAim(neck, hand('hard')).lowestActionMm > stringAim(neck, hand('hard')).actionMm,
          (neck) => `${stringRoom(neck, hand('hard')).buzzing} of ${stringRoom(neck, hand('hard')).notes} notes`,
        ),
    },
  ]),
  practice('buzz-where', 'a back-bowed neck buzzes in the first frets, one with too much relief higher up', [
    {
      says: 'with a back-bow of 0.2 mm the worst note buzzes on one of the first seven frets',
      judge: () => judged(NECKS, (neck) => worstFret(neck, -0.2) <= 7, (neck) => `fret ${worstFret(neck, -0.2)}`),
    },
    {
      says: 'with 0.8 mm of relief it buzzes beyond the seventh',
      judge: () => judged(NECKS, (neck) => worstFret(neck, 0.8) > 7, (neck) => `fret ${worstFret(neck, 0.8)}`),
    },
  ]),
];

const isNylon = ({ build }: Neck) => build.strings.some(({ construction }) => construction.startsWith('nylon'));
const STEEL_SIX = NECKS.filter(({ build }) => isSteelSix(build));
const medium = (neck: Neck) => stringAim(neck, hand('medium'));
/** The relief that leaves the most room at the action of the preset, where there is a rod; that of the neck where none leaves more. */
function aimedMm(neck: Neck): number {
  const { relief } = medium(neck);
  return relief.status === 'better' ? relief.reliefMm : neck.prediction.methods[neck.build.method].rodSet.extremeMm;
}
/** Half a step of the relief that can be wanted. */
const HALF_STEP_MM = 0.005;

/** What was read of guides to set-up are the excerpts that a search gives, none of them whole; who wrote them is not told here. */
const RELIEF_GUIDES =
  'search excerpts of guides to set-up on the web, not the guides themselves: two manuals of one seller of kits say straight to 0.012 in, one of them more for a heavier hand; a school starts at 0.02 in';
const HEIGHT_GUIDES =
  'steel six-strings: a search excerpt of one guide to set-up on the web, not the guide itself; long four-strings and nylon: common practice, no source, from memory (the one excerpt seen says about 5 mm for nylon)';

const SET_UP: readonly PracticeRow[] = [
  {
    ...practice('set-up-relief', 'steel six-strings: straight to 0.012 in of relief; more under a heavy hand', [
      {
        says: 'the relief that leaves the most room, played medium at the action of the preset, lies between 0 and 0.30 mm on every steel six-string with a rod',
        judge: () =>
          judged(
            STEEL_SIX.filter(({ build }) => build.rodKind !== 'none'),
            (neck) => aimedMm(neck) >= -HALF_STEP_MM && aimedMm(neck) <= 0.012 * 25.4 + HALF_STEP_MM,
            (neck) => mm(aimedMm(neck)),
          ),
      },
      {
        says: 'played hard it is no less than played softly, wherever both leave more room than the relief at hand',
        judge: () => {
          const of = (neck: Neck, strength: Strength) => {
            const { relief } = stringAim(neck, hand(strength));
            return relief.status === 'better' ? relief.reliefMm : null;
          };
          const both = NECKS.filter((neck) => of(neck, 'soft') !== null && of(neck, 'hard') !== null);
          return judged(
            both,
            (neck) => of(neck, 'hard')! >= of(neck, 'soft')!,
            (neck) => `${mm(of(neck, 'soft')!)} to ${mm(of(neck, 'hard')!)}`,
          );
        },
      },
    ]),
    quantity: 'relief for an action',
    source: RELIEF_GUIDES,
  },
  {
    ...practice('set-up-height', 'action at fret 12: steel six-strings 4/64 in treble to 6/64 in bass, long four-strings about the same, nylon 3 to 4 mm', [
      {
        says: 'every steel six-string is clean in ordinary playing (1 N) at no more than 6/64 in, 2.38 mm',
        limit: 'light-strings',
        doesNotHoldBecause:
          'the pluck is taken to be as hard on light strings as on heavy ones, and swings them further; players of light strings pluck less hard, and hear less of a light buzz',
        judge: () =>
          judged(
            STEEL_SIX,
            (neck) => disagreement(LIGHT_STRINGS, neck) === undefined,
            (neck) => mm(medium(neck).lowestActionMm),
          ),
      },
      {
        says: 'so is the long four-string, and every nylon neck at no more than 4 mm',
        judge: () =>
          judged(
            NECKS.filter((neck) => neck.id === 'long-four' || isNylon(neck)),
            (neck) => medium(neck).lowestActionMm <= (isNylon(neck) ? 4 : 2.38),
            (neck) => mm(medium(neck).lowestActionMm),
          ),
      },
    ]),
    quantity: 'lowest action without a buzz',
    source: HEIGHT_GUIDES,
  },
];

export const PLAYING_ROWS: readonly (ValueRow | PracticeRow)[] = [...VERIFICATION, ...PRACTICE, ...SET_UP];
