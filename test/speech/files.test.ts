/** Files, links and calculations are the same in every language; what people read is not. */
import { describe, expect, test } from 'vitest';
import { ENTRY } from '../mechanics/bench-log/entries.ts';
import { inBothLanguages } from './house.ts';

async function loadHouse() {
  return {
    quantity: await import('../../src/speech/quantity.ts'),
    presets: await import('../../src/neck/presets.ts'),
    names: await import('../../src/speech/names.ts'),
    parameters: await import('../../src/neck/parameters.ts'),
    file: await import('../../src/neck/file.ts'),
    schema: await import('../../src/neck/schema.ts'),
    log: await import('../../src/mechanics/bench-log/csv.ts'),
    readLog: await import('../../src/mechanics/bench-log/read-csv.ts'),
    predict: await import('../../src/mechanics/predict.ts'),
    estimate: await import('../../src/mechanics/uncertainty/estimate.ts'),
    answers: await import('../../src/mechanics/inversion/answers.ts'),
    refret: await import('../../src/mechanics/seating/refret-answers.ts'),
    tables: await import('../../src/fretwork/plan/tables.ts'),
    template: await import('../../src/fretwork/plan/template.ts'),
    csv: await import('../../src/pages/papers/csv-file.ts'),
    templateWords: await import('../../src/pages/papers/template-words.ts'),
    plan: await import('../../src/verdict/sheet-plan.ts'),
    typed: await import('../../src/speech/scale.ts'),
    problems: await import('../../src/speech/problems.ts'),
    failures: await import('../../src/speech/failures.ts'),
    link: await import('../../src/state/share/link.ts'),
    collection: await import('../../src/state/share/file.ts'),
    when: await import('../../src/state/library/when.ts'),
  };
}
type House = Awaited<ReturnType<typeof loadHouse>>;

const { english, german } = await inBothLanguages(loadHouse);

/** The same build in both houses: presets have names in the language of the page. */
const builds = () => english.presets.PRESETS.map(({ id, build }) => [id, build] as const);

const ways = () =>
  [
    ['German in English', german, english],
    ['English in German', english, german],
  ] as const;

describe('numbers', () => {
  test('have a decimal comma in German where people read them', () => {
    expect(english.quantity.formatQuantity(-0.291, 'mm', 2, 'metric')).toBe('−0.29\u00a0mm');
    expect(german.quantity.formatQuantity(-0.291, 'mm', 2, 'metric')).toBe('−0,29\u00a0mm');
    expect(german.quantity.formatQuantity(0.291, 'mm', 2, 'inch')).toBe('0,011\u00a0in');
  });

  test.each(['0.58', '0,58', ' 0.58 mm', '0,58mm', '.58', ',58', '58e', '1.2.3', '1,2,3', '0,5.8', ''])(
    'typed as “%s” mean the same in both languages',
    (text) => {
      const read = ({ typed, parameters }: House) => {
        const kerf = parameters.parameterById('kerfMm');
        return kerf.kind === 'number' ? typed.parseTyped(text, kerf, 'metric') : null;
      };
      expect(read(german)).toBe(read(english));
      expect(read(english)).toBe(/^\D*0?[.,]58(\s*mm)?$/.test(text) ? 0.58 : undefined);
    },
  );

  test('shown in German can be typed as they are shown', () => {
    const kerf = german.parameters.parameterById('kerfMm');
    if (kerf.kind !== 'number') throw new Error('the kerf is a number');
    for (const system of ['metric', 'inch'] as const) {
      const shown = german.typed.quantityText(0.585, german.typed.displayScale(kerf, system), system);
      expect(shown).toMatch(/^0,\d+\u00a0(mm|in)$/);
      // A thousandth of a millimetre, and half of the last digit shown in inches.
      expect(Math.abs(german.typed.parseTyped(shown, kerf, system)! - 0.585)).toBeLessThan(
        system === 'metric' ? 1e-9 : 0.5 * 25.4e-4,
      );
    }
  });

  test('in refusals are written as the language writes them, in the units of the page', () => {
    const refused = german.schema.checkBuild({ ...builds()[0][1], kerfMm: 9 });
    if (refused.ok) throw new Error('a kerf of 9 mm is refused');
    expect(german.problems.problemTexts(refused.problems, 'metric').join(' ')).toContain('0,3');
    expect(german.problems.problemTexts(refused.problems, 'inch').join(' ')).toMatch(/0,0119 bis 0,0472\sin/);
  });
});

