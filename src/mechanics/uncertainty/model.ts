/**
 * The linearised model of one build: its basis lines at the frets, and how the amount of each answers to the inputs.
 *
 *   r(x) = b(x) + ω·Σ_g ψ_g·κ·w_g(x) + (1 + φ)·q_s·s(x) + (setting/100)·q_k·k(x) + q_c·c(x)      (less what levelling took)
 *
 * ψ_g  force of the frets of kind g over their stated force: solved for each sample (one-slot.ts)
 * κ    what a unit wedge bends the neck, q_s q_k q_c: what strings, rod and climate do; over their stated amount: answer.ts
 * ω φ  relaxation and creep with the sample's own constants (time.ts), exact
 *
 * The shapes of the lines are kept as they are: a deviation scales a line. Amounts of a line that deviates are taken by
 * projecting it on the stated one under the straightedge.
 *
 * Where frets do not bite as stated, deviations may still make them bite. The unit wedges therefore come from a second
 * prediction with studs wide enough to bite everywhere.
 */
import type { Build } from '../../neck/build.ts';
import type { Contact } from '../seating/contact.ts';
import { AS_STATED } from '../deviations.ts';
import { METHODS, type Method, type Prediction, type TimeInputs } from '../prediction-types.ts';
import type { Predictor } from '../predict.ts';
import { sampleLine } from '../relief.ts';
import { contactsOf } from '../seating/wire-contact.ts';
import { fitAnswer, type Answer, type Trial } from './answer.ts';
import { deviationsAt, GAUGE_ERROR_MM, INPUTS, type Spreads, type UncertainInput } from './inputs.ts';
import { CONTACT_INPUTS, deviatedContact, seatOne } from './one-slot.ts';

/** Basis lines of one method at the points of the model, and their answers. */
export interface MethodModel {
  /** frets × points: what each fret does in the reference state. Zero for a glue fit. */
  readonly wedgeMm: Float64Array;
  readonly stringsMm: Float64Array;
  readonly rodMm: Float64Array;
  readonly climateMm: Float64Array;
  readonly strings: Answer;
  readonly rod: Answer;
  readonly climate: Answer;
}

/** Frets with the same wire in the same kerf. */
export interface FretKind {
  readonly frets: readonly number[];
  /** Contact of the fret in their middle, as stated. */
  readonly contact: Contact;
  readonly flexibilityMmN: number;
  /** Its force in the reference state, N. */
  readonly referenceN: number;
  /** Mean force of the kind's frets in the reference state, N. */
  readonly meanReferenceN: number;
}

export interface ResponseModel {
  readonly spreads: Spreads;
  /** Nut, every fret, end of the board; mm. */
  readonly xMm: Float64Array;
  /** First and last point under the straightedge. */
  readonly spanFrom: number;
  readonly spanTo: number;
  readonly time: TimeInputs;
  readonly levelledIn: Prediction['levelledIn'];
  readonly rodRange: { readonly leastPercent: number; readonly mostPercent: number } | null;
  readonly startingMm: Float64Array;
  readonly fallMm: Float64Array;
  /** What a standard deviation of the gauge adds to the bow that was measured before fretting; zero on a new neck. */
  readonly gaugeMm: Float64Array;
  readonly kinds: readonly FretKind[];
  /** Slot opening per wedge force, and line per wedge force. */
  readonly flexibility: Answer;
  readonly wedgeLine: Answer;
  readonly methods: Readonly<Record<Method, MethodModel>>;
  /** The prediction as stated. */
  readonly prediction: Prediction;
}

/** Steps of the trials in standard deviations: both ways for the board's modulus, one way for the rest. */
const MODULUS_STEP = 1.5;
const CONTACT_STEP = 1;
/** Those that change the mesh beside the moduli, and its filling. A slot is made less deep, which always can be. */
const WOOD_TRIALS: readonly (readonly [UncertainInput, number])[] = [
  ['slotDepthMm', -1],
  ['acrossGrain', 1],
];

/** Least interference of the studs in the reference state, mm. */
const REFERENCE_INTERFERENCE_MM = 0.1;

/** Factors of two and more, which are tried both ways. */
const BENT: ReadonlySet<UncertainInput> = new Set<UncertainInput>(['studSoftness', 'glueModulus']);

/** Predictions that one model takes; each is one step of `modelSteps`. */
export const MODEL_STEPS = 6 + WOOD_TRIALS.length + CONTACT_INPUTS.length;

