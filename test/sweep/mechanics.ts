/** Laws that the prediction of every build obeys. */
import { blankIds, BLANK_PARTS } from '../../src/neck/blanks.ts';
import type { Build } from '../../src/neck/build.ts';
import { glueStiffness } from '../../src/neck/glues.ts';
import { checkBuild } from '../../src/neck/schema.ts';
import { contactForce } from '../../src/mechanics/seating/contact.ts';
import { describeNeck } from '../../src/mechanics/describe.ts';
import { AS_STATED } from '../../src/mechanics/deviations.ts';
import { createNeckModel } from '../../src/mechanics/influence.ts';
import { createPredictor } from '../../src/mechanics/predict.ts';
import { METHODS, type Method, type Prediction } from '../../src/mechanics/prediction-types.ts';
import { predictionReport } from '../../src/verdict/report.ts';
import { REPORT_SHAPE } from '../../src/verdict/report-shape.ts';
import { sampleLine } from '../../src/mechanics/relief.ts';
import { lineAt } from '../../src/mechanics/states.ts';
import { contactsOf } from '../../src/mechanics/seating/wire-contact.ts';
import { momentOf, railStops } from '../../src/verdict/rail.ts';
import { forcesOf } from '../mechanics/load-cases.ts';
import { hold, holdFinite, largest, type Invariant, type Subject } from './invariant.ts';

const ROUNDING = 1e-9;
/** The library settles its seating forces to this, N (mechanics/seating.ts). */
const SETTLED_N = 1e-6;

/** Stations under the straightedge: the first and the last index. */
function span(prediction: Prediction): readonly [number, number] {
  const from = prediction.fretXMm[prediction.straightedge.fromFret - 1];
  const to = prediction.fretXMm[prediction.straightedge.toFret - 1];
  return [
    prediction.stationXMm.findIndex((x) => x >= from - ROUNDING),
    prediction.stationXMm.findLastIndex((x) => x <= to + ROUNDING),
  ];
}

/** The largest value of a line under the straightedge, with its sign turned so that the law is “never above”. */
function worst(prediction: Prediction, line: ArrayLike<number>, sign: 1 | -1): number {
  const [from, to] = span(prediction);
  let most = -Infinity;
  for (let i = from; i <= to; i += 1) most = Math.max(most, sign * line[i]);
  return most;
}

/** The most that a row stands below a line through itself at two places, between them, mm: what it bends forwards there. */
function forwardsBetween({ stationXMm }: Prediction, row: ArrayLike<number>, fromMm: number, toMm: number): number {
  const [a, b] = [fromMm, toMm].map((x) => sampleLine(stationXMm, row, x));
  const between = Array.from(stationXMm, (x, k) => row[k] - a - ((b - a) * (x - fromMm)) / (toMm - fromMm));
  return Math.max(...between.filter((_, k) => stationXMm[k] >= fromMm && stationXMm[k] <= toMm));
}

const sum = (values: ArrayLike<number>): number => Array.from(values).reduce((total, value) => total + value, 0);

/** The prediction of a changed build, or undefined when that build cannot be. */
function changed({ build, predictor }: Subject, change: Partial<Build>): Prediction | undefined {
  const checked = checkBuild({ ...build, ...change });
  return checked.ok ? predictor.predict(checked.build) : undefined;
}

const forceOf = (prediction: Prediction, method: Method = 'press') => sum(prediction.methods[method].wedgeForceN);

