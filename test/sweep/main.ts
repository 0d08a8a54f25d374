/**
 * `npm run sweep -- 10000`: builds drawn at random, and what must hold of every one of them. Prints how often each law was
 * checked, and for each failure the seed that makes the build again:
 *
 *     npm run sweep -- 1 --from 4711
 *
 * which checks every law for that one build and prints the build.
 */
import { buildOfSeed, sweep } from './sweep.ts';

const STANDARD_COUNT = 1000;
const STANDARD_SEED = 1;
/** Failures printed in full; all are counted. */
const MOST_SHOWN = 30;

function wholeNumber(text: string | undefined, name: string, least: number): number {
  const value = Number(text);
  if (text !== undefined && Number.isInteger(value) && value >= least) return value;
  console.error(`${name} is “${text ?? ''}”; it must be a whole number of at least ${least}.`);
  process.exit(1);
}

const words = process.argv.slice(2);
const from = words.indexOf('--from');
const first = from < 0 ? STANDARD_SEED : wholeNumber(words[from + 1], 'the seed after --from', 0);
const [countText] = from < 0 ? words : words.toSpliced(from, 2);
const count = countText === undefined ? STANDARD_COUNT : wholeNumber(countText, 'the number of builds', 1);

const start = performance.now();
const { counts, failures } = await sweep(count, first, {
  thorough: count === 1,
  onBuild: (done) => {
    if (done % 500 === 0) process.stderr.write(`${done} builds, ${Math.round((performance.now() - start) / 1000)} s\n`);
  },
});
if (count === 1) console.log(JSON.stringify(buildOfSeed(first), null, 2));
for (const { seed, invariant, message } of failures.slice(0, MOST_SHOWN))
  console.log(`seed ${seed}: ${invariant}: ${message}`);
if (failures.length > MOST_SHOWN) console.log(`… and ${failures.length - MOST_SHOWN} more`);
for (const { invariant, checked, failed } of counts)
  console.log(`${String(checked).padStart(7)} checked ${String(failed).padStart(5)} failed  ${invariant}`);
const checks = counts.reduce((sum, { checked }) => sum + checked, 0);
console.log(`${count} builds from seed ${first}, ${checks} checks, ${failures.length} failed`);
process.exitCode = failures.length === 0 ? 0 : 1;
