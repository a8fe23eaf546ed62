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
      this.emitFile({ type: 'asset', fileName, source: [...folders].sort().map(licenceSection).join('\n') });
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

function licenceSection(folder: string): string {
  const { name, version, license } = manifest(folder);
  const file = readdirSync(folder).find((entry) => /^licen[cs]e/i.test(entry));
  const text = file ? readFileSync(join(folder, file), 'utf8').trim() : '(the package carries no licence file)';
  const line = '='.repeat(78);
  return `${line}\n${name} ${version}, licence ${license}\n${line}\n\n${text}\n`;
}
