import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { randomLogbook, shuffled } from '../../../tests/replicas/random-logbook.ts';
import { canonicalText } from '../entries/canonical-text.ts';
import type { Entry, EntryOf } from '../entries/entry.ts';
import { fold } from './fold.ts';

const seeds = fc.integer({ min: 0, max: 1e9 });
const runs = { numRuns: 60 };

/** An amendment recorded after everything that `randomLogbook` records. */
function amendment(amends: string, n: number, body: Partial<EntryOf<'amended'>>): EntryOf<'amended'> {
  const recordedAt = `2027-06-01T00:00:${String(n).padStart(2, '0')}Z` as const;
  const id = `019f0000-0000-7000-8000-${String(n).padStart(12, '0')}`;
  return { id, kind: 'amended', on: '2027-06-01', recordedAt, by: 'Ana', amends, ...body } as EntryOf<'amended'>;
}

/** A logbook and one of its reports that nothing amends. */
function logbookWithVictim(seed: number): { log: Entry[]; victim: Entry } | null {
  const log = randomLogbook(seed, 90);
  const amended = new Set(log.flatMap((e) => (e.kind === 'amended' ? [e.amends] : [])));
  const free = log.filter((e) => e.kind !== 'amended' && !amended.has(e.id));
  const victim = free[seed % free.length];
  return victim ? { log, victim } : null;
}

function law(check: (log: Entry[], victim: Entry) => void): void {
  fc.assert(
    fc.property(seeds, (seed) => {
      const drawn = logbookWithVictim(seed);
      if (drawn) check(drawn.log, drawn.victim);
    }),
    runs,
  );
}

function replacementOf(entry: Entry) {
  const { id: _id, recordedAt: _at, by: _by, ...replacement } = entry;
  return replacement as EntryOf<'amended'>['replacement'];
}

describe('the fold', () => {
  it('gives the same facts in whatever order the entries arrive', () => {
    fc.assert(
      fc.property(seeds, seeds, (seed, order) => {
        const log = randomLogbook(seed, 120);
        expect(fold(shuffled(log, order))).toEqual(fold(log));
      }),
      runs,
    );
  });

  it('gives the same facts when entries arrive twice', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const log = randomLogbook(seed, 60);
        expect(fold([...log, ...shuffled(log, seed).map((e) => structuredClone(e))])).toEqual(fold(log));
      }),
      runs,
    );
  });

  it('leaves the entries as they were', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const log = randomLogbook(seed, 60);
        const before = log.map(canonicalText);
        fold(log);
        expect(log.map(canonicalText)).toEqual(before);
      }),
      runs,
    );
  });

  it('lists only entries of the logbook as problems', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const log = randomLogbook(seed, 60);
        const ids = new Set(log.map((e) => e.id));
        expect(fold(log).problems.filter((p) => !ids.has(p.entryId))).toEqual([]);
      }),
      runs,
    );
  });
});

describe('amendments', () => {
  it('void: as if the entry had never been written', () =>
    law((log, victim) => {
      const without = log.filter((e) => e !== victim);
      expect(fold([...log, amendment(victim.id, 1, { void: true })])).toEqual(fold(without));
    }));

  it('void of a void: as before', () =>
    law((log, victim) => {
      const first = amendment(victim.id, 1, { void: true });
      expect(fold([...log, first, amendment(first.id, 2, { void: true })])).toEqual(fold(log));
    }));

  it('replacement by the same content: as before', () =>
    law((log, victim) => {
      expect(fold([...log, amendment(victim.id, 1, { replacement: replacementOf(victim) })])).toEqual(fold(log));
    }));

  it('of two, the one recorded later holds', () =>
    law((log, victim) => {
      const early = amendment(victim.id, 1, { void: true });
      const late = amendment(victim.id, 2, { replacement: replacementOf(victim) });
      expect(fold([late, ...log, early])).toEqual(fold(log));
    }));

  it('replacing an amendment: as if its entry were replaced so', () =>
    law((log, victim) => {
      const replacement = { kind: 'note' as const, text: 'It was nothing.' };
      const first = amendment(victim.id, 1, { void: true });
      const second = amendment(first.id, 2, { replacement });
      const direct = amendment(victim.id, 3, { replacement });
      expect(fold([...log, first, second])).toEqual(fold([...log, direct]));
    }));

  it('a chain of a hundred thousand voids is followed to its end', () => {
    const [victim] = randomLogbook(1, 1) as [Entry];
    const chain: Entry[] = [victim];
    for (let n = 1; n <= 100_001; n++) {
      const id = `019f0000-0000-7000-8000-${String(n).padStart(12, '0')}`;
      chain.push({ ...amendment((chain[n - 1] as Entry).id, 1, { void: true }), id });
    }
    expect(fold(chain)).toEqual(fold([]));
    expect(fold(chain.slice(0, -1))).toEqual(fold([victim]));
  });

  it('two amendments of each other amend nothing', () => {
    const [victim] = randomLogbook(1, 1) as [Entry];
    const [a, b] = [
      amendment('019f0000-0000-7000-8000-000000000002', 1, { void: true }),
      amendment('019f0000-0000-7000-8000-000000000001', 2, { void: true }),
    ];
    expect(fold([victim, a, b])).toEqual(fold([victim]));
  });
});
