import { describe, expect, it } from 'vitest';
import { end, entry, harvest, start } from '../../../tests/fixtures/entries-written.ts';
import type { Entry } from '../entries/entry.ts';
import { checkBatch } from './batch-check.ts';
import { fold } from './fold.ts';

describe('contradictions are listed, left out, and refused at a door', () => {
  const log = [start('2026-03-01', 'M1'), end('2026-04-01', 'M1')];
  const cases: [name: string, bad: Entry, field: string, found: RegExp][] = [
    ['harvested before its start', harvest('2026-02-27', 'M1'), 'on', /2026-02-27, before M1 was started/],
    ['harvested after its end', harvest('2026-04-02', 'M1'), 'on', /2026-04-02, after M1 had ended/],
    ['ended twice', end('2026-04-01', 'M1'), 'on', /another end of M1, which had ended on 2026-04-01/],
    ['started twice', start('2026-03-05', 'M1'), 'culture', /M1, started already on 2026-03-01/],
    ['an unknown culture', harvest('2026-03-20', 'M9'), 'culture', /M9, a culture that was never started/],
    ['an unknown strain', start('2026-03-05', 'M2', { strain: 'simulans' }), 'strain', /simulans/],
    ['an unknown place', start('2026-03-05', 'M2', { place: 'attic' }), 'place', /attic/],
    ['an unknown container', start('2026-03-05', 'M2', { container: 'tub' }), 'container', /tub/],
    ['an unknown batch', start('2026-03-05', 'M2', { batch: 'B7' }), 'batch', /B7/],
    ['founders from an unknown cup', start('2026-03-05', 'M2', { fromCultures: ['M8'] }), 'fromCultures', /M8/],
    ['founders from an ended cup', start('2026-05-05', 'M2', { fromCultures: ['M1'] }), 'fromCultures', /after M1 had/],
    ['a move to nowhere', entry('2026-03-05', 'moved', { culture: 'M1', place: 'attic' }), 'place', /attic/],
    ['a reading from nowhere', entry('2026-03-05', 'temperature', { place: 'attic', meanC: 20 }), 'place', /attic/],
    ['an unknown group', entry('2026-03-05', 'fed', { group: 'owls', flies: 3 }), 'group', /owls/],
    [
      'an amendment of nothing',
      entry('2026-03-05', 'amended', { amends: '019f0000-0000-7000-8000-999999999999', void: true }),
      'amends',
      /not in the logbook/,
    ],
    ['an id that is taken', { ...harvest('2026-03-20', 'M1'), id: (log[0] as Entry).id }, '', /same id/],
  ];
  it.each([
    [start('2026-03-05', 'M2', { strain: 'melanogater' }), 'the key of a strain, perhaps melanogaster'],
    [harvest('2026-03-20', 'm1'), 'the key of a culture, perhaps M1'],
    [start('2026-03-05', 'M2', { strain: 'simulans' }), 'the key of a strain'],
  ])('names the known key that was most likely meant: %j', (bad, expected) =>
    expect(fold([...log, bad]).problems[0]?.expected).toBe(expected),
  );

  for (const [name, bad, field, found] of cases) {
    it(name, () => {
      const [problem] = fold([...log, bad]).problems;
      expect(problem).toMatchObject({ entryId: bad.id });
      expect(problem?.where).toBe(field ? `entry ${bad.id}, ${field}` : `entry ${bad.id}`);
      expect(problem?.found).toMatch(found);
      const refused = checkBatch([bad], log, (_, i) => `a.jsonl, line ${i + 1}`);
      expect(refused.ok ? [] : refused.problems.map((p) => p.where)).toEqual([
        field ? `a.jsonl, line 1, ${field}` : 'a.jsonl, line 1',
      ]);
    });
  }

  it('a batch is judged with what it brings itself', () => {
    expect(checkBatch([harvest('2026-05-20', 'M5'), start('2026-05-01', 'M5')], log).ok).toBe(true);
  });
  it('an amendment that makes an older entry wrong is refused, and the older entry named', () => {
    const older = [...log, harvest('2026-03-20', 'M1')];
    const undo = entry('2026-05-01', 'amended', { amends: (log[0] as Entry).id, void: true });
    const refused = checkBatch([undo], older);
    expect(refused.ok ? [] : refused.problems.map((p) => p.found)).toContainEqual(
      expect.stringMatching(/contradicted by this/),
    );
  });
  it('what was wrong before does not stand in the way', () => {
    expect(checkBatch([start('2026-05-01', 'M6')], [...log, harvest('2026-04-20', 'M1')]).ok).toBe(true);
  });
});
