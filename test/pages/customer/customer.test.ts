/** What the customer reads follows from the numbers, and from nothing else. */
import { describe, expect, test } from 'vitest';
import { PRESETS } from '../../tools/presets.ts';
import type { Build } from '../../../src/neck/build.ts';
import { METALS } from '../../../src/neck/metals.ts';
import { METHODS } from '../../../src/mechanics/prediction-types.ts';
import { createPredictor } from '../../../src/mechanics/predict.ts';
import { createEstimator } from '../../../src/mechanics/uncertainty/estimate.ts';
import {
  choiceFacts,
  movementOf,
  nickelOf,
  refretOf,
  rodTaskOf,
  type ChoiceFacts,
} from '../../../src/verdict/choice-facts.ts';
import { choiceLabels } from '../../../src/pages/customer/labels.ts';
import { choiceSentences, daysText, sharedMeans, wearSentence } from '../../../src/pages/customer/sentences.ts';
import { stringAim } from '../../../src/verdict/string-aim.ts';
import { stringRoom, type Strength } from '../../../src/verdict/string-room.ts';
import { CUSTOMER_WORDS } from '../../../src/speech/en/pages/customer.ts';
import { metalShortName } from '../../../src/speech/names.ts';

const predictor = createPredictor();
const estimator = createEstimator(predictor);
const maple = PRESETS[0].build;

async function factsOf(build: Build, withBand = false): Promise<ChoiceFacts> {
  const uncertainty = withBand ? await estimator.estimate(build, { samples: 400 }) : null;
  return choiceFacts(build, predictor.predict(build), uncertainty);
}

const BASE: ChoiceFacts = {
  method: 'press',
  frettedMm: -0.208,
  frettedBand: null,
  strungMm: 0.108,
  settledMm: 0.206,
  settledBand: null,
  movesMm: 0.098,
  movement: 'a-little',
  settleDays: 90,
  targetMm: 0.15,
  rodTask: 'easy',
  rodChance: null,
  actionMm: 1.9,
  cleanTo: 'medium',
  own: null,
  mostRoom: { status: 'as-is' },
  overMonths: {
    strung: { actionMm: 1.9, roomMm: 0.05, cleanTo: 'medium' },
    settled: { actionMm: 1.98, roomMm: 0.08, cleanTo: 'medium' },
  },
  waitDays: 3,
  glueHours: 0,
  refret: 'easy',
  nickel: 'contains',
  nickelStrings: ['steel-wound'],
  wearRatio: 1,
  wire: 'nickel-silver-18',
};

describe('the strings', () => {
  test('are as high as the set-up has them, and clean up to the hardest playing without a buzz', async () => {
    for (const { build } of PRESETS) {
      const prediction = predictor.predict(build);
      const facts = await factsOf(build);
      expect(facts.actionMm).toBe(build.stringHeightFret12Mm - build.crownHeightMm);
      const isClean = (strength: Strength) =>
        stringRoom({ build, prediction }, { strength, direction: 'along' }).buzzing === 0;
      expect(facts.cleanTo).toBe((['hard', 'medium', 'soft'] as const).find(isClean) ?? null);
    }
    expect((await factsOf({ ...maple, stringHeightFret12Mm: 1.9 })).cleanTo).toBeNull();
    expect((await factsOf({ ...maple, stringHeightFret12Mm: 6 })).cleanTo).toBe('hard');
  });

  test('are said with their height and in one of four ways', () => {
    const said = (['hard', 'medium', 'soft', null] as const).map(
      (cleanTo) => choiceSentences({ ...BASE, cleanTo }, 'metric').strings,
    );
    expect(new Set(said).size).toBe(4);
    for (const sentence of said) expect(sentence).toMatch(/1\.90\smm above the twelfth fret/);
    expect(said[1]).toContain(CUSTOMER_WORDS.cleans.medium);
    expect(said[3]).toContain(CUSTOMER_WORDS.cleans.none);
  });
});

describe('the bend with the most room', () => {
  const better = {
    status: 'better',
    reliefMm: 0.2,
    roomMm: 0.04,
    costMm: 0.01,
    band: { lowMm: 0.15, highMm: 0.26, fromN: 0.71, toN: 1.41 },
    change: {},
    raised: [],
  } as const;
  const said = (mostRoom: ChoiceFacts['mostRoom']) => choiceSentences({ ...BASE, mostRoom }, 'metric').strings;

  test('is said in the words for the customer, with its band', () => {
    expect(said(better)).toMatch(/a hollow of 0\.20.mm in the neck\. .* from 0\.15.mm hollow to 0\.26.mm hollow\./);
    expect(said({ ...better, reliefMm: -0.05 })).toMatch(/a hump of 0\.05.mm/);
    expect(said({ ...better, reliefMm: 0.001 })).toContain('with the neck straight.');
    expect(said({ ...better, band: { ...better.band, highMm: 0.15 } })).not.toContain('softer or harder');
  });

  test('is that of the neck where none leaves more, and nothing without a rod', () => {
    expect(said({ status: 'as-is' })).toContain('as it is set');
    expect(said({ status: 'no-rod' })).not.toContain('room to swing');
  });

  test('is that of the chart of where it buzzes', () => {
    for (const { build } of PRESETS) {
      const prediction = predictor.predict(build);
      const { relief } = stringAim({ build, prediction }, { strength: 'medium', direction: 'along' });
      expect(choiceFacts(build, prediction, null).mostRoom).toEqual(relief);
    }
  });
});

