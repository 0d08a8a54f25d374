/**
 * A fretting job at the bench as a document of its own: the neck as it was handed over with what was predicted for it then, and
 * what has been read, changed and done since. What was predicted stays as it was, whatever is read.
 *
 * The neck is a project file inside the document, so that it opens in every later release as those do.
 */
import * as z from 'zod/mini';
import { LOG_NUMBERS, SEATING_ORDERS } from '../../mechanics/bench-log/entry.ts';
import { isId } from '../../mechanics/bench-log/identity.ts';
import { withRest, splitAt, type RestChange } from '../../mechanics/while-fretting/job.ts';
import type { Build } from '../../neck/build.ts';
import { checkProject } from '../../neck/file.ts';
import { LIST_NUMBERS, type ListNumber } from '../../neck/schema.ts';
import { isMoment } from '../device/moment.ts';

/** Format of the document. */
export const JOB_VERSION = 1;
/** Longest note of a reading, in characters. */
export const MOST_READING_NOTE = 500;
/** Most readings of a job, and most steps back. */
const MOST_READINGS = 200;
export const MOST_STEPS_BACK = 200;

export const GAUGES = ['feelers', 'dial', 'own'] as const;
export type Gauge = (typeof GAUGES)[number];
/** One standard deviation of a reading over a straightedge, mm (common practice, no source); `own` says its own. */
export const GAUGE_ERROR_MM: Readonly<Record<Exclude<Gauge, 'own'>, number>> = { feelers: 0.02, dial: 0.01 };
export const GAUGE_ERROR = LOG_NUMBERS.find(({ id }) => id === 'gaugeErrorMm')!;
/** Of what is read, as in the bench log. */
export const READ_RELIEF = LOG_NUMBERS.find(({ id }) => id === 'measuredFrettedMm')!;

const moment = z.number().check(z.refine(isMoment));
const within = ({ min, max }: { readonly min: number; readonly max: number }) =>
  z.number().check(z.minimum(min), z.maximum(max));
const listNumber = (id: ListNumber) => within(LIST_NUMBERS[id]);
const finite = z.number();
const frets = z.int().check(z.minimum(0), z.maximum(LIST_NUMBERS.toFret.max));
const text = (most: number) => z.string().check(z.maxLength(most));

const reading = z.strictObject({
  /** Frets that were in, in the order of seating. */
  seated: frets.check(z.minimum(1)),
  /** Greatest relief under the straightedge, mm; hollow positive. */
  measuredMm: within(READ_RELIEF),
  /** One standard deviation of the instrument, mm. */
  errorMm: within(GAUGE_ERROR),
  instrument: z.enum(GAUGES),
  note: text(MOST_READING_NOTE),
  /** It lies where such a neck may, or whoever read it says that it is right: until then nothing is advised from it. */
  isSure: z.boolean(),
  /** ms since 1970. */
  at: moment,
});

const restChange = z.discriminatedUnion('code', [
  z.strictObject({ code: z.literal('kerf'), kerfMm: listNumber('kerfMm') }),
  z.strictObject({
    code: z.literal('wire'),
    tangWidthMm: listNumber('tangWidthMm'),
    studWidthMm: listNumber('studWidthMm'),
  }),
  z.strictObject({ code: z.literal('glue') }),
]);

const change = z.strictObject({
  /** Frets that were in when it was decided; it is for those to come. */
  seated: frets,
  rest: restChange,
  at: moment,
});

/** What has been entered: all of it can be taken back, one entry after the other. */
const work = z.strictObject({
  readings: z.array(reading).check(z.maxLength(MOST_READINGS)),
  changes: z.array(change).check(z.maxLength(LIST_NUMBERS.toFret.max)),
  /** When it was finished, ms since 1970. */
  finishedAt: z.nullable(moment),
  /** Entry of the bench log that its readings went into. */
  logged: z.nullable(z.string().check(z.refine(isId))),
});

const band = { p05: finite, p50: finite, p95: finite } as const;
const state = z.strictObject({ statedMm: finite, ...band });
const points = z.array(finite).check(z.maxLength(LIST_NUMBERS.toFret.max + 2));
const line = z.strictObject({ p05Mm: points, p50Mm: points, p95Mm: points });
const orNone = z.nullable(finite);

