import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { emptyFolder, flylarder } from './command-line.ts';
import { commandsOf, runPrinted } from './documented-commands.ts';
import { serve } from './serving.ts';

it('every command that README.md prints for the command line gives an answer', () => {
  const folder = emptyFolder();
  writeFileSync(join(folder, 'cups.csv'), 'Cup no.;Species;Made\nA1;D. melanogaster;03.11.2026\n');
  for (const command of commandsOf('README.md').filter((c) => c.startsWith('npx flylarder'))) {
    const { status, out, err } = runPrinted(folder, command);
    // 1 is an answer too: a warning that needs the keeper.
    expect([command, [0, 1].includes(status as number), err]).toEqual([command, true, '']);
    if (!command.includes('>')) expect([command, out.length > 20]).toEqual([command, true]);
  }
});

it('every command that docs/formats/http.md prints is answered by a server that runs', async () => {
  const folder = emptyFolder();
  expect(flylarder(folder, ['demo']).status).toBe(0);
  const started = ['culture=M12', 'strain=stubwing', 'founders=50', 'on=2026-11-01'];
  expect(flylarder(folder, ['record', 'started', ...started])).toMatchObject({ status: 0 });
  const { address } = await serve(folder);
  for (const command of commandsOf('docs/formats/http.md')) {
    const { status, out } = runPrinted(
      folder,
      command.replace('http://localhost:4180/', address).replace('curl', 'curl --fail --silent'),
    );
    expect([command, status, command.includes('>') || out.length > 20]).toEqual([command, 0, true]);
  }
});
