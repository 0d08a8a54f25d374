import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { countTests } from './counts.mjs';

let folder = '';

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'backbow-'));
});

afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

function counts(report: unknown, exitCode: number): { passed: number; failed: number } {
  const path = join(folder, 'report.json');
  writeFileSync(path, typeof report === 'string' ? report : JSON.stringify(report));
  return countTests(path, exitCode);
}

test('tests are counted', () => {
  expect(counts({ numPassedTests: 7, numFailedTests: 0, testResults: [] }, 0)).toEqual({ passed: 7, failed: 0 });
  expect(counts({ numPassedTests: 5, numFailedTests: 2, testResults: [] }, 1)).toEqual({ passed: 5, failed: 2 });
});

test('a file that could not be loaded is one failure', () => {
  const testResults = [
    { status: 'failed', assertionResults: [] },
    { status: 'failed', assertionResults: [{}] },
    { status: 'passed', assertionResults: [{}] },
  ];
  expect(counts({ numPassedTests: 1, numFailedTests: 1, testResults }, 1)).toEqual({ passed: 1, failed: 2 });
});

test('a run that ends with an error is a failure although every test passed', () => {
  expect(counts({ numPassedTests: 3, numFailedTests: 0, testResults: [] }, 1)).toEqual({ passed: 3, failed: 1 });
});

test('a report that is broken or missing is a failure, whatever the exit code', () => {
  expect(counts('{', 0)).toEqual({ passed: 0, failed: 1 });
  expect(countTests(join(folder, 'missing.json'), 0)).toEqual({ passed: 0, failed: 1 });
});
