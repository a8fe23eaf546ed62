import { readdirSync } from 'node:fs';
import { basename, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { filesIn, isTest, projectFolder, sourceFiles, textOf } from './sources.ts';

/** The rooms, as the first column of the table in docs/architecture.md names them. */
const rooms = [...textOf('docs/architecture.md').matchAll(/^\| ([a-z]+) \|/gm)]
  .map((row) => row[1] as string)
  .filter((name) => name !== 'room');

describe('rooms', () => {
  it('src/ holds the rooms of the table and no other', () => {
    expect(rooms.length).toBeGreaterThan(10);
    expect(readdirSync(join(projectFolder, 'src')).sort()).toEqual([...rooms].sort());
  });

  it('no room or file is a drawer for things without a subject', () => {
    const drawer = /^(util|utils|common|shared|helper|helpers|misc|lib)$/;
    const found = sourceFiles.filter((path) => path.split('/').some((part) => drawer.test(part.split('.')[0] ?? '')));
    expect(found).toEqual([]);
  });

  it('files are named in kebab-case, components in PascalCase', () => {
    const wrong = sourceFiles.filter((path) => {
      const name = basename(path);
      return name.endsWith('.svelte')
        ? !/^[A-Z][A-Za-z0-9]*\.svelte$/.test(name)
        : !/^[a-z0-9]+(-[a-z0-9]+)*(\.slow|\.properties)?(\.test|\.d|\.svelte)?\.ts$/.test(name);
    });
    expect(wrong).toEqual([]);
  });

  it('a room that others may enter has an index.ts with explicit names', () => {
    const entered = rooms.filter((room) => !['store', 'web', 'cli'].includes(room));
    for (const room of entered) {
      expect(textOf(`src/${room}/index.ts`), room).not.toMatch(/export \*/);
    }
  });
});

describe('sources', () => {
  const all = [...sourceFiles, ...filesIn('tests', ['.ts']), ...filesIn('bench', ['.ts'])];
  const without = (pattern: RegExp, among = all) =>
    among.filter((path) => !path.startsWith('tests/architecture/') && pattern.test(textOf(path)));

  it('silence no check', () => {
    const silencers = /@ts-(ignore|expect-error|nocheck)|(oxlint|eslint)-disable|biome-ignore|svelte-ignore|\bas any\b/;
    expect(without(silencers)).toEqual([]);
  });

  it('leave out no test', () => {
    expect(without(/\b(it|test|describe)\.(skip|only|todo|fails)\(/)).toEqual([]);
  });

  it('import with the .ts ending', () => {
    expect(without(/from '\.{1,2}\/[^']*(?<!\.ts|\.svelte|\.mjs|\.css|\?raw|\?worker|\?url|\?worker&url)'/)).toEqual(
      [],
    );
  });

  it('pure rooms name no platform in their types', () => {
    const pure = 'foundation reference biology climate strains animals media logbook learning planner paper app'.split(
      ' ',
    );
    const files = sourceFiles.filter((path) => pure.includes(path.split('/')[1] as string) && !isTest(path));
    expect(without(/from 'node:|\/\/\/ <reference/, files)).toEqual([]);
  });
});
