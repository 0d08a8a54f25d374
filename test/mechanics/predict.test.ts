/** Whole predictions: what must come out whatever the numbers are. What makers see is in the table of reference values. */
import { ownWoodsWith } from '../../src/neck/materials/own-woods.ts';
import { describe, expect, it } from 'vitest';
import { defaultBuild, type Build } from '../../src/neck/build.ts';
import { PRESETS } from '../../src/neck/presets.ts';
import { fretPositionsMm, tangLengthMm } from '../../src/neck/neck-shape.ts';
import { LatestCache } from '../../src/mechanics/cache.ts';
import { mismatchStrain } from '../../src/mechanics/climate.ts';
import { EMPTY } from '../../src/mechanics/description.ts';
import { extractionForceN, GLUE_SHEAR_MPA, seatingForceN } from '../../src/mechanics/seating/forces.ts';
import { createPredictor, fillingOf } from '../../src/mechanics/predict.ts';
import { METHODS } from '../../src/mechanics/prediction-types.ts';
import { AS_STATED } from '../../src/mechanics/deviations.ts';
import { describeNeck } from '../../src/mechanics/describe.ts';
import {
  combineLine,
  combineOpening,
  createNeckModel,
  solveInfluence,
  stringCases,
  type Combination,
} from '../../src/mechanics/influence.ts';
import { reliefFromDepth } from '../../src/mechanics/relief.ts';
import { seatedAt } from '../../src/mechanics/seating/contact.ts';
import { seat } from '../../src/mechanics/seating/seating.ts';
import { straightedgeOf } from '../../src/mechanics/states.ts';
import { contactsOf, tangLengthsMm } from '../../src/mechanics/seating/wire-contact.ts';
import { expectNear, expectNothing, ROUNDING } from '../expect-near.ts';

const predictor = createPredictor();
const predict = (change: Partial<Build> = {}) => predictor.predict({ ...defaultBuild(), ...change });

describe('the methods', () => {
  it.each(PRESETS.map((preset) => [preset.id, preset.build] as const))('%s: press, glue, both', (_id, build) => {
    const { press, glue, both } = predictor.predict(build).methods;
    // Pressing bows it back, and a glue fit does not; glue holds the neck stiffer under its strings.
    expect(press.fretted.extremeMm).toBeLessThan(0);
    expect(both.fretted.extremeMm).toBe(press.fretted.extremeMm);
    expect(glue.fretted.extremeMm).toBe(0);
    expect(glue.wedgeForceN.every((force) => force === 0)).toBe(true);
    expect(press.extraFlexibility).toBeGreaterThan(glue.extraFlexibility);
    expect(both.strung.extremeMm).toBeLessThan(glue.strung.extremeMm);
    // Glued in as well, a fret comes out harder than pressed alone.
    press.pullOutForceN.forEach((force, i) => expect(both.pullOutForceN[i]).toBeGreaterThan(force));
  });

  it('a glue fit is the neck of unsawn slots but for the filler: a few per cent', () => {
    const { glue, press } = predict().methods;
    expect(Math.abs(glue.extraFlexibility)).toBeLessThan(0.05);
    expect(press.extraFlexibility).toBeGreaterThan(0.2);
  });

  it('no glue at all is a pressed neck under strings', () => {
    const { both, press } = predict({ glueReachPercent: 0 }).methods;
    expect(fillingOf({ ...defaultBuild(), glueReachPercent: 0 }, 'both')).toBe(EMPTY);
    // Without glue the slots stay empty, and the studs answer as springs.
    expect(both.basis).toEqual(press.basis);
    expect(both.wedgeForceStrungN).toEqual(press.wedgeForceStrungN);
    expect(both.rodTurnsAtLimit).toBe(press.rodTurnsAtLimit);
  });

  it('frets that do not bite do nothing until the strings go on', () => {
    const { press } = predict({ kerfMm: 0.8 }).methods;
    expect(press.fretted.extremeMm).toBe(0);
    expect(press.strung.extremeMm).toBeGreaterThan(0);
    expect(press.biteMm.every((bite) => bite === 0)).toBe(true);
  });
});

