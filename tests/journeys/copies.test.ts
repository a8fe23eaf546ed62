import { copyFileSync, existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { emptyFolder, flylarder } from './command-line.ts';

describe('copies', () => {
  it('backup, a mistake, restore: what was copied is back, and nothing is thrown away', () => {
    const folder = emptyFolder();
    flylarder(folder, ['record', 'note', 'text=first']);
    const before = flylarder(folder, ['export']).out;
    expect(flylarder(folder, ['backup', 'copy.sqlite'])).toMatchObject({ status: 0, err: '' });
    flylarder(folder, ['record', 'note', 'text=second']);
    const restored = flylarder(folder, ['restore', 'copy.sqlite']);
    expect(restored).toMatchObject({ status: 0, err: '' });
    expect(flylarder(folder, ['export']).out).toBe(before);
    const aside = readdirSync(join(folder, 'household')).find((name) => name.includes('set-aside')) as string;
    expect(restored.out).toContain(aside);
    expect(flylarder(folder, ['doctor', join('household', aside)]).out).toMatch(/2 readable entries/);
  });

  it('refuses a file that is there already, and a copy that is none', () => {
    const folder = emptyFolder();
    flylarder(folder, ['record', 'note', 'text=first']);
    const before = flylarder(folder, ['export']).out;
    writeFileSync(join(folder, 'letter.txt'), 'Dear fly keeper');
    expect(flylarder(folder, ['backup', 'letter.txt']).status).toBe(2);
    expect(readFileSync(join(folder, 'letter.txt'), 'utf8')).toBe('Dear fly keeper');
    expect(flylarder(folder, ['restore', 'letter.txt'])).toMatchObject({ status: 2, out: '' });
    expect(flylarder(folder, ['restore', 'missing.sqlite']).status).toBe(2);
    expect(flylarder(folder, ['export']).out).toBe(before);
  });
});

describe('doctor', () => {
  it('finds a sound logbook sound', () => {
    const folder = emptyFolder();
    flylarder(folder, ['record', 'note', 'text=first']);
    expect(flylarder(folder, ['doctor'])).toMatchObject({ status: 0, err: '' });
    expect(flylarder(folder, ['doctor', 'missing.sqlite']).status).toBe(2);
  });

  it('names damage, and saves what can be read into a new household', () => {
    const folder = emptyFolder();
    const notes = Array.from({ length: 400 }, (_, i) => `{"kind":"note","on":"2026-10-01","text":"note ${i}"}\n`);
    flylarder(folder, ['record', '-'], notes.join(''));
    const file = join(folder, 'damaged.sqlite');
    copyFileSync(join(folder, 'household', 'logbook.sqlite'), file);
    const bytes = readFileSync(file);
    // Four pages in the middle are overwritten, as by a failing card.
    bytes.fill(0xaa, Math.floor(bytes.length / 2), Math.floor(bytes.length / 2) + 4 * 4096);
    writeFileSync(file, bytes);
    const found = flylarder(folder, ['doctor', 'damaged.sqlite', '--save', 'saved', '--json']);
    expect(found.status).toBe(1);
    const { readable, damage } = JSON.parse(found.out);
    expect(damage.length).toBeGreaterThan(0);
    expect(readable).toBeGreaterThan(200);
    const saved = flylarder(folder, ['export', '--data', 'saved']).out.trim().split('\n');
    expect(saved).toHaveLength(readable);
    expect(existsSync(join(folder, 'saved', 'logbook.sqlite'))).toBe(true);
  });
});

describe('a logbook in which two people ended one cup at the same moment', () => {
  const entry = (n: number, fields: object) =>
    JSON.stringify({
      id: `0190a000-0000-7000-8000-00000000000${n}`,
      on: '2026-10-01',
      recordedAt: '2026-10-01T10:00:00.000Z',
      by: 'ada',
      culture: 'M1',
      ...fields,
    });
  const whole = [
    entry(1, { kind: 'started', strain: 'melanogaster', founders: 50 }),
    entry(2, { kind: 'ended', reason: 'mould' }),
    entry(3, { kind: 'ended', reason: 'spent', by: 'ben' }),
    '',
  ].join('\n');

  it('is brought into an empty household as it is, and told what contradicts', () => {
    const folder = emptyFolder();
    const { status, out, err } = flylarder(folder, ['import', '-'], whole);
    expect([status, out]).toEqual([1, 'Recorded 3 entries.\n']);
    expect(err).toMatch(/^Kept as it was written: .*line 3, on: found another end of M1/);
    expect(flylarder(folder, ['export']).out.trim().split('\n')).toHaveLength(3);
  });

  it('is refused beside other entries, and where lines were written by hand', () => {
    const folder = emptyFolder();
    const { id: _, ...byHand } = JSON.parse(entry(4, { kind: 'note', text: 'by hand' }));
    expect(
      flylarder(
        folder,
        ['import', '-'],
        `${whole}${JSON.stringify({ kind: byHand.kind, on: byHand.on, text: byHand.text })}\n`,
      ).status,
    ).toBe(2);
    flylarder(folder, ['record', 'note', 'text=there already']);
    expect(flylarder(folder, ['import', '-'], whole).status).toBe(2);
  });
});
