/** `predict` from its arguments to its answer; nothing is written here. */
import type { Build } from '../../neck/build.ts';
import { MOST_PROJECT_BYTES, readProject } from '../../neck/file.ts';
import { MOST_LOG_BYTES, readLog } from '../../mechanics/bench-log/read-csv.ts';
import { bitePosterior, type BitePosterior } from '../../mechanics/bench-log/posterior.ts';
import { createPredictor } from '../../mechanics/predict.ts';
import type { LogEntry } from '../../mechanics/bench-log/entry.ts';
import { gripStanding } from '../../mechanics/bench-log/standing.ts';
import type { Evidence } from '../../mechanics/neck-readings/evidence.ts';
import { resolveGrip } from '../../mechanics/neck-readings/grip-reference.ts';
import { hearingSteps, narrowedBy } from '../../mechanics/neck-readings/heard.ts';
import { runAtOnce } from '../../mechanics/steps.ts';
import { readStrips } from '../../mechanics/try-strip/document-file.ts';
import type { TryStrip } from '../../mechanics/try-strip/document.ts';
import type { GripReference } from '../../neck/bite-reference.ts';
import { stripProblemText } from '../../speech/measured/strips.ts';
import type { MeasuredFor } from '../../verdict/report-bands.ts';
import { createEstimator, type EstimateOptions, type Estimator } from '../../mechanics/uncertainty/estimate.ts';
import { PREDICT_WORDS } from '../../speech/en/workshop/predict.ts';
import { logProblemTexts } from '../../speech/measured/log-problems.ts';
import { problemTexts } from '../../speech/problems.ts';
import { biteFactorOf, informing, resolveReference } from '../../mechanics/bench-log/reference.ts';
import { leastChange } from '../../verdict/in-short/least-change.ts';
import { verdictOf } from '../../verdict/in-short/verdict.ts';
import { predictionReport } from '../../verdict/report.ts';
import { reportSchema } from '../../verdict/report-shape.ts';
import { readArguments, type Asked } from './arguments.ts';
import { readTextFile } from './read-file.ts';
import { asLine, fileText, nameOf, usageText } from './said.ts';

/** What goes to standard output and to standard error, and the exit code: see README.md. */
export interface Answer {
  readonly output: string;
  readonly messages: readonly string[];
  readonly exitCode: 0 | 1 | 2;
}

const json = (value: unknown): Answer => ({ output: `${JSON.stringify(value, null, 2)}\n`, messages: [], exitCode: 0 });

/** What was asked or given is refused. */
class Refusal extends Error {
  readonly lines: readonly string[];
  constructor(lines: readonly string[]) {
    super('refused');
    this.lines = lines;
  }
}

function textOf(path: string, mostBytes: number): string {
  const read = readTextFile(path, mostBytes);
  if (!read.ok) throw new Refusal([fileText(path, read.trouble)]);
  return read.text;
}

function buildOf(path: string): Build {
  const project = readProject(textOf(path, MOST_PROJECT_BYTES));
  if (!project.ok) throw new Refusal(problemTexts(project.problems, 'metric'));
  return project.build;
}

function logFrom(path: string): readonly LogEntry[] {
  const log = readLog(textOf(path, MOST_LOG_BYTES));
  if (log.ok) return log.entries;
  const texts = logProblemTexts(log.problems, log.count, log.problems.length, 'metric');
  throw new Refusal(texts.map((text) => PREDICT_WORDS.inFile(nameOf(path), text)));
}

function stripsFrom(path: string): readonly TryStrip[] {
  const read = readStrips(textOf(path, MOST_LOG_BYTES));
  if (read.ok) return read.strips;
  const texts = read.problems.map((problem) => stripProblemText(problem, 'metric'));
  throw new Refusal(texts.map((text) => PREDICT_WORDS.inFile(nameOf(path), text)));
}

/**
 * The strips and readings that the build refers to. They must be in the files and say the same, and the build must have the
 * grip that they gave.
 */