describe('a prediction put together by hand from the finite-element core', () => {
  const build = defaultBuild();
  const prediction = predictor.predict(build);
  const neck = describeNeck(build, AS_STATED);
  const model = createNeckModel(neck);
  const empty = solveInfluence(model, EMPTY);
  const edge = straightedgeOf(build);
  const reliefOf = (depth: Float64Array) => reliefFromDepth(empty.stationXMm, depth, edge.fromXMm, edge.toXMm);
  const flexibility = empty.openingMm.slice(0, 22 * 22);
  const contacts = contactsOf(build, AS_STATED);
  const seated = seat(contacts, flexibility);
  const expectLine = (actual: Float64Array, expected: Float64Array) => {
    const most = Math.max(...expected.map(Math.abs));
    actual.forEach((value, i) => expectNothing(value - expected[i], most, 1e-9, 'the same sums'));
  };
  /** Strings from 1.7 mm over the nut to 3.1 mm over fret 12, half the scale away. */
  const strings = stringCases(prediction.stringPullN, 1.7, (3.1 - 1.7) / 324)!;
  const rod = { rodCouple: 2000 * 6 };
  /** What cases add when the studs of the seated frets answer as springs, after some days. */
  const withStuds = (cases: NonNullable<Combination['cases']>) => {
    const other = combineOpening(empty, { cases });
    // Three days at a = 0.5 leave 1/(1 + 0.5·(3/90)^0.21) of the force; what has gone leaves the slots as far open.
    const left = 1 / (1 + 0.5 * (3 / 90) ** 0.21);
    const rested = seated.forceN.map((force) => left * force);
    const gone = combineOpening(empty, { wedgeN: seated.forceN.map((force, i) => force - rested[i]) });
    const { forceN } = seat(
      contacts,
      flexibility,
      other.map((opening, i) => opening + gone[i]),
      contacts.map((contact, i) => seatedAt(contact, seated.openingMm[i], left)),
    );
    const change = forceN.map((force, i) => force - rested[i]);
    return { change, relief: reliefOf(combineLine(empty, { cases, wedgeN: change })) };
  };

  it('frets: each wedge force times its unit line', () => {
    expect(prediction.methods.press.wedgeForceN).toEqual([...seated.forceN]);
    const wedgeN = seated.forceN.map((force, i) => (i === 6 ? force : 0));
    const stations = prediction.stationXMm.length;
    const seventh = prediction.methods.press.basis.wedgeMm.slice(6 * stations, 7 * stations);
    expectLine(seventh, reliefOf(combineLine(empty, { wedgeN })));
  });

  it('strings on filled slots, on the line from nut to bridge', () => {
    const filled = solveInfluence(model, fillingOf(build, 'glue'), 'named');
    expectLine(prediction.methods.glue.basis.stringsMm, reliefOf(combineLine(filled, { cases: strings })));
  });

  it('strings on a pressed neck: they close the slots, and the studs take up along a stiff line what time has let go', () => {
    const { change, relief } = withStuds(strings);
    expectLine(prediction.methods.press.basis.stringsMm, relief);
    change.forEach((force, i) =>
      expectNear(prediction.methods.press.wedgeForceStrungN[i], seated.forceN[i] + force, 1e-9, 'the same root'),
    );
    expect(change[8]).toBeGreaterThan(0);
    // Strung at once they go on along the curve of first loading, which is softer.
    const atOnce = createPredictor().predict({ ...build, restDays: 0 }).methods.press;
    expect(atOnce.wedgeForceStrungN[8] - seated.forceN[8]).toBeLessThan(0.5 * change[8]);
    expect(atOnce.extraFlexibility).toBeGreaterThan(prediction.methods.press.extraFlexibility);
  });

  it('a rod on a pressed neck: it opens the slots, and the studs let go along the stiff line', () => {
    const { change, relief } = withStuds(rod);
    expectLine(prediction.methods.press.basis.rodMm, relief);
    expect(change[8]).toBeLessThan(0);
    // Along the curve they would let go less: the two are told apart here.
    const alongCurve = seat(contacts, flexibility, combineOpening(empty, { cases: rod })).forceN;
    expect(change[8]).toBeLessThan(1.5 * (alongCurve[8] - seated.forceN[8]));
  });
});

