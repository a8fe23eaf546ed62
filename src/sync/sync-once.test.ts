import { describe, expect, it } from 'vitest';
import { numberedEntries, numberedEntry } from '../store/conformance-entries.ts';
import { memoryPlace, openMemoryStore } from '../store/memory/index.ts';
import { forgetEpoch, type Peer, peerOfStore, syncLimits, syncOnce } from './index.ts';

function pair() {
  let lives = 0;
  const [here, there] = [openMemoryStore(), openMemoryStore(memoryPlace())];
  const asked = { offered: 0, pushed: 0, pulls: 0 };
  const direct = peerOfStore(there, () => `life ${++lives}`);
  const peer: Peer = {
    offer: (q) => {
      asked.offered += q.ids.length;
      return direct.offer(q);
    },
    push: (q) => {
      asked.pushed += q.entries.length;
      return direct.push(q);
    },
    pull: (q) => {
      asked.pulls += 1;
      return direct.pull(q);
    },
  };
  return { here, there, peer, asked };
}

describe('one exchange', () => {
  it('sends what the server lacks and fetches what the device lacks, in batches', async () => {
    const { here, there, peer, asked } = pair();
    await here.append(numberedEntries(0, 1200, 1));
    await there.append(numberedEntries(0, 1300, 2));
    expect(await syncOnce(here, peer)).toEqual({ sent: 1200, received: 1300, refused: [] });
    expect([await here.count(), await there.count()]).toEqual([2500, 2500]);
    // 500 at a time: its own 1200 come by too.
    expect(asked.pulls).toBe(5);
  });

  it('says nothing again that was said', async () => {
    const { here, there, peer, asked } = pair();
    await there.append(numberedEntries(0, 300, 2));
    await syncOnce(here, peer);
    await here.append([numberedEntry(0, 1)]);
    await syncOnce(here, peer);
    expect(await syncOnce(here, peer)).toEqual({ sent: 0, received: 0, refused: [] });
    expect(asked).toEqual({ offered: 1, pushed: 1, pulls: 3 });
  });

  it('a push is closed by the size of its entries too', async () => {
    const { here, there, peer } = pair();
    await here.append(numberedEntries(0, 20, 1));
    const sizes: number[] = [];
    const counting: Peer = {
      ...peer,
      push: (q) => {
        sizes.push(q.entries.length);
        return peer.push(q);
      },
    };
    await syncOnce(here, counting, { ...syncLimits, pushedCharacters: 900 });
    expect(await there.count()).toBe(20);
    expect(Math.max(...sizes)).toBeLessThan(8);
  });

  it('gives a server back what it lost, though nothing is new', async () => {
    const { here, there, peer } = pair();
    await here.append(numberedEntries(0, 10, 1));
    await syncOnce(here, peer);
    const restored = openMemoryStore();
    await forgetEpoch(restored);
    const after = peerOfStore(restored, () => 'life after');
    expect(await syncOnce(here, after)).toMatchObject({ sent: 10 });
    expect(await restored.count()).toBe(await there.count());
  });

  it('an entry that the server refuses holds nothing up, is named, and is tried again', async () => {
    const { here, there, peer } = pair();
    await there.append([{ ...numberedEntry(3, 1), by: 'someone else' }]);
    await here.append(numberedEntries(0, 10, 1));
    const report = await syncOnce(here, peer);
    expect(report.sent).toBe(9);
    // Refused by the server and, coming the other way, by the device.
    expect(new Set(report.refused.map((r) => r.id))).toEqual(new Set([numberedEntry(3, 1).id]));
    expect(report.refused[0]?.problems[0]?.found).toMatch(/other content/);
    expect([await here.count(), await there.count()]).toEqual([10, 10]);
  });

  it('entries refused once are sent to a server that has learned them', async () => {
    const { here, there, peer } = pair();
    await here.append(numberedEntries(0, 3, 1));
    const old: Peer = {
      ...peer,
      push: async (q) => {
        const known = q.entries.filter((e) => e.id !== numberedEntry(1, 1).id);
        const reply = await peer.push({ entries: known });
        const unknown = q.entries.filter((e) => !known.includes(e)).map((e) => e.id);
        const problems = [{ where: 'kind', found: 'harvested', expected: 'another' }];
        return { ...reply, refused: unknown.map((id) => ({ id, problems })) };
      },
    };
    expect((await syncOnce(here, old)).refused).toHaveLength(1);
    expect(await there.count()).toBe(2);
    expect(await syncOnce(here, peer)).toMatchObject({ sent: 1, refused: [] });
    expect(await there.count()).toBe(3);
  });

  it('an entry that this version cannot read stops the fetching, without skipping it', async () => {
    const { here, there, peer } = pair();
    await there.append(numberedEntries(0, 3, 2));
    const newer: Peer = {
      ...peer,
      pull: async (q) => {
        const reply = await peer.pull(q);
        return { ...reply, entries: reply.entries.map((e) => ({ ...(e as object), kind: 'sung' })) };
      },
    };
    const report = await syncOnce(here, newer);
    expect(report.refused[0]?.problems[0]).toMatchObject({
      found: '"sung"',
      expected: expect.stringMatching(/newer version/),
    });
    expect(await syncOnce(here, peer)).toMatchObject({ received: 3 });
  });

  it('an entry beyond the checks is refused by the server', async () => {
    const { here, there, peer } = pair();
    await here.append([{ ...numberedEntry(0, 1), flies: -1 } as never]);
    const report = await syncOnce(here, peer);
    expect(report.refused[0]?.problems[0]?.where).toMatch(/flies/);
    expect(await there.count()).toBe(0);
  });
});
