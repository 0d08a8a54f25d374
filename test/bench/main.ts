/**
 * `npm run bench`: runs every `*.bench.ts` in this folder and prints one table.
 *
 * `npm run bench -- solver` runs the files whose name contains “solver”; `npm run bench -- --save` also keeps the table as
 * `test/bench/results/<version>.md`. The sources are bundled first the way they are for the page, so what is measured is
 * what the browser runs.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { cpus } from 'node:os';
import { join } from 'node:path';
import packageJson from '../../package.json' with { type: 'json' };
import { root } from '../tools/project.mjs';
import { measureYardstick, type Bench } from './measure.ts';
import { tableOf } from './table.ts';

const files = import.meta.glob<Bench>('./*.bench.ts', { import: 'default' });

const wanted = process.argv.slice(2).filter((word) => !word.startsWith('--'));
const chosen = Object.keys(files).filter((name) => wanted.length === 0 || wanted.some((word) => name.includes(word)));
if (wanted.length > 0 && chosen.length === 0) {
  console.error(`No bench file is called that; there are: ${Object.keys(files).join(', ') || 'none'}`);
  process.exit(1);
}

const { yardstick, row } = await measureYardstick();
const rows = [row];
for (const name of chosen) {
  process.stderr.write(`${name} …\n`);
  const bench = await files[name]?.();
  // What one file leaves behind is not cleared away in the time of the next.
  globalThis.gc?.();
  if (bench) rows.push(...(await bench(yardstick)));
}

const processors = cpus();
const machine = `Node ${process.versions.node}, ${processors.length} × ${processors[0]?.model.trim() ?? 'unknown processor'}`;
const report = `${tableOf(rows)}\n\n${machine}\n`;
process.stdout.write(report);
if (process.argv.includes('--save')) {
  const folder = join(root, 'test', 'bench', 'results');
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, `${packageJson.version}.md`), `# Bench of version ${packageJson.version}\n\n${report}`);
}
