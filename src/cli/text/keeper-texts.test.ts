import { describe, expect, it } from 'vitest';
import { animals, lines, ration, starterRations } from '../../app/index.ts';
import { addDays, day } from '../../foundation/index.ts';
import { type Entry, fold } from '../../logbook/index.ts';
import { animalsText } from './animals-text.ts';
import { columns } from './layout.ts';
import { linesText } from './lines-text.ts';
import { rationText, starterText } from './ration-text.ts';

const on = day('2026-11-25');
const drafts = [
  { kind: 'household', presumeFeeding: false },
  { kind: 'strain', strain: 'stubs', base: 'melanogaster', mutation: 'vg' },
  {
    kind: 'group',
    group: 'g',
    name: 'Frogs',
    animal: 'dart-frog-medium',
    count: 4,
    fliesPerFeeding: 30,
    strain: 'stubs',
  },
  { kind: 'fed', group: 'g', flies: 120, leftOver: 'plenty', on: addDays(on, -9) },
  {
    kind: 'group',
    group: 'n',
    name: 'Nymphs',
    count: 120,
    fliesPerFeeding: 3,
    strain: 'stubs',
    from: '2026-12-10',
    arrival: { earliest: '2026-12-10', latest: '2026-12-20', countLow: 40, countHigh: 200 },
  },
  { kind: 'started', culture: 'a', label: 'S1', strain: 'stubs', founders: 50, on: addDays(on, -30) },
  {
    kind: 'started',
    culture: 'b',
    label: 'S2',
    strain: 'stubs',
    founders: 50,
    fromCultures: ['a'],
    on: addDays(on, -5),
  },
  { kind: 'seen', culture: 'a', mites: true, winged: 1, on: addDays(on, -1) },
];
const facts = fold(
  drafts.map((draft, i) => ({
    on: addDays(on, -40),
    ...draft,
    id: `0190a000-0000-7000-8000-${String(i).padStart(12, '0')}`,
    recordedAt: '2026-11-24T20:00:00Z',
    by: 'test',
  })) as unknown as Entry[],
);

describe('keeper texts', () => {
  const need = animalsText(animals(facts, { on, weeks: 2 }));
  const threats = linesText(lines(facts, { on }));
  const given = ration(facts, { animal: 'dart-frog-medium', on });
  const rations = given.ok ? rationText(given.value) : [];
  it('fit a terminal', () => {
    for (const line of [...need, ...threats, ...rations, ...starterText(starterRations())])
      expect(line.length, line).toBeLessThanOrEqual(columns);
  });
  it('say who waits too long and what is expected to hatch', () => {
    expect(need[0]).toMatch(/^! Frogs: last fed on Mon 16 Nov/);
    expect(need.join('\n')).toMatch(/Nymphs: 40 to 200 expected from 2026-12-10 to 2026-12-20/);
  });
  it('say what threatens a line, what to do and where it may have gone', () => {
    const text = threats.join('\n');
    expect(text).toMatch(/! S1, winged flies/);
    expect(text).toMatch(/one contact away: S2 \(offspring/);
    expect(text).toMatch(/2026-11-25 {2}Tap every adult out/);
  });
  it('set practice beside energy', () => {
    expect(rations.join('\n')).toMatch(/practice.*\n.*energy/);
    expect(rations.join(' ')).toMatch(/ask a vet/);
  });
});
