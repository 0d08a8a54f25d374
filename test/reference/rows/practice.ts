/**
 * What makers see, held against all presets. It is said in words; the predicates below make numbers of the words and
 * say which. Where the prediction does not come out as it is said, the row says so and why.
 */
import { PRESETS, type Preset, type PresetId } from '../../../src/neck/presets.ts';
import { createPredictor } from '../../../src/mechanics/predict.ts';
import type { Method } from '../../../src/mechanics/prediction-types.ts';
import { lineAt } from '../../../src/mechanics/states.ts';
import { disagreement, KNOWN_LIMITS, type KnownLimitId } from '../../../src/verdict/known-limits.ts';
import type { Reckoned } from '../../../src/verdict/reckoned.ts';
import { printedCheck, type PracticeRow, type Statement } from '../row.ts';

interface Neck extends Reckoned {
  readonly preset: Preset;
}

const predictor = createPredictor();
/** New necks, as sold: no refret, no levelling, no climate. */
const NECKS: readonly Neck[] = PRESETS.map((preset) => ({ preset, build: preset.build, prediction: predictor.predict(preset.build) }));
/** “Kerf slightly smaller than the tang” read the other way: smaller than the tang's body, not only than the studs. */
const UNDER_BODY_MM = 0.02;
const UNDER_BODY: readonly Neck[] = PRESETS.map((preset) => {
  const build = { ...preset.build, method: 'press' as const, kerfMm: preset.build.tangWidthMm - UNDER_BODY_MM };
  return { preset, build, prediction: predictor.predict(build) };
});
const READ_SO = `kerf ${UNDER_BODY_MM} mm under the tang’s body`;
const neckOf = (id: PresetId) => NECKS.find((neck) => neck.preset.id === id)!;

const mm = (value: number) => value.toFixed(2).replace('-', '−');
const percent = (value: number) => `${(100 * value).toFixed(0)} %`;

const fretted = ({ prediction }: Neck) => prediction.methods.press.fretted.extremeMm;
const strung = ({ prediction }: Neck, method: Method) => prediction.methods[method].strung.extremeMm;
const settled = ({ prediction }: Neck, method: Method) => prediction.methods[method].settled.extremeMm;

function oneFretMm({ prediction }: Neck): number[] {
  return prediction.fretXMm.map(
    (_, index) =>
      lineAt(prediction, 'press', { strung: false, days: 0, rodPercent: 0, fretsIn: [index + 1] }).extremeMm,
  );
}

/** True of each neck: shows the number of each. */
function ofAll(necks: readonly Neck[], holds: (neck: Neck) => boolean, shows: (neck: Neck) => string) {
  return { holds: necks.every(holds), seen: necks.map((neck) => `${neck.preset.id} ${shows(neck)}`).join('; ') };
}

/** What a known limit of the model is about: true of each neck unless the two disagree there. */
function byLimit(limit: KnownLimitId, necks: readonly Neck[], shows: (neck: Neck) => string) {
  const known = KNOWN_LIMITS.find(({ id }) => id === limit);
  if (!known) throw new Error(`no known limit is called "${limit}"`);
  return {
    limit,
    judge: () => ofAll(necks, (neck) => disagreement(known, neck) === undefined, shows),
  };
}

function ofMost(necks: readonly Neck[], holds: (neck: Neck) => boolean, shows: (neck: Neck) => string) {
  const count = necks.filter(holds).length;
  return {
    holds: count > necks.length / 2,
    seen: `${count} of ${necks.length}: ${ofAll(necks, holds, shows).seen}`,
  };
}

function row(id: string, statements: readonly Statement[], note?: string): PracticeRow {
  const { printed, unit: _unit, tolerance: _tolerance, ...head } = printedCheck(id);
  return { ...head, kind: 'practice', subject: 'Practice', printed, statements, ...(note === undefined ? {} : { note }) };
}

/** Practice speaks of a set of that size; of twelve frets one is a twelfth. */
const SOME_TWO_DOZEN = NECKS.filter(({ build }) => build.fretCount >= 18);
const SLIGHT_MM = [0.05, 0.6] as const;
const CLOSE_TO_FLAT_MM = 0.15;
const NEARLY_FLAT_MM = 0.05;
const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

