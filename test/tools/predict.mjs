/**
 * `npm run --silent predict -- build.json`: installs what is missing, then runs src/app/predict.ts as it stands, which
 * Node by itself could not read. File names mean files in the folder from which npm was called.
 */
import { ensureInstalled, requireNode } from './project.mjs';

requireNode();
if (!(await ensureInstalled())) process.exit(1);
if (process.env['INIT_CWD']) process.chdir(process.env['INIT_CWD']);
const { register } = await import('tsx/esm/api');
register();
await import('../../src/app/predict.ts');