describe('the first months', () => {
  const months = (settled: Partial<ChoiceFacts['overMonths']['settled']>) =>
    choiceSentences(
      { ...BASE, overMonths: { ...BASE.overMonths, settled: { ...BASE.overMonths.settled, ...settled } } },
      'metric',
    ).months;

  test('say how low and how clean it is when nothing is set again', () => {
    expect(months({})).toMatch(/come to lie 0\.08\smm higher meanwhile\. It plays as cleanly as on the first day\.$/);
    expect(months({ actionMm: 1.8, cleanTo: 'soft' })).toMatch(/0\.10\smm lower meanwhile\. Notes that were clean/);
    expect(months({ actionMm: 1.902, cleanTo: 'hard' })).toMatch(/stay as high as they were set\. It then plays more/);
  });
});

describe('facts', () => {
  test('are those of the prediction', async () => {
    for (const { build } of PRESETS) {
      for (const method of METHODS) {
        const facts = await factsOf({ ...build, method });
        const predicted = predictor.predict({ ...build, method }).methods[method];
        expect([facts.frettedMm, facts.strungMm, facts.settledMm]).toEqual([
          predicted.fretted.extremeMm,
          predicted.strung.extremeMm,
          predicted.settled.extremeMm,
        ]);
        expect(facts.movesMm).toBe(predicted.settled.extremeMm - predicted.strung.extremeMm);
      }
    }
  });

  test('carry the band and the chance of the rod once they are known', async () => {
    const facts = await factsOf(maple, true);
    expect(facts.frettedBand!.p05).toBeLessThan(facts.frettedMm);
    expect(facts.frettedBand!.p95).toBeGreaterThan(facts.frettedMm);
    expect(facts.rodChance).toBeGreaterThan(0.95);
    expect(facts.rodTask).toBe('easy');
  }, 60_000);

  test('say what the rod has to do, with and without a band', () => {
    const task = (build: Build) => rodTaskOf(build, predictor.predict(build), null);
    expect(task({ ...maple, rodKind: 'none' })).toBe('none');
    expect(task(maple)).toBe('easy');
    // A relief that no setting gives.
    expect(task({ ...maple, targetReliefMm: 0.8 })).toBe('beyond');
    // Between half of the range and the whole of it: settled 0.206 mm, +100 % gives −0.34 mm (lessons’ numbers).
    expect(task({ ...maple, targetReliefMm: -0.2 })).toBe('within');
    const band = (chance: number, p50: number) =>
      rodTaskOf(maple, predictor.predict(maple), {
        methods: { press: { rodPercentForTarget: { chance, p50 } } },
      } as never);
    expect([band(1, 20), band(1, 70), band(0.8, 70), band(0.2, 130)]).toEqual(['easy', 'within', 'doubtful', 'beyond']);
  });

  test('class movement, refret and nickel', () => {
    expect([0.01, -0.049, 0.05, 0.149, 0.15, -0.4].map(movementOf)).toEqual([
      'hardly',
      'hardly',
      'a-little',
      'a-little',
      'clearly',
      'clearly',
    ]);
    const refret = (method: Build['method'], glueKind: Build['glueKind'], chamferMm: number) =>
      refretOf({ method, glueKind, chamferMm });
    expect(refret('press', 'epoxy', 0.25)).toBe('easy');
    expect(refret('press', 'epoxy', 0)).toBe('careful');
    expect(refret('glue', 'hide-glue', 0.25)).toBe('careful');
    expect(refret('glue', 'hide-glue', 0)).toBe('hard');
    expect(refret('glue', 'cyanoacrylate', 0.25)).toBe('hard');
    expect(refret('both', 'wood-glue', 0.25)).toBe('hard');
    expect(METALS.map(({ id }) => [id, nickelOf(id)])).toEqual([
      ['nickel-silver-18', 'contains'],
      ['nickel-silver-770', 'contains'],
      ['phosphor-bronze', 'none'],
      ['copper-tin-iron', 'none'],
      ['brass', 'none'],
      ['stainless', 'bound'],
      ['mild-steel', 'none'],
    ]);
  });

  test('wait for the glue where there is any, and for the days before stringing', async () => {
    const glued = { ...maple, method: 'glue' as const, glueKind: 'epoxy' as const, restDays: 0 };
    expect(await factsOf(glued)).toMatchObject({ glueHours: 48, waitDays: 2 });
    expect(await factsOf({ ...glued, restDays: 5 })).toMatchObject({ waitDays: 5 });
    expect(await factsOf({ ...glued, method: 'press' })).toMatchObject({ glueHours: 0, waitDays: 0 });
  });
});