const thick = neckOf('thick-five-piece');
const thickUnderBody = UNDER_BODY.find(({ preset }) => preset.id === thick.preset.id)!;
const ordinary = neckOf('bolt-on-maple');
/** A neck of the workshop that is sawn as the statements mean it, by its own numbers. */
const tight = neckOf('bolt-on-tight');

/** Days under strings after which a line has come through flat; undefined when it starts hollow or never does. */
function daysToFlat({ prediction }: Neck): number | undefined {
  const at = (days: number) => lineAt(prediction, 'press', { strung: true, days, rodPercent: 0 }).extremeMm;
  if (at(0) >= 0 || at(3650) < 0) return undefined;
  let early = 0;
  let late = 3650;
  for (let step = 0; step < 60; step += 1) {
    const middle = (early + late) / 2;
    if (at(middle) < 0) early = middle;
    else late = middle;
  }
  return late;
}


export const PRACTICE_ROWS: readonly PracticeRow[] = [
  row(
    'one-fret',
    [
      {
        says: 'a fret bows a neck of some two dozen by less than a tenth of what the full set does: mean over its frets',
        judge: () => ofAll(SOME_TWO_DOZEN, (neck) => mean(oneFretMm(neck)) / fretted(neck) < 0.1, (neck) => percent(mean(oneFretMm(neck)) / fretted(neck))),
      },
      {
        says: 'the same: the fret that bows it most',
        ...byLimit('one-fret', NECKS, (neck) => percent(Math.min(...oneFretMm(neck)) / fretted(neck))),
        doesNotHoldBecause:
          'statics: n equal hinges over a span bow it by n·θL/8, one of them in mid-span by θL/4, which is 2/n of that: a tenth takes 20 frets on the free part of the neck, and there are 12 to 19',
      },
      {
        says: 'no single fret bows a neck by 0.05 mm (about what a straightedge and a feeler show)',
        judge: () =>
          ofAll(
            NECKS,
            (neck) => Math.min(...oneFretMm(neck)) > -0.05,
            (neck) => `${Math.min(...oneFretMm(neck)).toFixed(3).replace('-', '−')} mm`,
          ),
      },
    ],
    'All with pressed frets, whatever the preset’s own method; bow from fret 1 to the body joint.',
  ),
  row('full-set', [
    {
      says: `slight back-bow: between ${SLIGHT_MM[0]} and ${SLIGHT_MM[1]} mm`,
      judge: () =>
        ofAll(
          SOME_TWO_DOZEN,
          (neck) => fretted(neck) < -SLIGHT_MM[0] && fretted(neck) > -SLIGHT_MM[1],
          (neck) => `${mm(fretted(neck))} mm`,
        ),
    },
    {
      says: `the same, ${READ_SO}`,
      judge: () =>
        ofAll(
          UNDER_BODY,
          (neck) => fretted(neck) < -SLIGHT_MM[0] && fretted(neck) > -SLIGHT_MM[1],
          (neck) => `${mm(fretted(neck))} mm`,
        ),
    },
  ]),
  row('strings-flatten', [
    {
      says: `most pressed necks lie within ${CLOSE_TO_FLAT_MM} mm of flat on the day of stringing`,
      judge: () =>
        ofMost(
          NECKS,
          (neck) => Math.abs(strung(neck, 'press')) <= CLOSE_TO_FLAT_MM,
          (neck) => `${mm(strung(neck, 'press'))} mm`,
        ),
    },
    {
      says: `most lie within ${NEARLY_FLAT_MM} mm of flat, ${READ_SO}`,
      judge: () =>
        ofMost(
          UNDER_BODY,
          (neck) => Math.abs(strung(neck, 'press')) <= NEARLY_FLAT_MM,
          (neck) => `${mm(strung(neck, 'press'))} mm`,
        ),
    },
    {
      says: `the preset whose slots are sawn so is bowed back by its frets, and within ${NEARLY_FLAT_MM} mm of flat once strung`,
      judge: () =>
        ofAll(
          [tight],
          (neck) => fretted(neck) < -SLIGHT_MM[0] && fretted(neck) > -SLIGHT_MM[1] && Math.abs(strung(neck, 'press')) <= NEARLY_FLAT_MM,
          (neck) =>
            `kerf ${(neck.build.tangWidthMm - neck.build.kerfMm).toFixed(2)} mm under the body, ${mm(fretted(neck))} mm fretted, ${mm(strung(neck, 'press'))} mm strung`,
        ),
    },
    {
      says: `every one that its strings pull forward by more than ${NEARLY_FLAT_MM} mm lies flatter than the same neck with frets that do not wedge (glue fit)`,
      judge: () =>
        ofAll(
          NECKS.filter((neck) => strung(neck, 'glue') > NEARLY_FLAT_MM),
          (neck) => Math.abs(strung(neck, 'press')) < Math.abs(strung(neck, 'glue')),
          (neck) => `${mm(strung(neck, 'press'))} against ${mm(strung(neck, 'glue'))} mm`,
        ),
    },
  ]),
  row('glue-only', [
    {
      says: 'forward bow under the strings',
      judge: () =>
        ofAll(
          NECKS,
          (neck) => strung(neck, 'glue') > 0,
          (neck) => `${mm(strung(neck, 'glue'))} mm`,
        ),
    },
    {
      says: 'more of it for the rod to take out than with a press fit, on the day of stringing',
      judge: () =>
        ofAll(
          NECKS,
          (neck) => strung(neck, 'glue') > strung(neck, 'press'),
          (neck) => `${mm(strung(neck, 'glue'))} against ${mm(strung(neck, 'press'))} mm`,
        ),
    },
    {
      says: 'the same once settled',
      ...byLimit(
        'pressed-settled',
        NECKS,
        (neck) => `${mm(settled(neck, 'glue'))} against ${mm(settled(neck, 'press'))} mm`,
      ),
      doesNotHoldBecause:
        'empty slots leave the pressed neck more flexible, and its wedges relax: where the strings pull hard (the long four-string) it ends up hollower than the glued one after some weeks',
    },
  ]),
  row('stiff-neck', [
    {
      says: 'small back-bow when pressed: the smallest per newton of wedge force of the six-strings with 22 frets or more',
      judge: () => {
        const perNewton = (neck: Neck) => -fretted(neck) / mean(neck.prediction.methods.press.wedgeForceN);
        const others = (['bolt-on-maple', 'set-neck-mahogany'] as const).map(neckOf);
        return {
          holds: others.every((neck) => perNewton(thick) < perNewton(neck)),
          seen: [thick, ...others]
            .map((neck) => `${neck.preset.id} ${(1e6 * perNewton(neck)).toFixed(0)} nm/N (${mm(fretted(neck))} mm)`)
            .join('; '),
        };
      },
    },
    {
      says: 'the back-bow outlasts the stringing',
      ...byLimit('stiff-neck', [thick], (neck) => `${mm(fretted(neck))} mm fretted, ${mm(strung(neck, 'press'))} mm strung`),
      doesNotHoldBecause:
        'strings of 10–46 gauge bend even this neck forward by more than its frets bend it back, where only the studs bite; a kerf narrower than the tang’s body turns it round (next line)',
    },
    {
      says: `it outlasts the stringing and fades over weeks, ${READ_SO}`,
      judge: () => {
        const days = daysToFlat(thickUnderBody);
        return {
          holds: days !== undefined && days > 7 && days < 365,
          seen: `${mm(fretted(thickUnderBody))} mm fretted, ${mm(strung(thickUnderBody, 'press'))} mm strung, ${days === undefined ? 'never flat' : `flat after ${days.toFixed(0)} days`}`,
        };
      },
    },
    {
      says: 'a rod at its limit moves it less than half as far as the ordinary maple neck',
      judge: () => {
        const moved = (neck: Neck) => {
          const { extremeMm } = lineAt(neck.prediction, 'press', { strung: true, days: 0, rodPercent: 100 });
          return extremeMm - strung(neck, 'press');
        };
        return {
          holds: Math.abs(moved(thick)) < Math.abs(moved(ordinary)) / 2,
          seen: `${mm(moved(thick))} against ${mm(moved(ordinary))} mm`,
        };
      },
    },
  ]),
];