export const SIGNS: readonly Invariant[] = [
  { name: 'every number is finite', every: 1, check: ({ prediction }) => holdFinite(prediction, 'prediction') },
  {
    name: 'forces push, bites and openings are no less than nothing',
    every: 1,
    check: ({ build, prediction }) => {
      for (const method of METHODS) {
        const of = prediction.methods[method];
        for (const [name, values] of Object.entries({
          wedgeForceN: of.wedgeForceN,
          wedgeForceStrungN: of.wedgeForceStrungN,
          biteMm: of.biteMm,
          wallPressureShare: of.wallPressureShare,
          seatingForceN: of.seatingForceN,
          pullOutForceN: of.pullOutForceN,
        }))
          hold(
            values.every((value) => value >= -SETTLED_N),
            () => `${method} ${name}: ${Math.min(...values)}`,
          );
        // A slot is opened by its own wedge far more than its neighbours close it: some 5 % where it has none of its own. Where
        // slots stand nearer than twice their depth, the two beside it close it by about as much as it opens itself.
        const { fretXMm } = prediction;
        const nearest = Math.min(...fretXMm.slice(1).map((x, index) => x - fretXMm[index]));
        const share = nearest < 2 * build.slotDepthMm ? 0.5 : 0.1;
        const least = Math.min(...of.openingMm);
        hold(least >= -share * largest(of.openingMm), () => `${method} openingMm: ${least}`);
        if (method === 'glue') hold(largest(of.wedgeForceN) === 0, () => 'a glue fit wedges');
      }
    },
  },
  {
    name: 'frets bend backwards, strings forwards, a two-way rod backwards',
    every: 1,
    check: ({ build, prediction }) => {
      const stations = prediction.stationXMm.length;
      const { fromFret, toFret } = prediction.straightedge;
      for (const method of METHODS) {
        const { basis } = prediction.methods[method];
        const rows = prediction.fretXMm.map((_, i) => basis.wedgeMm.subarray(i * stations, (i + 1) * stations));
        const all = Float64Array.from(prediction.stationXMm, (_, k) => sum(rows.map((row) => row[k])));
        // Beside a slot the wood itself gives a little: a fiftieth of what is done to the neck as a whole.
        const allowed = (line: ArrayLike<number>) => 0.02 * largest(line) + 1e-12;
        rows.forEach((row, i) => {
          // A wedge lifts the wood at its own slot. Under an end of the straightedge that lifts the edge, and what lies between
          // reads that much lower; so the edge is laid beside that fret, halfway to the next one.
          const xOf = (fret: number) => prediction.fretXMm[fret - 1];
          const from = i + 1 === fromFret ? (xOf(fromFret) + xOf(fromFret + 1)) / 2 : xOf(fromFret);
          const to = i + 1 === toFret ? (xOf(toFret) + xOf(toFret - 1)) / 2 : xOf(toFret);
          const most = forwardsBetween(prediction, row, from, to);
          // A board that was fretted first bows the neck by a third of that, and gives at its own slots all the same. Where the
          // wedge sits on the step to the heel, a neck that hardly bows at all gives a tenth of it there.
          const isUnderAnEnd = i + 1 === fromFret || i + 1 === toFret;
          const limit = (prediction.frettedBoard ? 3 : 1) * (isUnderAnEnd ? 5 : 1) * allowed(all);
          hold(
            most <= limit,
            () => `${method} fret ${i + 1} bends forwards by ${most} mm, all of them ${largest(all)}`,
          );
        });
        // The two under the ends lift the edge by as much as the wood gives there, and all between reads that much lower;
        // where a thick neck bows little, that shows between the first two frets. So the frets between the ends bend
        // backwards everywhere, and all of them together at the tops of frets that are pressed alike, which are lifted alike.
        const between = Float64Array.from(prediction.stationXMm, (_, k) =>
          sum(rows.filter((__, i) => i + 1 !== fromFret && i + 1 !== toFret).map((row) => row[k])),
        );
        const inner = worst(prediction, between, 1);
        hold(inner <= allowed(all), () => `${method}: frets between the ends together bend forwards by ${inner} mm`);
        if (build.regions.length === 0)
          for (let fret = fromFret; fret <= toFret; fret += 1) {
            const top = sampleLine(prediction.stationXMm, all, prediction.fretXMm[fret - 1]);
            hold(top <= allowed(all), () => `${method}: all frets together bend fret ${fret} forwards by ${top} mm`);
          }
        const strings = worst(prediction, basis.stringsMm, -1);
        hold(strings <= allowed(basis.stringsMm), () => `${method} strings bend backwards by ${strings} mm`);
        if (prediction.rod.kind === 'two-way') {
          const rod = worst(prediction, basis.rodMm, 1);
          hold(rod <= allowed(basis.rodMm), () => `${method} rod bends forwards by ${rod} mm`);
        }
      }
    },
  },
];

