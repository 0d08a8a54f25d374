/**
 * `npm run --silent predict -- build.json [--log bench-log.csv]`: the prediction of a project file as JSON on standard
 * output, in the words of the system's language where words are needed. `--help` and README.md say the rest.
 *
 * The process is left to end by itself: what is still on its way through a pipe would be lost otherwise.
 */
import { chooseLanguage } from '../speech/choose.ts';
import { runPredict } from './cli/run.ts';

/** Whoever reads the output may have heard enough, as `head` does. */
function stopQuietly(error: NodeJS.ErrnoException): void {
  if (error.code !== 'EPIPE') throw error;
}

process.stdout.on('error', stopQuietly);
process.stderr.on('error', stopQuietly);
const { LC_ALL, LC_MESSAGES, LANG } = process.env;
// The first that is set counts (POSIX.1-2017, Base Definitions, 8.2).
if (/^de\b|^de_/.test(LC_ALL || LC_MESSAGES || LANG || '')) await chooseLanguage('de');
const { output, messages, exitCode } = await runPredict(process.argv.slice(2));
process.exitCode = exitCode;
process.stdout.write(output);
process.stderr.write(messages.map((line) => `${line}\n`).join(''));
