import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { emptyFolder, flylarder } from './command-line.ts';

const sheet = [
  'Cup no.;Species;Made;First flies;Thrown out;Room',
  '1;D. melanogaster;03.09.2026;15.09.2026;04.10.2026;loft',
  '2;D. hydei;10.09.2026;;;loft',
  '',
].join('\n');

describe("a keeper's own spreadsheet", () => {
  it('is shown first, written with --yes, and taken back as one act', () => {
    const folder = emptyFolder();
    writeFileSync(join(folder, 'cups.csv'), sheet);
    const shown = flylarder(folder, ['import', 'cups.csv']);
    expect(shown).toMatchObject({ status: 0, err: '' });
    expect(shown.out).toMatch(/Made +the day it was started +startedOn/);
    expect(shown.out).toMatch(/Nothing was written. Add --yes/);
    expect(existsSync(join(folder, 'household'))).toBe(false);

    const written = flylarder(folder, ['import', 'cups.csv', '--yes']);
    expect(written).toMatchObject({ status: 0, err: '' });
    const started = entriesOf(folder).filter(({ kind }) => kind === 'started');
    expect(started.map(({ on, strain }) => [on, strain])).toEqual([
      ['2026-09-03', 'melanogaster'],
      ['2026-09-10', 'hydei'],
    ]);

    const name = /--undo "([^"]+)"/.exec(written.out)?.[1] as string;
    expect(flylarder(folder, ['import', '--undo', name])).toMatchObject({ status: 0, err: '' });
    const tables = flylarder(folder, ['export', '--csv', 'tables']);
    expect(tables.status).toBe(0);
    expect(readdirSync(join(folder, 'tables')).filter((file) => file.startsWith('started'))).toEqual([]);
    expect(flylarder(folder, ['import', '--undo', name]).status).toBe(2);
  });

  it('takes columns as the keeper says, and refuses what it cannot read with line and column', () => {
    const folder = emptyFolder();
    writeFileSync(join(folder, 'odd.csv'), 'Box,Begun,Sort\nA,2026-09-03,hydei\nB,soon,hydei\n');
    const refused = flylarder(folder, [
      'import',
      'odd.csv',
      '--match',
      'Box=culture,Begun=startedOn,Sort=strain',
      '--yes',
    ]);
    expect(refused.status).toBe(2);
    expect(refused.err).toMatch(/odd\.csv.*line 3.*soon/);
    expect(existsSync(join(folder, 'household'))).toBe(false);
    expect(flylarder(folder, ['import', 'odd.csv', '--match', 'Bx=culture']).err).toMatch(
      /a column of Box, Begun, Sort/,
    );
    expect(flylarder(folder, ['import', 'odd.csv', '--match', 'Box=cultur']).err).toMatch(/expected culture/);
  });

  it('goes out as tables without anything that a spreadsheet would run', () => {
    const folder = emptyFolder();
    flylarder(folder, ['record', 'note', 'text==cmd|calc', 'on=2026-10-01']);
    flylarder(folder, ['export', '--csv', 'tables']);
    expect(readFileSync(join(folder, 'tables', 'note.csv'), 'utf8')).toMatch(/'=cmd\|calc/);
  });
});

function entriesOf(folder: string): { kind: string; on: string; strain?: string }[] {
  const lines = flylarder(folder, ['export']).out.trim().split('\n');
  return lines.map((line) => JSON.parse(line));
}