/** What an entry of the bench log takes from the prediction. */
const forLog = z.strictObject({
  predictedFrettedMm: orNone,
  predictedFrettedFretsMm: orNone,
  predictedStrungMm: orNone,
  predictedStrungFretsMm: orNone,
  biteFactor: finite,
  studShape: orNone,
  embeddingLengthMm: orNone,
  fretShift: finite,
  fretScatter: finite,
  stringScatter: finite,
  scatterCorrelation: finite,
  predictedPullMm: orNone,
  predictedRodMm: orNone,
  predictedQuarter1Mm: orNone,
  predictedQuarter2Mm: orNone,
  predictedQuarter3Mm: orNone,
  seatingOrder: z.enum(SEATING_ORDERS),
});

const predicted = z.strictObject({
  program: text(40),
  stamp: text(40),
  at: moment,
  /** Nut, every fret, end of the board, mm; and which of them are under the ends of the straightedge. */
  xMm: points,
  spanFrom: frets,
  spanTo: frets,
  /** With each quarter of the frets in. */
  quarters: z.array(z.extend(state, { line })).check(z.length(4)),
  fretted: state,
  strung: state,
  settled: state,
  /** The board of a neck that is glued on with its frets in. */
  frettedBoard: z.nullable(z.strictObject({ freeBowMm: finite, clampPressureMPa: finite })),
  forLog,
});

const jobSchema = z.strictObject({
  version: z.literal(JOB_VERSION),
  id: z.string().check(z.refine(isId)),
  startedAt: moment,
  /** A project file. */
  neck: z.unknown(),
  predicted,
  /** Relief wanted, strung and settled, mm. */
  wantedMm: finite,
  /** An apprentice's try: kept apart, and speaks for no other neck. */
  isTry: z.boolean(),
  /** The screen that was open last. */
  place: text(20),
  now: work,
  /** What was entered before, the latest last. */
  past: z.array(work).check(z.maxLength(MOST_STEPS_BACK)),
});

export type BenchJob = z.infer<typeof jobSchema>;
export type Work = z.infer<typeof work>;
export type JobReading = z.infer<typeof reading>;
export type JobPrediction = z.infer<typeof predicted>;
export type AcceptedChange = Exclude<RestChange, { code: 'go-on' }>;

/** Necks by the object that they were read from: a check of a whole build is not made twice. */
const necks = new WeakMap<object, Build>();

function readNeck(neck: unknown): Build | null {
  if (typeof neck !== 'object' || neck === null) return null;
  const known = necks.get(neck);
  if (known) return known;
  const checked = checkProject(neck);
  if (!checked.ok) return null;
  necks.set(neck, checked.build);
  return checked.build;
}

/** @returns null for what is no job, or one that cannot be: with readings after frets that the neck does not have */
export function jobOf(value: unknown): BenchJob | null {
  const parsed = jobSchema.safeParse(value);
  if (!parsed.success) return null;
  const job = parsed.data;
  const build = readNeck(job.neck);
  if (!build) return null;
  const { spanFrom, spanTo, xMm, quarters } = job.predicted;
  const all = [job.now, ...job.past];
  const fits =
    all.every(({ readings, changes }) => [...readings, ...changes].every(({ seated }) => seated <= build.fretCount)) &&
    spanFrom < spanTo &&
    spanTo < xMm.length &&
    quarters.every((quarter) => Object.values(quarter.line).every(({ length }) => length === xMm.length));
  return fits ? job : null;
}

/** The neck as it was handed over. @param job as `jobOf` found it sound */
export const neckOf = (job: Pick<BenchJob, 'neck'>): Build => readNeck(job.neck)!;

/** The neck with what was changed for the frets to come while fewer than so many were in. */
export function neckBefore(job: Pick<BenchJob, 'neck' | 'now'>, seated: number): Build {
  const changes = job.now.changes.filter((change) => change.seated < seated);
  return changes.reduce(
    (build, { seated: then, rest }) => withRest(build, splitAt(build, then).rest, rest),
    neckOf(job),
  );
}

/** The neck as it is being fretted: with everything that was changed for the frets to come. */
export const neckNow = (job: Pick<BenchJob, 'neck' | 'now'>): Build => neckBefore(job, Infinity);