/** The predictions that a model is made of. */
interface Runs {
  readonly stated: Prediction;
  /** With studs wide enough to bite everywhere, and by how much wider they are, mm. */
  readonly reference: Prediction;
  readonly widerMm: number;
  readonly contacts: readonly Contact[];
  readonly trials: readonly TrialRun[];
}

interface TrialRun {
  readonly input: UncertainInput;
  /** In standard deviations. */
  readonly step: number;
  readonly plus: Prediction;
  readonly minus?: Prediction;
}

/** Takes them, one a step. */
function* runSteps(build: Build, spreads: Spreads, predictor: Predictor, aside: Predictor): Generator<undefined, Runs> {
  const stated = predictor.predict(build);
  yield;
  const contacts = contactsOf(build, AS_STATED);
  const least = Math.min(...contacts.map((contact) => contact.studInterferenceMm));
  const wider = Math.max(0, REFERENCE_INTERFERENCE_MM - least);
  const reference = wider === 0 ? stated : predictor.predict(build, { ...AS_STATED, studWidthMm: wider });
  yield;

  const trials: TrialRun[] = [];
  const deviated = (on: Predictor, input: UncertainInput, z: number) => {
    const deviates = INPUTS.map(({ id }) => (id === input ? z : 0));
    const deviations = deviationsAt(spreads, deviates);
    return on.predict(build, { ...deviations, studWidthMm: deviations.studWidthMm + wider });
  };
  const plus = deviated(aside, 'boardModulus', MODULUS_STEP);
  yield;
  const minus = deviated(aside, 'boardModulus', -MODULUS_STEP);
  yield;
  trials.push({ input: 'boardModulus', step: MODULUS_STEP, plus, minus });
  trials.push({ input: 'neckModulus', step: MODULUS_STEP, plus: deviated(aside, 'neckModulus', MODULUS_STEP) });
  yield;
  for (const [input, step] of WOOD_TRIALS) {
    trials.push({ input, step, plus: deviated(aside, input, step) });
    yield;
  }
  for (const input of [...CONTACT_INPUTS, 'glueModulus'] as const) {
    const minus = BENT.has(input) ? { minus: deviated(predictor, input, -CONTACT_STEP) } : {};
    trials.push({ input, step: CONTACT_STEP, plus: deviated(predictor, input, CONTACT_STEP), ...minus });
    yield;
  }
  if (spreads.clampSlide > 0) {
    const away = build.clampSlidePercent > 50 ? -CONTACT_STEP : CONTACT_STEP;
    trials.push({ input: 'clampSlide', step: away, plus: deviated(predictor, 'clampSlide', away) });
  }
  return { stated, reference, widerMm: wider, contacts, trials };
}

/** How numbers and lines answer to the inputs: those of the trials over the reference's. */
function answering(spreads: Spreads, { reference, trials }: Runs, spanFrom: number, spanTo: number) {
  /** Answer of a number, from the deviated predictions. */
  const answerOf = (amount: (prediction: Prediction) => number): Answer => {
    const as = amount(reference);
    const answers = trials.map(({ input, step, plus, minus }): Trial => {
      const ratio = (prediction: Prediction) => (as === 0 ? 1 : amount(prediction) / as);
      return { input, step, plus: ratio(plus), ...(minus ? { minus: ratio(minus) } : {}) };
    });
    return fitAnswer(spreads, answers);
  };
  /** Amount of a line in terms of the reference's: its projection on it under the straightedge. */
  const projected = (lineOf: (prediction: Prediction) => Float64Array) => {
    const unit = lineOf(reference);
    return (prediction: Prediction) => {
      const line = lineOf(prediction);
      let sum = 0;
      for (let i = spanFrom; i <= spanTo; i += 1) sum += line[i] * unit[i];
      return Math.abs(sum) < NOTHING_MM2 ? 0 : sum;
    };
  };
  return { answerOf, projected };
}

