/**
 * Reading how many tests passed and failed from vitest's JSON report.
 */
import { readFileSync } from 'node:fs';

/**
 * The part of the report that is read.
 * @typedef {{
 *   numPassedTests?: number,
 *   numFailedTests?: number,
 *   testResults?: { status?: string, assertionResults?: unknown[] }[],
 * }} Report
 */

/**
 * Counts the tests of one run. A test file that could not be loaded, a report that is missing and a run that ended with
 * an error although no test failed each count as a failure, so that nothing that went wrong is lost.
 * @param {string} reportPath the JSON report
 * @param {number} exitCode of the run
 * @returns {{ passed: number, failed: number }}
 */
export function countTests(reportPath, exitCode) {
  /** @type {Report} */
  let report;
  try {
    report = /** @type {Report} */ (JSON.parse(readFileSync(reportPath, 'utf8')));
  } catch {
    return { passed: 0, failed: 1 };
  }
  const passed = report.numPassedTests ?? 0;
  const unloaded = (report.testResults ?? []).filter(
    (file) => file.status === 'failed' && (file.assertionResults ?? []).length === 0,
  ).length;
  const failed = (report.numFailedTests ?? 0) + unloaded;
  return { passed, failed: failed === 0 && exitCode !== 0 ? 1 : failed };
}
