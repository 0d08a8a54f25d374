/**
 * `npm test`: installs what is missing, runs every check, and closes with one line of counts. `npm run test:all` runs once
 * more, on the long draws, the tests that draw (those that import test/draw.ts); CI runs both.
 *
 * A step that fails does not stop the others, so one run shows everything that is wrong. Counted are the tests of the unit
 * and browser steps, plus one failure for each other step that failed.
 */
import { mkdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { ensureChromium } from './chromium.mjs';
import { countTests } from './counts.mjs';
import { ensureInstalled, npm, requireNode, root } from './project.mjs';

/** @typedef {{ name: string, passed: number, failed: number, seconds: number }} Outcome */

/** @param {string} name */
function announce(name) {
  console.log(`\n── ${name} ${'─'.repeat(Math.max(0, 60 - name.length))}`);
}

/**
 * A step that passes or fails as a whole.
 * @param {string} script
 * @returns {Promise<Outcome>}
 */
async function check(script) {
  announce(script);
  const start = performance.now();
  const code = await npm(['run', '--silent', script]);
  return { name: script, passed: 0, failed: code === 0 ? 0 : 1, seconds: (performance.now() - start) / 1000 };
}

/**
 * A step that consists of tests, counted from vitest's own report.
 * @param {string} script
 * @param {NodeJS.ProcessEnv} [env]
 * @returns {Promise<Outcome>}
 */
async function tests(script, env = {}) {
  announce(script);
  const start = performance.now();
  const report = join(root, 'test', 'output', `${script.replace(':', '-')}.json`);
  mkdirSync(join(root, 'test', 'output'), { recursive: true });
  rmSync(report, { force: true });
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${report}`];
  const code = await npm(['run', '--silent', script, '--', ...reporters], env);
  return { name: script, ...countTests(report, code), seconds: (performance.now() - start) / 1000 };
}

/**
 * A step that could not be tried.
 * @param {string} name
 * @param {string} reason
 * @returns {Outcome}
 */
function notRun(name, reason) {
  announce(name);
  console.error(`Not run: ${reason}.`);
  return { name, passed: 0, failed: 1, seconds: 0 };
}

/** @param {Outcome[]} outcomes */
function finish(outcomes) {
  announce('result');
  for (const { name, passed, failed, seconds } of outcomes) {
    const counts = passed > 0 ? `, ${passed} passed${failed > 0 ? `, ${failed} failed` : ''}` : '';
    console.log(
      `${failed === 0 ? 'ok    ' : 'FAILED'} ${name.padEnd(13)} ${seconds.toFixed(1).padStart(6)} s${counts}`,
    );
  }
  const passed = outcomes.reduce((sum, outcome) => sum + outcome.passed, 0);
  const failed = outcomes.reduce((sum, outcome) => sum + outcome.failed, 0);
  console.log(`${passed} passed, ${failed} failed`);
  process.exitCode = failed === 0 ? 0 : 1;
}

const IS_LONG = process.argv.includes('--all');
/** @type {NodeJS.ProcessEnv} */
const DRAW = IS_LONG ? { DRAW: 'long' } : { PICTURES: 'none' };
const STATIC = IS_LONG ? [] : ['format:check', 'types', 'lint'];
const [UNIT, BROWSER] = IS_LONG ? ['unit:long', 'browser:long'] : ['unit', 'browser'];

requireNode();
if (!(await ensureInstalled())) {
  finish([{ name: 'install', passed: 0, failed: 1, seconds: 0 }]);
} else {
  const chromium = await ensureChromium();
  // The formatter keeps one processor busy; the two others share the rest.
  const outcomes = await Promise.all(STATIC.map(check));
  outcomes.push(await tests(UNIT, DRAW));
  const build = await check('build');
  outcomes.push(build);
  if (build.failed > 0) outcomes.push(notRun(BROWSER, 'there is no build to open'));
  else if (!chromium) outcomes.push(notRun(BROWSER, 'there is no Chromium (what to install is said at the top)'));
  else outcomes.push(await tests(BROWSER, { ...DRAW, CHROMIUM_PATH: chromium }));
  finish(outcomes);
}