describe('what fills a slot', () => {
  it('metal and glue in series over the kerf of the mesh, worked by hand', () => {
    // Kerf 0.76 for a glue fit: gap 0.26 of 2500 MPa, body 0.5 of 124 000: 0.6/(1.04e-4 + 4.032258e-6) = 5553.897 MPa
    const filling = fillingOf({ ...defaultBuild(), glueReachPercent: 80 }, 'glue');
    expect(filling).toMatchObject({ kind: 'filled', reach: 0.8 });
    expectNear((filling as { modulusMPa: number }).modulusMPa, 5553.897, 2e-6, 'worked by hand to seven digits');
    expect(fillingOf(defaultBuild(), 'press')).toBe(EMPTY);
    // A body wider than its kerf leaves no gap for glue.
    expectNear(
      (fillingOf({ ...defaultBuild(), tangWidthMm: 0.6, kerfMm: 0.58 }, 'both') as { modulusMPa: number }).modulusMPa,
      124_000,
      1e-9,
      'metal alone',
    );
  });
});

describe('kerf and seating', () => {
  it('a wider kerf never bows more and never takes more force to seat', () => {
    const kerfs = [0.48, 0.5, 0.52, 0.55, 0.58, 0.62, 0.68, 0.74, 0.8];
    const methods = kerfs.map((kerfMm) => predict({ kerfMm }).methods.press);
    for (let k = 1; k < kerfs.length; k += 1) {
      expect(methods[k].fretted.extremeMm).toBeGreaterThanOrEqual(methods[k - 1].fretted.extremeMm);
      expect(methods[k].seatingForceN[10]).toBeLessThanOrEqual(methods[k - 1].seatingForceN[10]);
    }
    // A kerf a few hundredths narrower than the tang's body ruins a neck.
    expect(predict({ kerfMm: 0.46 }).methods.press.fretted.extremeMm).toBeLessThan(
      1.8 * predict({ kerfMm: 0.55 }).methods.press.fretted.extremeMm,
    );
  });

  it('forces to seat and to pull, worked by hand', () => {
    const build = {
      ...defaultBuild(),
      boardWood: 'own',
      ownWoods: ownWoodsWith({ densityKgM3: 1000 }),
      widthNutMm: 50,
      widthLastFretMm: 50,
      studAreaMm2: 0.5,
      studPitchMm: 2.5,
      friction: 0.4,
      slotDepthMm: 3,
      glueReachPercent: 50,
      biteFactor: 1.2,
    } as const;
    const inputs = {
      build,
      method: 'both' as const,
      contacts: contactsOf(build, AS_STATED),
      fretXMm: fretPositionsMm(build.scaleLengthMm, 22),
      wedgeForceN: new Float64Array(22).fill(600),
      biteMm: Array.from({ length: 22 }, () => 0.08),
      tangLengthMm: tangLengthsMm(build),
    };
    // 2·0.4·600 + 2·20·1.2·81.34573·0.08·0.797885 = 480 + 1.2·207.6944
    expectNear(seatingForceN(inputs)[3], 729.23328, 1e-6, 'worked by hand to seven digits');
    // Half the slot of 3 mm: 480 + 3 MPa·2·1.5 mm·50 mm = 480 + 450. From two thirds on the tang of 2 mm stands in glue.
    const reaching = (glueReachPercent: number) =>
      extractionForceN({ ...inputs, build: { ...build, glueReachPercent } });
    expectNear(reaching(50)[3], 930, ROUNDING, 'worked by hand');
    expectNear(reaching(0)[3], 480, ROUNDING, 'no glue');
    expectNear(reaching(1)[3], 489, ROUNDING, 'worked by hand: 0.03 mm of glue');
    for (const reach of [67, 100]) expectNear(reaching(reach)[3], 1080, ROUNDING, 'all of the tang');
    // A flat cut 3 mm deep at the crown of a radius of 200 mm, z = 25 mm: 1.5687 mm less deep at the edge. All of it filled,
    // the tang stands 2 mm in glue where the drop is less than 1 mm, |z| < 19.975, and 3 − s beyond: 97.2503 mm²
    // by the midpoint rule.
    const flat = {
      ...build,
      boardShape: 'cylinder',
      radiusNutMm: 200,
      slotBottom: 'flat',
      glueReachPercent: 100,
    } as const;
    expectNear(extractionForceN({ ...inputs, build: flat })[3], 480 + 2 * 3 * 97.2503, 1e-6, 'to six digits');
    expectNear(extractionForceN({ ...inputs, method: 'press' })[3], 480, ROUNDING, 'friction alone');
    expect(GLUE_SHEAR_MPA).toBe(3);
    expectNear(tangLengthMm(build, 100), 50, ROUNDING, 'unbound');
  });
});

