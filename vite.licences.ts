/** A Vite plugin: lists the packages that went into a bundle with the text of each one's licence. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { Plugin } from 'vite';

/** Writes `fileName` into the bundle's folder. */
export function bundledLicences(fileName: string): Plugin {
  return {
    name: 'bundled-licences',
    apply: 'build',
    generateBundle(_options, bundle) {
      const moduleIds = Object.values(bundle).flatMap((part) => (part.type === 'chunk' ? part.moduleIds : []));
      const folders = new Set(moduleIds.map(packageFolder).filter((folder) => folder !== null));
      this.emitFile({ type: 'asset', fileName, source: licenceList([...folders].sort()) });
    },
  };
}

/** The folder of the installed package that a module belongs to, or null. */
function packageFolder(moduleId: string): string | null {
  const path = moduleId.replace(/^\0/, '').split('?')[0] as string;
  for (let folder = dirname(path); folder.includes('/node_modules/'); folder = dirname(folder)) {
    if (existsSync(join(folder, 'package.json')) && manifest(folder).version) return folder;
  }
  return null;
}

function manifest(folder: string): { name?: string; version?: string; license?: string } {
  return JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
}

/** Packages under the same text stand together above it. */
function licenceList(folders: string[]): string {
  const namesByText = new Map<string, string[]>();
  for (const folder of folders) {
    const { name, version, license } = manifest(folder);
    const text = licenceText(folder);
    namesByText.set(text, [...(namesByText.get(text) ?? []), `${name} ${version} (${license})`]);
  }
  return [...namesByText].map(([text, names]) => `${names.join('\n')}\n\n${text}\n`).join(`\n${'='.repeat(78)}\n`);
}

function licenceText(folder: string): string {
  const file = readdirSync(folder).find((entry) => /^licen[cs]e/i.test(entry));
  return file ? readFileSync(join(folder, file), 'utf8').trim() : 'The package carries no licence file of its own.';
}
