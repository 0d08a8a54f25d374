/**
 * Finding Chromium for the browser tests, and installing Debian's when there is none. No dependencies.
 */
import { accessSync, constants, existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { run } from './project.mjs';

const NAMES = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome', 'chrome'];

/** Places outside the path where systems put it. */
const PLACES = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/snap/bin/chromium',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe',
];

/** Debian's packages: the browser, and Mesa's llvmpipe, which draws twice as fast as the browser's own software renderer. */
export const DEBIAN_PACKAGES = [
  'chromium',
  'libgl1-mesa-dri',
  'libegl1',
  'libegl-mesa0',
  'libgl1',
  'libgles2',
  'libglx-mesa0',
];

/**
 * @param {string} path
 * @returns {boolean}
 */
function isProgram(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/**
 * The Chromium to drive: CHROMIUM_PATH when it is set, and nothing else then; otherwise the first found.
 * @param {NodeJS.ProcessEnv} [env]
 * @returns {string | undefined}
 */
export function findChromium(env = process.env) {
  const chosen = env['CHROMIUM_PATH'];
  if (chosen) return isProgram(chosen) ? chosen : undefined;
  const onPath = (env['PATH'] ?? '')
    .split(delimiter)
    .filter(Boolean)
    .flatMap((folder) => NAMES.map((name) => join(folder, process.platform === 'win32' ? `${name}.exe` : name)));
  return [...onPath, ...PLACES].find(isProgram);
}

/**
 * Finds Chromium, installing Debian's packages when there is none, apt-get is here and we may use it.
 * @returns {Promise<string | undefined>} its path; when there is none, what to do has been said on stderr
 */
export async function ensureChromium() {
  const found = findChromium();
  if (found) return found;
  const chosen = process.env['CHROMIUM_PATH'];
  if (chosen) {
    console.error(`CHROMIUM_PATH is “${chosen}”, which is not a program. Correct it or unset it.`);
    return undefined;
  }
  const isRoot = process.getuid?.() === 0;
  const hasAptGet = existsSync('/usr/bin/apt-get');
  if (isRoot && hasAptGet) {
    console.log(`Installing Chromium (apt-get install ${DEBIAN_PACKAGES.join(' ')}) …`);
    const quiet = { DEBIAN_FRONTEND: 'noninteractive' };
    await run('apt-get', ['update', '-q'], quiet);
    await run('apt-get', ['install', '-y', '-q', '--no-install-recommends', ...DEBIAN_PACKAGES], quiet);
    const installed = findChromium();
    if (installed) return installed;
    console.error('Chromium could not be installed; see above.');
  }
  console.error(
    hasAptGet
      ? `The browser tests need Chromium. Install it: sudo apt-get install ${DEBIAN_PACKAGES.join(' ')}`
      : 'The browser tests need Chromium. Install Chromium or Chrome from your system’s packages.',
  );
  console.error('If it is somewhere else, say where: CHROMIUM_PATH=/path/to/chromium npm test');
  return undefined;
}
