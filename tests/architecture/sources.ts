/** The project's own sources, for tests of the house's shape. */
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';

export const projectFolder = fileURLToPath(new URL('../..', import.meta.url));

/** Paths below `folder` (from the project's folder) whose name ends in one of `endings`. */
export function filesIn(folder: string, endings: readonly string[]): string[] {
  return readdirSync(join(projectFolder, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && endings.some((ending) => entry.name.endsWith(ending)))
    .map((entry) => relative(projectFolder, join(entry.parentPath, entry.name)))
    .sort();
}

export function textOf(path: string): string {
  return readFileSync(join(projectFolder, path), 'utf8');
}

export const sourceFiles = filesIn('src', ['.ts', '.svelte']);
export const isTest = (path: string) => path.endsWith('.test.ts');