export const EQUILIBRIUM: readonly Invariant[] = [
  {
    name: 'each tang is in equilibrium with its slot',
    every: 1,
    check: ({ build, prediction }) => {
      // Off the clamps a fretted board gives way, and its tangs with it along what they have been through: see board-first.test.ts.
      if (prediction.frettedBoard) return;
      const { wedgeForceN, openingMm } = prediction.methods.press;
      contactsOf(build, AS_STATED).forEach((contact, i) => {
        const { forceN } = contactForce(contact, openingMm[i]);
        // The forces are settled to 1e-8 N each and at most 1e-6 N.
        hold(
          Math.abs(forceN - wedgeForceN[i]) <= 1e-6 + ROUNDING * forceN,
          () => `fret ${i + 1}: contact ${forceN} N, neck ${wedgeForceN[i]} N`,
        );
      });
    },
  },
  {
    name: 'every load case is in equilibrium by itself',
    every: 20,
    check: ({ build }) => {
      const { assembly, loads } = createNeckModel(describeNeck(build, AS_STATED));
      const { mesh, shape } = assembly;
      const nodes = mesh.nodeYMm.length;
      const rows = nodes / mesh.columnXMm.length;
      for (let column = 0; column < loads.cases.length; column += 1) {
        const force = forcesOf(loads, column, shape.order);
        let [along, across, turning, size, arm] = [0, 0, 0, 0, 0];
        for (let node = 0; node < nodes; node += 1) {
          const x = mesh.columnXMm[Math.floor(node / rows)];
          const y = mesh.nodeYMm[node];
          const fx = force[2 * node];
          const fy = force[2 * node + 1];
          along += fx;
          across += fy;
          turning += fy * x - fx * y;
          size += Math.abs(fx) + Math.abs(fy);
          arm += Math.abs(fy * x) + Math.abs(fx * y);
        }
        // Sums of thousands of terms in double precision.
        hold(Math.abs(along) <= 1e-9 * size, () => `load case ${column}: ${along} N along`);
        hold(Math.abs(across) <= 1e-9 * size, () => `load case ${column}: ${across} N across`);
        hold(Math.abs(turning) <= 1e-8 * arm, () => `load case ${column}: ${turning} N·mm`);
      }
    },
  },
];

export const STATES: readonly Invariant[] = [
  {
    name: 'every stop of the rail is a line that ends at the straightedge',
    every: 4,
    check: ({ build, prediction }) => {
      const [from, to] = span(prediction);
      const ends = [prediction.straightedge.fromFret, prediction.straightedge.toFret];
      for (const stop of railStops(build)) {
        const line = lineAt(prediction, build.method, momentOf({ build, prediction }, stop));
        holdFinite(line, JSON.stringify(stop));
        for (const fret of ends) {
          const at = sampleLine(prediction.stationXMm, line.reliefMm, prediction.fretXMm[fret - 1]);
          // Rounding of sums of basis lines; what was measured on an old neck has its corners between the stations.
          const relative = build.job === 'refret' ? 1e-4 : 1e-8;
          hold(
            Math.abs(at) <= relative * (1e-3 + largest(line.reliefMm)),
            () => `${JSON.stringify(stop)}: at fret ${fret}, under the end of the straightedge, ${at} mm`,
          );
        }
        let most = 0;
        for (let i = from; i <= to; i += 1) most = Math.max(most, Math.abs(line.reliefMm[i]));
        hold(
          Math.abs(line.extremeMm) >= most * (1 - ROUNDING) && Math.abs(line.extremeMm) <= largest(line.reliefMm),
          () => `${JSON.stringify(stop)}: extreme ${line.extremeMm}, the line goes to ${most}`,
        );
      }
    },
  },
  {
    name: 'each further fret bows a new neck further back',
    every: 4,
    check: ({ build, prediction }) => {
      // A board that is fretted first is never on the neck with some of its frets.
      if (build.job === 'refret' || prediction.frettedBoard) return;
      const all = prediction.fretXMm.map((_, index) => index + 1);
      const whole = Math.abs(prediction.methods.press.fretted.extremeMm);
      let before = 0;
      for (let count = 1; count <= all.length; count += 1) {
        const moment = { fretsIn: all.slice(0, count), strung: false, days: 0, rodPercent: 0 };
        const now = lineAt(prediction, 'press', moment).extremeMm;
        // The first fret stands under the end of the straightedge and only lifts it; so does that at the body joint.
        if (count > 1)
          hold(now <= before + 0.16 * whole + ROUNDING, () => `fret ${count}: from ${before} to ${now} mm`);
        before = now;
      }
    },
  },
  {
    name: 'a wedge fades and creep grows with time',
    every: 4,
    check: ({ prediction }) => {
      const days = [0, 1, 7, 30, 90, 365, 3650];
      const at = (method: Method) =>
        days.map((day) =>
          lineAt({ ...prediction, startingMm: new Float64Array(prediction.startingMm.length) }, method, {
            fretsIn: [],
            strung: true,
            days: day,
            rodPercent: 0,
            ofWood: true,
          }),
        );
      // With no fret in and no climate only the strings act, and they only pull further.
      if (largest(prediction.methods.glue.basis.climateMm) > 0) return;
      for (const method of METHODS) {
        const extremes = at(method).map(({ extremeMm }) => extremeMm);
        hold(
          extremes.every((value, i) => i === 0 || value >= extremes[i - 1] - ROUNDING),
          () => `${method}: ${extremes.join(', ')} mm`,
        );
      }
    },
  },
];

