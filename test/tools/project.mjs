/**
 * Where the project is, and how its own commands are run. No dependencies: this has to work before anything is installed.
 */
import { spawn } from 'node:child_process';
import { existsSync, readFileSync, readdirSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The oldest Node that the tools run on: major and minor. */
const OLDEST_NODE = [20, 19];

/**
 * The folder that holds package.json, found upwards from this file (which may have been bundled elsewhere).
 * @returns {string}
 */
function findRoot() {
  let folder = dirname(fileURLToPath(import.meta.url));
  while (!existsSync(join(folder, 'package.json'))) {
    const parent = dirname(folder);
    if (parent === folder) throw new Error('package.json was not found in any folder above this file');
    folder = parent;
  }
  return folder;
}

/** The folder of the project. */
export const root = findRoot();

/** Ends the process with a plain message when this Node is too old. */
export function requireNode() {
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
  const [oldestMajor = 0, oldestMinor = 0] = OLDEST_NODE;
  if (major > oldestMajor || (major === oldestMajor && minor >= oldestMinor)) return;
  console.error(`Backbow needs Node ${OLDEST_NODE.join('.')} or newer; this is Node ${process.versions.node}.`);
  process.exit(1);
}

/**
 * Runs a program in the project's folder, its output going straight to ours and nothing coming in.
 * @param {string} command
 * @param {string[]} commandArguments
 * @param {NodeJS.ProcessEnv} [env] added to ours
 * @param {'stdout' | 'stderr'} [output] where what it says on its standard output goes
 * @returns {Promise<number>} the exit code; 1 when the program was stopped by a signal or could not be started
 */
export function run(command, commandArguments, env = {}, output = 'stdout') {
  return new Promise((resolve) => {
    const child = spawn(command, commandArguments, {
      cwd: root,
      env: { ...process.env, ...env },
      stdio: ['ignore', output === 'stdout' ? 1 : 2, 2],
      // On Windows npm is a batch file, which only a shell can start.
      shell: process.platform === 'win32' && command === 'npm',
    });
    child.on('error', (error) => {
      console.error(`${command} could not be started: ${error.message}`);
      resolve(1);
    });
    child.on('exit', (code) => resolve(code ?? 1));
  });
}

/**
 * Runs npm: the one that started us, or else the one on the path.
 * @param {string[]} npmArguments
 * @param {NodeJS.ProcessEnv} [env] added to ours
 * @param {'stdout' | 'stderr'} [output] where what it says on its standard output goes
 * @returns {Promise<number>} the exit code
 */
export function npm(npmArguments, env = {}, output = 'stdout') {
  const npmScript = process.env['npm_execpath'];
  if (npmScript && /\.c?js$/.test(npmScript)) return run(process.execPath, [npmScript, ...npmArguments], env, output);
  return run('npm', npmArguments, env, output);
}

/**
 * @param {string} path
 * @returns {{ packages?: Record<string, { version?: string, optional?: boolean }> } | undefined}
 */
function readLockfile(path) {
  try {
    return /** @type {ReturnType<typeof readLockfile>} */ (JSON.parse(readFileSync(path, 'utf8')));
  } catch {
    return undefined;
  }
}

/**
 * Whether node_modules holds what the lockfile asks for. npm keeps its own list of what it installed in
 * node_modules/.package-lock.json; comparing the two lists notices a new version after a pull and is not misled by the
 * times of files. Optional packages may be missing (they belong to other systems).
 * @param {string} [folder] the project's folder
 * @returns {boolean}
 */
export function isInstalled(folder = root) {
  const wanted = readLockfile(join(folder, 'package-lock.json'))?.packages;
  const present = readLockfile(join(folder, 'node_modules', '.package-lock.json'))?.packages;
  if (!wanted || !present) return false;
  return Object.entries(wanted).every(([path, { version, optional }]) => {
    if (path === '') return true;
    const found = present[path];
    if (!found) return optional === true;
    return found.version === version && existsSync(join(folder, path, 'package.json'));
  });
}

/**
 * Installs the packages of the lockfile when they are missing or not the ones asked for. What it says goes to standard
 * error, so that a command whose output is read by a program can use it.
 * @returns {Promise<boolean>} whether they are there now
 */
export async function ensureInstalled() {
  if (isInstalled()) return true;
  console.error('Installing what is missing (npm ci) …');
  // The build needs the development packages too, whatever NODE_ENV says.
  const code = await npm(['ci', '--include=dev', '--no-audit', '--no-fund'], {}, 'stderr');
  if (code === 0) return true;
  console.error('The packages could not be installed. Is there a connection to the package registry? See above.');
  return false;
}

/** What the built page depends on. */
const BUILD_INPUTS = ['index.html', 'package-lock.json', 'vite.config.ts', 'public', 'src'];

/**
 * The latest time of change of a file, or of a folder and everything in it. A folder's own time changes when a file in it
 * is added or removed.
 * @param {string} path
 * @returns {number} milliseconds since 1970; 0 when there is no such file
 */
function latestChange(path) {
  const stats = statSync(path, { throwIfNoEntry: false });
  if (!stats) return 0;
  if (!stats.isDirectory()) return stats.mtimeMs;
  return readdirSync(path).reduce((latest, name) => Math.max(latest, latestChange(join(path, name))), stats.mtimeMs);
}

/**
 * Whether dist is newer than everything it is made from.
 * @param {string} [folder] the project's folder
 * @returns {boolean}
 */
export function isBuilt(folder = root) {
  const built = statSync(join(folder, 'dist', 'index.html'), { throwIfNoEntry: false });
  if (!built) return false;
  return BUILD_INPUTS.every((name) => latestChange(join(folder, name)) <= built.mtimeMs);
}

/**
 * Builds dist when it is missing or older than the source.
 * @returns {Promise<boolean>} whether it is there now
 */
export async function ensureBuilt() {
  if (isBuilt()) return true;
  console.log('Building …');
  const code = await run(
    process.execPath,
    [join(root, 'node_modules', 'vite', 'bin', 'vite.js'), 'build', '--logLevel', 'warn'],
    { NODE_ENV: 'production' },
  );
  if (code === 0) return true;
  console.error('The page could not be built; see above.');
  return false;
}
