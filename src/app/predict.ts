/**
 * `npm run --silent predict -- build.json [--log bench-log.csv]`: the prediction of a project file as JSON on standard output.
 * With a bench log the bands are those that its measured necks leave, as on the page. That takes a build with the bite
 * factor that the log gives: it is never changed here.
 * A file that cannot be read or is not a valid build: its problems on standard error, one a line, and exit code 2.
 */
import { readFileSync } from 'node:fs';
import type { Build } from '../neck/build.ts';
import { readProject } from '../neck/file.ts';
import { readLog } from '../mechanics/bench-log/csv.ts';
import { bitePosterior, type BitePosterior } from '../mechanics/bench-log/posterior.ts';
import { createPredictor } from '../mechanics/predict.ts';
import { predictionReport } from '../mechanics/report.ts';
import { createEstimator } from '../mechanics/uncertainty/estimate.ts';
import { biteFactorOf } from '../state/bench-log/adopted.ts';
import { problemTexts } from '../speech/problems.ts';

function fail(lines: readonly string[]): never {
  for (const line of lines) process.stderr.write(`${line}\n`);
  process.exit(2);
}

function read(path: string): string {
  try {
    return readFileSync(path, 'utf8');
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    const why =
      code === 'ENOENT' ? 'there is no such file' : code === 'EISDIR' ? 'it is a folder' : (code ?? 'unknown error');
    return fail([`${path} cannot be read: ${why}.`]);
  }
}

/** What the log leaves of the bite's scatter to this build. */
function biteFrom(path: string, { biteFactor }: Build): BitePosterior {
  const log = readLog(read(path));
  if (!log.ok) return fail(log.problems.map((problem) => `${path}: ${problem.message}`));
  const posterior = bitePosterior(log.entries);
  if (posterior.necks === 0) {
    return fail([`${path} says nothing of the bite: it has no neck that was pressed. Leave --log away.`]);
  }
  const measured = biteFactorOf(posterior);
  if (measured !== biteFactor) {
    return fail([
      `biteFactor is ${biteFactor} in the build; ${path} gives ${measured}. ` +
        `The narrower bands belong to that factor: set biteFactor to ${measured} in the build, or leave --log away.`,
    ]);
  }
  return posterior;
}

/** Takes `--log <file>` out of the arguments, wherever it stands. */
function argumentsOf(given: readonly string[]): { readonly path: string; readonly log: string | undefined } {
  const at = given.indexOf('--log');
  const log = at === -1 ? undefined : given[at + 1];
  const rest = at === -1 ? given : given.filter((_, index) => index !== at && index !== at + 1);
  const [path, ...more] = rest;
  if (path === undefined || path.startsWith('--') || more.length > 0 || (at !== -1 && log === undefined)) {
    return fail(['Usage: npm run --silent predict -- build.json [--log bench-log.csv]']);
  }
  return { path, log };
}

const { path, log } = argumentsOf(process.argv.slice(2));
const project = readProject(read(path));
if (!project.ok) fail(problemTexts(project.problems, 'metric').map((text) => text.replaceAll('\u00a0', ' ')));
const { build } = project;
const predictor = createPredictor();
const bite = log === undefined ? undefined : biteFrom(log, build);
const uncertainty = await createEstimator(predictor).estimate(build, { biteLogSpread: bite?.logSpread });
const report = predictionReport(predictor.predict(build), build, uncertainty ?? undefined, bite);
process.stdout.write(`${JSON.stringify(report, null, 2)}\n`);