export const CHANGES: readonly Invariant[] = [
  {
    name: 'a wider kerf wedges less',
    every: 10,
    check: (subject) => {
      const wider = changed(subject, { kerfMm: subject.build.kerfMm + 0.02 });
      if (!wider) return;
      const [before, after] = [forceOf(subject.prediction), forceOf(wider)];
      hold(after <= before * (1 + ROUNDING) + 1e-6, () => `from ${before} N to ${after} N`);
      // Less and not the same, where no region has a kerf of its own and neither studs nor walls have given all they can.
      const { biteMm, wallPressureShare } = subject.prediction.methods.press;
      const spent = largest(biteMm) > 5 * subject.build.studSoftnessMm || largest(wallPressureShare) >= 1;
      if (subject.build.regions.length === 0 && before > 1 && !spent)
        hold(after < before, () => `stays at ${before} N though the kerf grew`);
    },
  },
  {
    name: 'a higher bite factor wedges more',
    every: 20,
    check: (subject) => {
      const harder = changed(subject, { biteFactor: subject.build.biteFactor * 1.2 });
      if (!harder) return;
      const [before, after] = [forceOf(subject.prediction), forceOf(harder)];
      hold(after >= before * (1 - ROUNDING) - 1e-6, () => `from ${before} N to ${after} N`);
    },
  },
  {
    name: 'a thicker neck bows less, under its strings and from its frets',
    every: 10,
    check: (subject) => {
      const { build, prediction } = subject;
      const thicker = changed(subject, {
        thicknessFret1Mm: build.thicknessFret1Mm + 1,
        thicknessFret12Mm: build.thicknessFret12Mm + 1,
      });
      if (!thicker) return;
      for (const method of METHODS) {
        const [before, after] = [prediction, thicker].map((of) => largest(of.methods[method].basis.stringsMm));
        hold(after < before * (1 + 1e-3), () => `${method}: strings from ${before} mm to ${after} mm`);
      }
      if (build.job === 'refret') return;
      const [before, after] = [prediction, thicker].map((of) => -of.methods.press.fretted.extremeMm);
      hold(after <= before * (1 + 1e-3) + ROUNDING, () => `frets from ${before} mm to ${after} mm`);
    },
  },
  {
    name: 'string lines grow in proportion to the pull where nothing slips',
    every: 20,
    check: (subject) => {
      const { build, prediction } = subject;
      const higher = changed(subject, {
        strings: build.strings.map((string) => ({ ...string, pitch: string.pitch + 1 })),
      });
      if (!higher) return;
      // Twelve-tone equal temperament: a semitone is 2^(1/12) in frequency, so 2^(1/6) in tension.
      const ratio = higher.stringPullN / prediction.stringPullN;
      hold(Math.abs(ratio / 2 ** (1 / 6) - 1) < ROUNDING, () => `a semitone pulls ${ratio} times as much`);
      // Studs that hold beside the glue are springs that grip less as the slot opens.
      const { wedgeForceN, wedgeForceStrungN } = prediction.methods.both;
      const yields = wedgeForceStrungN.some((force, i) => force !== wedgeForceN[i]);
      const methods = yields ? (['glue'] as const) : (['glue', 'both'] as const);
      for (const method of methods) {
        const [one, other] = [prediction, higher].map((of) => of.methods[method].basis.stringsMm);
        const scale = largest(other);
        one.forEach((value, i) =>
          hold(
            Math.abs(value * ratio - other[i]) <= 1e-8 * scale,
            () => `${method} station ${i}: ${value} mm and ${other[i]} mm`,
          ),
        );
      }
    },
  },
  {
    name: 'softer glue leaves a neck that gives no less under its strings',
    every: 20,
    check: (subject) => {
      const { build, prediction } = subject;
      if (build.glueReachPercent === 0) return;
      const softer = changed(subject, { glueStiffness: 'own', glueModulusMPa: glueStiffness(build).modulusMPa / 2 });
      if (!softer) return;
      const [before, after] = [prediction, softer].map((of) => of.methods.glue.extraFlexibility);
      hold(after >= before - ROUNDING, () => `from ${before} to ${after} more than unsawn`);
    },
  },
  {
    name: 'one fret more on the board bows it no less',
    every: 20,
    check: (subject) => {
      const { build, prediction } = subject;
      if (build.job === 'refret' || build.startingReliefMm.length > 0) return;
      const more = changed(subject, { fretCount: build.fretCount + 1 });
      if (!more) return;
      const [before, after] = [prediction, more].map((of) => -of.methods.press.fretted.extremeMm);
      // The mesh, the taper and the cone all end at the last fret, so the frets before it move a little too.
      hold(after >= 0.97 * before - 1e-6, () => `from ${before} mm to ${after} mm with fret ${build.fretCount + 1}`);
    },
  },
];

