/**
 * Reading the source for tests that are about the source itself.
 */
import { existsSync, readFileSync, readdirSync, statSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { root } from './project.mjs';

/** A file of the project: its path from the project's folder, with forward slashes, and its text. */
export interface SourceFile {
  path: string;
  text: string;
}

/** Folders that are made, not written. */
const MADE = new Set(['node_modules', 'dist', '.git', 'test/output']);

/**
 * All files under a folder of the project whose path matches.
 *
 * @param folder - from the project's folder, '' for all of it
 * @param pattern - of the path, such as `/\.tsx?$/`
 * @returns the files in the order of their paths; none when the folder is missing
 */
export function readFiles(folder: string, pattern: RegExp): SourceFile[] {
  const files: SourceFile[] = [];
  const visit = (path: string): void => {
    const name = relative(root, path).split(sep).join('/');
    if (MADE.has(name)) return;
    if (statSync(path).isDirectory()) for (const entry of readdirSync(path).sort()) visit(join(path, entry));
    else if (pattern.test(name)) files.push({ path: name, text: readFileSync(path, 'utf8') });
  };
  const start = join(root, folder);
  if (existsSync(start)) visit(start);
  return files;
}
