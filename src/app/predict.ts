/**
 * `npm run --silent predict -- build.json`: the prediction of a project file as JSON on standard output.
 * A file that cannot be read or is not a valid build: its problems on standard error, one a line, and exit code 2.
 */
import { readFileSync } from 'node:fs';
import { readProject } from '../build/file.ts';
import { createPredictor } from '../mechanics/predict.ts';
import { predictionReport } from '../mechanics/report.ts';
import { createEstimator } from '../mechanics/uncertainty/estimate.ts';

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

const paths = process.argv.slice(2);
const [path] = paths;
if (path === undefined || paths.length > 1) fail(['Usage: npm run --silent predict -- build.json']);
const project = readProject(read(path));
if (!project.ok) fail(project.problems.map((problem) => problem.message));
const { build } = project;
const predictor = createPredictor();
const uncertainty = await createEstimator(predictor).estimate(build);
const report = predictionReport(predictor.predict(build), build, uncertainty ?? undefined);
process.stdout.write(`${JSON.stringify(report, null, 2)}\n`);