export const REPEATS: readonly Invariant[] = [
  {
    name: 'kept meshes give what fresh ones give',
    every: 25,
    check: ({ build, prediction }) => {
      const fresh = createPredictor().predict(build);
      for (const method of METHODS) {
        const [kept, anew] = [prediction, fresh].map((of) => of.methods[method].settled.reliefMm);
        hold(
          kept.every((value, i) => value === anew[i]),
          () => `${method}: the settled line differs`,
        );
      }
    },
  },
  {
    name: 'the prediction is plain data that crosses to the page whole',
    every: 50,
    check: ({ build, prediction }) => {
      const across = structuredClone(prediction);
      hold(
        JSON.stringify(predictionReport({ build, prediction: across })) ===
          JSON.stringify(predictionReport({ build, prediction })),
        () => 'the report differs after the crossing',
      );
      const { error } = REPORT_SHAPE.safeParse(predictionReport({ build, prediction }));
      hold(error === undefined, () => `the report is not of its shape: ${error?.message}`);
    },
  },
  {
    name: 'a blank that is not wholly measured counts for nothing, whichever number is missing',
    every: 25,
    check: (subject) => {
      for (const part of BLANK_PARTS) {
        const none = changed(subject, { [`${part}BlankTest`]: 'none' })!;
        for (const test of ['tap', 'sag'] as const) {
          const ids = blankIds(part, test);
          const missing = ids[subject.seed % ids.length];
          const open = changed(subject, { [`${part}BlankTest`]: test, [missing]: null })!;
          for (const method of METHODS) {
            const [one, other] = [none, open].map((of) => of.methods[method].settled.reliefMm);
            hold(
              one.every((value, i) => value === other[i]),
              () => `${method}: it counts without ${missing}`,
            );
          }
        }
      }
    },
  },
  {
    name: 'stress around a slot is finite',
    every: 50,
    check: ({ build, predictor, seed }) =>
      holdFinite(predictor.stress(build, 1 + (Math.abs(seed) % build.fretCount)), 'stress'),
  },
];
