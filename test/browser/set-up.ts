/** Before the first browser test: the page is built and Chromium is there, once for all files, which run side by side. */
import { ensureChromium } from '../tools/chromium.mjs';
import { ensureBuilt } from '../tools/project.mjs';

export default async function setUp(): Promise<void> {
  if (!(await ensureBuilt())) throw new Error('The page could not be built; see above.');
  if (!(await ensureChromium())) throw new Error('There is no Chromium; what to install is said above.');
}
