/** The project file: JSON of our own, `{ "format": "backbow project", "version": 1, "build": { … } }`. */
import { say } from '../speech/language.ts';
import { defaultBuild, type Build } from './build.ts';
import { describeValue, type Problem } from './problems.ts';
import { checkBuild, type CheckedBuild } from './schema.ts';

export const PROJECT_FORMAT = 'backbow project';
export const PROJECT_VERSION = 1;
export const PROJECT_EXTENSION = '.backbow.json';

/** Turns the build of version i + 1 into that of version i + 2. */
const MIGRATIONS: readonly ((build: Record<string, unknown>) => Record<string, unknown>)[] = [];

export function writeProject(build: Build): string {
  return `${JSON.stringify({ format: PROJECT_FORMAT, version: PROJECT_VERSION, build }, null, 2)}\n`;
}

function refuse(code: Problem['code'], parameter: string, value: unknown, message: string): CheckedBuild {
  return { ok: false, problems: [{ code, parameter, label: say`Project file`, value, message }] };
}

/** Reads a project file; nothing in it is corrected. */
export function readProject(text: string): CheckedBuild {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch (error) {
    return refuse(
      'not-json',
      'file',
      undefined,
      say`This is not a project file: it is not JSON (${(error as Error).message}).`,
    );
  }
  if (typeof data !== 'object' || data === null || !('format' in data) || data.format !== PROJECT_FORMAT) {
    return refuse(
      'not-a-project',
      'format',
      data,
      say`This is not a project file: it has no "format": "${PROJECT_FORMAT}".`,
    );
  }
  const version: unknown = 'version' in data ? data.version : undefined;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return refuse(
      'not-a-project',
      'version',
      version,
      say`The project file’s version is ${describeValue(version)}; it must be a whole number from 1 to ${PROJECT_VERSION}.`,
    );
  }
  if (version > PROJECT_VERSION) {
    return refuse(
      'newer-version',
      'version',
      version,
      say`The project file is of version ${version}; this program reads versions 1 to ${PROJECT_VERSION}. Open it with a newer release.`,
    );
  }
  const stored: unknown = 'build' in data ? data.build : undefined;
  if (typeof stored !== 'object' || stored === null || Array.isArray(stored)) return checkBuild(stored);
  const build = MIGRATIONS.slice(version - 1).reduce((old, migrate) => migrate(old), stored as Record<string, unknown>);
  return checkBuild(build);
}

/** The keys of a build, in the order of the file. */
export const BUILD_KEYS = Object.keys(defaultBuild()) as (keyof Build)[];