function evidenceFrom(build: Build, reference: GripReference, log?: string, strips?: string): Evidence {
  const files = [strips, log].flatMap((path) => (path === undefined ? [] : [nameOf(path)])).join(', ');
  const found = resolveGrip(
    reference.documents,
    strips === undefined ? [] : stripsFrom(strips),
    log === undefined ? [] : logFrom(log),
  );
  if (found.code === 'not-here') throw new Refusal([PREDICT_WORDS.gripNotHere(files)]);
  if (found.code === 'changed') throw new Refusal([PREDICT_WORDS.gripChanged(files)]);
  const gripsHere = { [reference.hash]: { ...found, accepted: true } };
  const standing = gripStanding({ gripsHere }, build);
  if (standing?.code !== 'in-use') throw new Refusal([PREDICT_WORDS.gripByHand]);
  return standing.evidence;
}

/** What the band of the build is made with, and what is said of that. */
function narrowedFor(
  estimator: Estimator,
  build: Build,
  { log, strips }: Pick<Extract<Asked, { kind: 'predict' }>, 'log' | 'strips'>,
): { readonly options: EstimateOptions; readonly measured: MeasuredFor | undefined } {
  const reference = build.gripReference;
  if (strips !== undefined && !reference) throw new Refusal([PREDICT_WORDS.noStripReference(nameOf(strips))]);
  if (reference && (log !== undefined || strips !== undefined)) {
    const evidence = evidenceFrom(build, reference, log, strips);
    const heard = runAtOnce(hearingSteps(estimator, build, evidence));
    return { options: narrowedBy(heard), measured: { measurements: reference.measured } };
  }
  const bite = log === undefined ? undefined : biteFrom(log, build);
  return { options: { biteLogSpread: bite?.logSpread }, measured: bite };
}

/**
 * What the measurements that the build refers to leave of its bite's scatter. They must be in the log and say the same: an
 * equal bite factor proves nothing. The build is never changed to the log's factor.
 */
function biteFrom(path: string, build: Build): BitePosterior {
  const { biteFactor, biteReference } = build;
  const entries = logFrom(path);
  const file = nameOf(path);
  if (informing(entries).length === 0) throw new Refusal([PREDICT_WORDS.nothingOfBite(file)]);
  if (!biteReference) throw new Refusal([PREDICT_WORDS.noReference(file)]);
  const referred = resolveReference(biteReference, entries, build);
  if (referred.code !== 'here') throw new Refusal([PREDICT_WORDS[referred.code](file)]);
  const posterior = bitePosterior(referred.entries, build);
  const measured = biteFactorOf(posterior);
  if (measured !== biteFactor) {
    throw new Refusal([PREDICT_WORDS.otherBite(String(biteFactor), file, String(measured))]);
  }
  return posterior;
}

async function predict({ project, ...files }: Extract<Asked, { kind: 'predict' }>): Promise<Answer> {
  const build = buildOf(project);
  const predictor = createPredictor();
  const estimator = createEstimator(predictor);
  const { options, measured } = narrowedFor(estimator, build, files);
  const uncertainty = await estimator.estimate(build, options);
  const reckoned = { build, prediction: predictor.predict(build) };
  const least = verdictOf(reckoned).obstacle ? await leastChange(predictor, reckoned) : null;
  return json(predictionReport(reckoned, uncertainty ?? undefined, measured, least));
}

async function answer(given: readonly string[]): Promise<Answer> {
  const read = readArguments(given);
  if (!read.ok) throw new Refusal([usageText(read.trouble), PREDICT_WORDS.usage, PREDICT_WORDS.seeHelp]);
  switch (read.asked.kind) {
    case 'help':
      return { output: `${PREDICT_WORDS.usage}\n\n${PREDICT_WORDS.help}\n`, messages: [], exitCode: 0 };
    case 'schema':
      return json(reportSchema());
    case 'predict':
      return predict(read.asked);
  }
}

/** @param given the arguments, without the program's own name */
export async function runPredict(given: readonly string[]): Promise<Answer> {
  try {
    return await answer(given);
  } catch (error) {
    if (error instanceof Refusal) return { output: '', messages: error.lines.map((line) => asLine(line)), exitCode: 2 };
    const message = error instanceof Error ? error.message : String(error);
    return { output: '', messages: [asLine(PREDICT_WORDS.fault(message))], exitCode: 1 };
  }
}
