import { expect, it } from 'vitest';
import { filesIn, sourceFiles, textOf } from './sources.ts';

const code = ['.ts', '.svelte', '.mjs'];
const everywhere = [...sourceFiles, ...['tests', 'bench', 'scripts'].flatMap((folder) => filesIn(folder, code))];
/** A room's door repeats names and is no use of them. */
const isDoor = (path: string) => path.endsWith('/index.ts');

/** In how many files, doors aside, each word stands. */
const filesByWord = new Map<string, number>();
for (const path of everywhere.filter((file) => !isDoor(file))) {
  for (const word of new Set(textOf(path).match(/[A-Za-z_$][\w$]*/g))) {
    filesByWord.set(word, (filesByWord.get(word) ?? 0) + 1);
  }
}

it('nothing is exported that nothing uses, in its own file or in another', () => {
  const unused = sourceFiles
    .filter((path) => path.endsWith('.ts') && !isDoor(path))
    .flatMap((path) => {
      const text = textOf(path);
      const names = [...text.matchAll(/^export (?:async )?(?:function\*?|const|class|interface|type) ([\w$]+)/gm)];
      return names
        .map(([, name]) => name as string)
        .filter((name) => filesByWord.get(name) === 1 && text.split(new RegExp(`\\b${name}\\b`)).length === 2)
        .map((name) => `${path}: ${name}`);
    });
  expect(unused).toEqual([]);
});