describe('files', () => {
  test('of a project, written in one language, are read in the other', () => {
    for (const [, build] of builds()) {
      expect(german.file.writeProject(build)).toBe(english.file.writeProject(build));
      for (const [, from, to] of ways())
        expect(to.file.readProject(from.file.writeProject(build))).toEqual({ ok: true, build });
    }
  });

  test('of several builds likewise', () => {
    const collected = builds().map(([, build]) => ({ build, changedAt: 1_790_000_000_000 }));
    expect(german.collection.writeCollection(collected)).toBe(english.collection.writeCollection(collected));
    for (const [, from, to] of ways()) {
      const read = to.collection.readCollection(from.collection.writeCollection(collected));
      expect(read.ok && read.builds).toEqual(collected);
    }
  });

  test('of the bench log likewise', () => {
    for (const system of ['metric', 'inch'] as const) {
      expect(german.log.writeLog([ENTRY], system)).toBe(english.log.writeLog([ENTRY], system));
      for (const [, from, to] of ways()) expect(to.readLog.readLog(from.log.writeLog([ENTRY])).ok).toBe(true);
    }
  });

  test('presets differ in nothing but their names', () => {
    const named = ({ presets, names }: House) => presets.PRESETS.map((preset) => names.presetBuild(preset));
    const nameless = (house: House) => named(house).map((build) => ({ ...build, name: '' }));
    expect(nameless(german)).toEqual(nameless(english));
    for (const [index, { name }] of named(german).entries()) expect(name).not.toBe(named(english)[index].name);
  });
});

test('links written in one language are read in the other', () => {
  const shared = {
    builds: [builds()[0][1], builds()[3][1]],
    page: { from: 'Werkstatt', to: '', note: '½ mm', advised: 1 },
  };
  expect(german.link.writeLink(shared)).toEqual(english.link.writeLink(shared));
  for (const [, from, to] of ways()) {
    const link = from.link.writeLink(shared);
    expect(link.ok && to.link.readLink(link.text)).toEqual({ ok: true, shared });
  }
});

test('tables as CSV are the same files in both languages', () => {
  let rows = 0;
  const files = (house: House, build: ReturnType<typeof builds>[number][1]) => {
    const solution = { build, prediction: house.predict.createPredictor().predict(build) };
    return house.tables.planTables(house.plan.sheetPlan(solution).plan).map((table) => {
      rows += table.rows.length;
      return house.csv.csvText(table);
    });
  };
  for (const [, build] of builds()) expect(files(german, build)).toEqual(files(english, build));
  expect(rows).toBeGreaterThan(500);
});

test('the cutting template is the same drawing in both languages', () => {
  for (const [, build] of builds()) {
    const drawing = ({ template, templateWords }: House) =>
      template.templateSvg(build, templateWords.templateWords(build, 'metric', 'x', 'HGKDRT-BXQ-PLM'));
    const bare = (svg: string) => svg.replace(/>[^<]*</g, '><');
    expect(bare(drawing(german))).toBe(bare(drawing(english)));
    expect(drawing(german)).not.toBe(drawing(english));
  }
});

test('dates are written as the language writes them', () => {
  const at = Date.UTC(2026, 4, 7, 12);
  const later = at + 1e9;
  expect(english.when.formatWhen(at, later)).toBe('7 May 2026');
  expect(german.when.formatWhen(at, later)).toBe('7. Mai 2026');
});

test('a worker answers the same in every language: numbers and ids', async () => {
  const answers = async (house: House) => {
    const build = { ...builds()[0][1], job: 'refret' as const };
    const predictor = house.predict.createPredictor();
    const estimator = house.estimate.createEstimator(predictor);
    const goal = { reliefMm: 0.1, when: 'settled' as const, rodPercent: 0 };
    const options = { samples: 100 };
    const wish = { method: 'press' as const, goal, stretches: 2, choices: [{ tangWidthMm: 0.5, studWidthMm: 0.75 }] };
    return {
      prediction: predictor.predict(build),
      stress: predictor.stress(build, 7),
      uncertainty: await estimator.estimate(build, options),
      wanted: await house.answers.answerWanted(predictor, estimator, build, goal, options),
      tangs: await house.refret.answerTangs(predictor, estimator, build, wish, options),
    };
  };
  const plain = (value: unknown) =>
    JSON.stringify(value, (_key, part: unknown) => (ArrayBuffer.isView(part) ? [...(part as Float64Array)] : part));
  const said = plain(await answers(german));
  expect(said.length).toBeGreaterThan(10_000);
  expect(said === plain(await answers(english))).toBe(true);
});

test('what a worker refuses is data, which the page says in its language and units', async () => {
  const refusedBy = async ({ predict, estimate, answers, failures }: House) => {
    const predictor = predict.createPredictor();
    const goal = { reliefMm: 9, when: 'settled' as const, rodPercent: 0 };
    const asked = answers.answerWanted(predictor, estimate.createEstimator(predictor), builds()[0][1], goal);
    return failures.failureOf(await asked.catch((error: unknown) => error));
  };
  const failure = await refusedBy(english);
  expect(failure).toEqual({ code: 'relief-beyond-range', reliefMm: 9, leastMm: -1, mostMm: 3 });
  expect(await refusedBy(german)).toEqual(failure);
  expect(english.failures.failureText(failure, 'metric')).toBe(
    'the relief you want is 9.00\u00a0mm; it must be −1.00\u00a0mm to 3.00\u00a0mm',
  );
  expect(german.failures.failureText(failure, 'inch')).toBe(
    'die gewünschte Halskrümmung ist 0,354\u00a0in; möglich ist −0,039\u00a0in bis 0,118\u00a0in',
  );
});
