/**
 * Work kept from one command to the next, in `cache/` of the household's folder: after a few notes only
 * the cups that they speak of are weighed anew. The file may be deleted at any time, and one that was
 * written by another build, or is damaged, is not read.
 */
import { mkdirSync, readFileSync, renameSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { deserialize, serialize } from 'node:v8';
import { type KeptWork, keptWork, keptWorkChanges, recallWork } from '../app/index.ts';
import { flylarderVersion } from './version.ts';

interface KeptFile {
  build: string;
  work: KeptWork;
}

/** Runs `act` with the work kept in the folder, and keeps what is new; null = nothing is kept. */
export async function withKeptWork<T>(folder: string | null, act: () => Promise<T>): Promise<T> {
  if (folder === null) return act();
  recallWorkOf(folder);
  const before = keptWorkChanges();
  const result = await act();
  if (keptWorkChanges() > before) keepWork(folder);
  return result;
}

export function recallWorkOf(folder: string): void {
  try {
    const kept = deserialize(readFileSync(fileIn(folder))) as KeptFile;
    if (kept.build === thisBuild()) recallWork(kept.work);
  } catch {
    // No file yet, or not one of ours: the work is done again.
  }
}

export function keepWork(folder: string): void {
  try {
    mkdirSync(join(folder, 'cache'), { recursive: true });
    const file: KeptFile = { build: thisBuild(), work: keptWork() };
    const beside = `${fileIn(folder)}.${process.pid}`;
    writeFileSync(beside, serialize(file));
    renameSync(beside, fileIn(folder));
  } catch {
    // A folder that can't be written still answers; only later.
  }
}

function fileIn(folder: string): string {
  return join(folder, 'cache', 'work');
}

/** Another build may compute otherwise under the same version while it is being worked on. */
function thisBuild(): string {
  return `${flylarderVersion} ${statSync(fileURLToPath(import.meta.url)).mtimeMs} ${process.version}`;
}
