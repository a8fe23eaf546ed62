import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { emptyFolder } from './command-line.ts';
import { commandsOf, runPrinted } from './documented-commands.ts';

/** Those that reckon for long are run by the slow tests. */
const slowOnes = /flylarder (today|forecast|plan|compare|learned|hindcast|temperature|calendar)/;

it('what README.md prints for the command line can be typed as it stands, in its order', () => {
  const folder = emptyFolder();
  writeFileSync(join(folder, 'cups.csv'), 'Cup no.;Species;Made\nA1;D. melanogaster;03.11.2026\n');
  const commands = commandsOf('README.md').filter((c) => c.startsWith('npx flylarder') && !slowOnes.test(c));
  expect(commands.length).toBeGreaterThan(5);
  for (const command of commands)
    expect([command, runPrinted(folder, command)]).toMatchObject([command, { status: 0, err: '' }]);
});
