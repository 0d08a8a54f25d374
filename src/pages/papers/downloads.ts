/** Hands the papers' files to the person. What is rarely asked for is loaded when it is. */
import type { Build } from '../../neck/build.ts';
import type { UnitSystem } from '../../neck/units.ts';
import { PROGRAM_VERSION } from '../../neck/version.ts';
import type { Table } from '../../fretwork/plan/tables.ts';
import { templateSvg } from '../../fretwork/plan/template.ts';
import type { BackbowStore } from '../../state/store.ts';
import { SOLVER_WORDS } from '../../speech/en/workshop/solver.ts';
import { SHEETS_WORDS } from '../../speech/en/pages/sheets.ts';
import { FILES_WORDS, STAMP_WORDS } from '../../speech/en/pages/papers.ts';
import { csvFileName, csvText } from './csv-file.ts';
import { fileName } from '../../kit/file-name.ts';
import { offerDownload } from '../../kit/files.ts';
import { pictureNow } from './picture-source.ts';
import { stampOnDevice } from './stamp/made.ts';
import { templateWords } from './template-words.ts';

const bytes = (content: Uint8Array, type: string) => new Blob([content as Uint8Array<ArrayBuffer>], { type });

export function saveTable(build: Build, table: Table): void {
  offerDownload(
    csvFileName(build, table, stampOnDevice(build)),
    new Blob([csvText(table)], { type: 'text/csv;charset=utf-8' }),
  );
}

export async function saveAllTables(build: Build, tables: readonly Table[]): Promise<void> {
  const { strToU8, zipSync } = await import('fflate');
  const stamp = stampOnDevice(build);
  const entries = tables.map((table) => [csvFileName(build, table, stamp), strToU8(csvText(table))] as const);
  offerDownload(
    fileName(build.name, `tables-${stamp}.zip`),
    bytes(zipSync(Object.fromEntries(entries)), 'application/zip'),
  );
}

export function saveTemplate(build: Build, system: UnitSystem, date: string): void {
  const svg = templateSvg(build, templateWords(build, system, date, stampOnDevice(build)));
  offerDownload(fileName(build.name, 'template.svg'), new Blob([svg], { type: 'image/svg+xml' }));
}

export async function saveModel(store: BackbowStore): Promise<void> {
  const { neckFile } = await import('./neck-file.ts');
  const state = store.getState();
  const glb = await neckFile(state);
  offerDownload(fileName(state.solution!.build.name, 'neck.glb'), bytes(glb, 'model/gltf-binary'));
}

const PICTURE = { widthPx: 2400, heightPx: 1500 } as const;

/** @throws {Error} when no picture is drawn */
export async function savePicture(store: BackbowStore): Promise<void> {
  const { build, notComputed } = store.getState();
  if (notComputed?.what === 'prediction') throw new Error(SOLVER_WORDS.notComputed);
  const picture = pictureNow();
  if (!picture) throw new Error(FILES_WORDS.noPicture);
  const caption = FILES_WORDS.caption(
    build.name,
    SHEETS_WORDS.version(PROGRAM_VERSION),
    STAMP_WORDS.stamp(stampOnDevice(build)),
  );
  offerDownload(
    fileName(build.name, 'picture.png'),
    await picture.exportPng({ ...PICTURE, caption, scaleNote: FILES_WORDS.scaleNote }),
  );
}