function modelOf(build: Build, spreads: Spreads, runs: Runs): ResponseModel {
  const { stated, reference, contacts } = runs;
  const xMm = Float64Array.of(0, ...stated.fretXMm, stated.stationXMm.at(-1)!);
  const spanFrom = stated.straightedge.fromFret;
  const spanTo = stated.straightedge.toFret;
  const atPoints = (prediction: Prediction, line: Float64Array, row = 0) => {
    const stations = prediction.stationXMm.length;
    const values = line.subarray(row * stations, (row + 1) * stations);
    return xMm.map((x) => sampleLine(prediction.stationXMm, values, x));
  };
  const { answerOf, projected } = answering(spreads, runs, spanFrom, spanTo);

  /** Line of all wedges, each with the force that it has in the reference state. */
  const allWedges = (prediction: Prediction) => {
    const { basis, wedgeForceN } = prediction.methods.press;
    const line = new Float64Array(xMm.length);
    contacts.forEach((_, i) => {
      const scale = reference.methods.press.wedgeForceN[i] / wedgeForceN[i];
      atPoints(prediction, basis.wedgeMm, i).forEach((value, j) => (line[j] += scale * value));
    });
    return line;
  };
  const flexibilityOf = (prediction: Prediction) => {
    const { openingMm, wedgeForceN } = prediction.methods.press;
    return openingMm.reduce((sum, opening, i) => sum + opening / wedgeForceN[i], 0) / contacts.length;
  };

  const methodModel = (method: Method): MethodModel => {
    const { basis } = stated.methods[method];
    const rows = new Float64Array(contacts.length * xMm.length);
    const wedges = reference.methods[method].basis.wedgeMm;
    contacts.forEach((_, i) => rows.set(atPoints(reference, wedges, i), i * xMm.length));
    const answer = (name: 'stringsMm' | 'rodMm' | 'climateMm') =>
      answerOf(projected((prediction) => atPoints(prediction, prediction.methods[method].basis[name])));
    return {
      wedgeMm: rows,
      stringsMm: atPoints(stated, basis.stringsMm),
      rodMm: atPoints(stated, basis.rodMm),
      climateMm: atPoints(stated, basis.climateMm),
      strings: answer('stringsMm'),
      rod: answer('rodMm'),
      climate: answer('climateMm'),
    };
  };

  return {
    spreads,
    xMm,
    spanFrom,
    spanTo,
    time: stated.time,
    levelledIn: stated.levelledIn,
    rodRange:
      stated.rod.kind === 'none'
        ? null
        : { leastPercent: stated.rod.leastPercent, mostPercent: stated.rod.mostPercent },
    startingMm: atPoints(stated, stated.startingMm),
    fallMm: atPoints(stated, stated.fallMm),
    gaugeMm: gaugeLine(build, xMm, spanFrom, spanTo),
    kinds: kindsOf(contacts, reference, runs.widerMm),
    flexibility: answerOf(flexibilityOf),
    wedgeLine: answerOf(projected(allWedges)),
    methods: Object.fromEntries(METHODS.map((method) => [method, methodModel(method)])) as Record<Method, MethodModel>,
    prediction: stated,
  };
}

/**
 * Builds the model, one prediction a step.
 * @param aside predicts the necks whose moduli deviate; its caches make a change of wire or kerf cheap.
 */
export function* modelSteps(
  build: Build,
  spreads: Spreads,
  predictor: Predictor,
  aside: Predictor,
): Generator<undefined, ResponseModel> {
  return modelOf(build, spreads, yield* runSteps(build, spreads, predictor, aside));
}

/** A bow of constant curvature under the straightedge: of what was measured at each fret as of one number (assumption). */
function gaugeLine(build: Build, xMm: Float64Array, spanFrom: number, spanTo: number): Float64Array {
  const from = xMm[spanFrom];
  const to = xMm[spanTo];
  return xMm.map((x, j) => {
    if (build.job !== 'refret' || j < spanFrom || j > spanTo) return 0;
    const s = (x - from) / (to - from);
    return GAUGE_ERROR_MM * 4 * s * (1 - s);
  });
}

/** Below this a sum of squares of relief is rounding: no rod, no climate. (10⁻⁹ mm)². */
const NOTHING_MM2 = 1e-18;

function kindsOf(contacts: readonly Contact[], reference: Prediction, widerMm: number): FretKind[] {
  const { openingMm, wedgeForceN } = reference.methods.press;
  const groups = new Map<string, { contact: Contact; i: number }[]>();
  contacts.forEach((contact, i) => {
    const key = `${contact.studInterferenceMm.toFixed(6)} ${contact.bodyInterferenceMm.toFixed(6)}`;
    groups.set(key, [...(groups.get(key) ?? []), { contact, i }]);
  });
  return [...groups.values()].map((group): FretKind => {
    const { contact, i } = group[group.length >> 1];
    const flexibilityMmN = openingMm[i] / wedgeForceN[i];
    const wide = deviatedContact(contact, { ...AS_STATED, studWidthMm: widerMm });
    return {
      frets: group.map((member) => member.i + 1),
      contact,
      flexibilityMmN,
      referenceN: seatOne(wide, flexibilityMmN),
      meanReferenceN: group.reduce((sum, member) => sum + wedgeForceN[member.i], 0) / group.length,
    };
  });
}