describe('sentences', () => {
  test('say which way the neck goes, and how far, in the reader’s units', () => {
    const [held, bends, strings] = choiceSentences(BASE, 'metric').story;
    expect(held).toBe(CUSTOMER_WORDS.held.press);
    expect(bends).toBe('All frets together bend the neck backwards by 0.21\u00a0mm, about 2 sheets of paper thick.');
    expect(strings).toBe('The strings then pull it forward, to a hollow of 0.11\u00a0mm.');
    expect(choiceSentences(BASE, 'inch').story[1]).toContain('0.008\u00a0in');
  });

  test('turn with the signs', () => {
    const story = (change: Partial<ChoiceFacts>) => choiceSentences({ ...BASE, ...change }, 'metric').story;
    expect(story({ frettedMm: 0 })[1]).toBe(CUSTOMER_WORDS.bendsNot);
    expect(story({ frettedMm: 0.3 })[1]).toContain('the neck is hollow by 0.30');
    expect(story({ frettedMm: -0.03 })[1]).toContain('less than a sheet of paper');
    expect(story({ frettedMm: -0.1 })[1]).toContain('about one sheet of paper');
    expect(story({ strungMm: -0.05 })[2]).toContain('a hump of 0.05\u00a0mm is left');
    expect(story({ strungMm: 0.001 })[2]).toBe(CUSTOMER_WORDS.stringsFlat);
  });

  test('give the band from small to large', () => {
    const facts = { ...BASE, frettedBand: { p05: -0.42, p50: -0.2, p95: -0.09 } };
    expect(choiceSentences(facts, 'metric').story[1]).toContain(
      'in nine of ten such necks it is 0.09\u00a0mm to 0.42\u00a0mm',
    );
  });

  test('give time and risk', () => {
    expect(choiceSentences(BASE, 'metric').time).toBe('Nothing has to set. Strings go on 3 days after the frets.');
    const glued = { ...BASE, glueHours: 24, waitDays: 1, rodTask: 'doubtful' as const, rodChance: 0.83 };
    const { time, risk } = choiceSentences(glued, 'metric');
    expect(time).toContain('sets for 24 hours. Strings go on one day after');
    expect(risk).toBe(
      'The rod in the neck may come to the end of its range. It gets there in about 83 of 100 such necks.',
    );
    expect(choiceSentences({ ...BASE, rodChance: 0.999 }, 'metric').risk).toContain('in nearly every such neck');
    expect(choiceSentences({ ...BASE, rodTask: 'none', rodChance: null }, 'metric').months).toContain('Without a rod');
    expect([0, 1, 2.5].map(daysText)).toEqual(['the same day', 'one day', '2.5 days']);
  });

  test('say of wear no more than a ratio of typical hardnesses bears', () => {
    const { wears } = CUSTOMER_WORDS;
    expect([0.8, 0.95, 1, 1.1, 1.2, 1.5].map(wearSentence)).toEqual([
      wears.softer,
      wears.common,
      wears.common,
      wears.common,
      wears.harder,
      wears.muchHarder,
    ]);
    expect(METALS.map(({ id }) => metalShortName(id)).join()).not.toMatch(/[()]/);
  });

  test('use no word of the trade that a customer cannot know', async () => {
    for (const { build } of PRESETS) {
      for (const method of METHODS) {
        const all = Object.values(choiceSentences(await factsOf({ ...build, method }), 'metric'))
          .flat()
          .join(' ');
        expect(all).not.toMatch(/tang|kerf|stud|relief|back-bow|chamfer|interference|NaN|undefined|Infinity/i);
      }
    }
  });

  test('that are the same with every choice are found', () => {
    const one = choiceSentences(BASE, 'metric');
    const other = choiceSentences({ ...BASE, refret: 'hard', movesMm: 0.01, movement: 'hardly' }, 'metric');
    expect(sharedMeans([one, other])).toEqual(['strings', 'skin', 'wear']);
    const softer = choiceSentences({ ...BASE, cleanTo: 'soft' }, 'metric');
    expect(sharedMeans([one, softer])).not.toContain('strings');
    expect(sharedMeans([one])).toEqual([]);
  });
});

describe('labels', () => {
  test('name the way of seating where nothing else differs', () => {
    expect(choiceLabels(METHODS.map((method) => ({ ...maple, method })))).toEqual([
      CUSTOMER_WORDS.methods.press,
      CUSTOMER_WORDS.methods.glue,
      CUSTOMER_WORDS.methods.both,
    ]);
  });

  test('name the necks where they differ, never two alike', () => {
    const labels = choiceLabels([maple, PRESETS[1].build]);
    expect(labels).toEqual([PRESETS[0].label, PRESETS[1].label]);
    const twins = choiceLabels([
      { ...maple, name: 'Ada' },
      { ...maple, name: 'Ada', method: 'glue', kerfMm: 0.6 },
      { ...maple, name: 'Ada', method: 'glue', kerfMm: 0.62 },
    ]);
    expect(new Set(twins).size).toBe(3);
    expect(twins[0]).toBe('Ada: frets pressed in');
  });
});
