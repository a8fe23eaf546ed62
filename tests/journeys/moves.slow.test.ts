import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { awayDays, manyAtOnce, on, twoRooms } from '../simulation/two-rooms.ts';
import { emptyFolder, flylarder } from './command-line.ts';

it('cups are carried to the cellar with the commands that today gives, and nothing has to be bought', () => {
  const folder = emptyFolder();
  const drafts = [...twoRooms(manyAtOnce), awayDays];
  writeFileSync(join(folder, 'start.jsonl'), drafts.map((draft) => `${JSON.stringify(draft)}\n`).join(''));
  expect(flylarder(folder, ['import', 'start.jsonl'])).toMatchObject({ status: 0, err: '' });
  const { out } = flylarder(folder, ['today', '--on', on]);
  expect(out).toMatch(/Move C\d to Cellar\.\n +At Cellar the first flies of C\d come/);
  const commands = [...out.matchAll(/flylarder (record moved culture=c\d place=cellar on=\S+)/g)];
  expect(commands.length).toBeGreaterThan(0);
  for (const [, command = ''] of commands) expect(flylarder(folder, command.split(' '))).toMatchObject({ status: 0 });
  const { jobs, cultures } = JSON.parse(flylarder(folder, ['today', '--on', on, '--json']).out);
  const kinds = jobs.map(({ kind }: { kind: string }) => kind);
  expect(kinds).not.toContain('move');
  expect(kinds).not.toContain('buy');
  const carried = cultures.filter(({ place }: { place: string }) => place === 'cellar');
  expect(carried).toHaveLength(commands.length);
});