describe('scaling', () => {
  it('a stiffer string set never leaves less relief', () => {
    const heavier = (share: number) =>
      defaultBuild().strings.map((string) => ({
        ...string,
        diameterMm: string.diameterMm * share,
        coreMm: string.coreMm * share,
      }));
    const reliefs = [0.9, 1, 1.1, 1.2].map((share) => predict({ strings: heavier(share) }).methods);
    for (let k = 1; k < reliefs.length; k += 1) {
      for (const method of METHODS)
        expect(reliefs[k][method].strung.extremeMm).toBeGreaterThan(reliefs[k - 1][method].strung.extremeMm);
    }
  });

  it('a thicker neck never bows more', () => {
    const necks = [19, 21, 23, 26].map((t) => predict({ thicknessFret1Mm: t, thicknessFret12Mm: t + 2 }).methods);
    for (let k = 1; k < necks.length; k += 1) {
      expect(necks[k].press.fretted.extremeMm).toBeGreaterThan(necks[k - 1].press.fretted.extremeMm);
      expect(necks[k].glue.strung.extremeMm).toBeLessThan(necks[k - 1].glue.strung.extremeMm);
    }
  });

  it('more frets never less back-bow, over one straightedge', () => {
    const bows = [17, 19, 21, 22, 24].map((fretCount) => predict({ fretCount }).methods.press.fretted.extremeMm);
    // The last frets lie over the body and bend hardly anything; they change the taper of the board by nothing.
    for (let k = 1; k < bows.length; k += 1) expect(bows[k]).toBeLessThan(bows[k - 1] * 0.95 + 0.0001);
  });

  it('stiff bars stiffen it, a channel weakens it', () => {
    const bow = (change: Partial<Build>) => predict(change).methods.glue.strung.extremeMm;
    expect(bow({ barCount: 2 })).toBeLessThan(bow({}));
    expect(bow({ channelWidthMm: 0 })).toBeLessThan(bow({}));
    expect(bow({ rodKind: 'none' })).toBeLessThan(bow({}));
  });
});

describe('the predictor', () => {
  it('gives the same answer warm as cold', () => {
    const builds = [{}, { kerfMm: 0.55 }, { thicknessFret12Mm: 24 }, { method: 'both' as const }, {}];
    const warm = builds.map((change) => predict(change));
    const cold = builds.map((change) => createPredictor().predict({ ...defaultBuild(), ...change }));
    expect(warm).toEqual(cold);
  });

  it('is plain data that crosses to a worker', () => {
    const prediction = predict();
    expect(structuredClone(prediction)).toEqual(prediction);
  });

  it('keeps the latest few', () => {
    const cache = new LatestCache<string>(2);
    const made: string[] = [];
    const get = (key: string) => cache.get(key, () => (made.push(key), key));
    ['a', 'b', 'a', 'c', 'a', 'b'].forEach((key) => expect(get(key)).toBe(key));
    // "a" was used after "b" when "c" came: "b" went.
    expect(made).toEqual(['a', 'b', 'c', 'b']);
  });
});

describe('moisture', () => {
  it('only the difference counts: 0.005 % for each per cent', () => {
    // Wood Handbook ch. 4: 0.1–0.2 % from green to oven-dry over 30 % gives 0.003–0.007 % per 1 %.
    expectNear(mismatchStrain(3, 1), 1e-4, 1e-9, 'a product');
    expect(mismatchStrain(2, 2)).toBe(0);
    expect(mismatchStrain(1, 0)).toBeGreaterThanOrEqual(3e-5);
    expect(mismatchStrain(1, 0)).toBeLessThanOrEqual(7e-5);
  });
});
