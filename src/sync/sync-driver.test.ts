import { expect, it } from 'vitest';
import { numberedEntry } from '../store/conformance-entries.ts';
import { openMemoryStore } from '../store/memory/index.ts';
import { type Peer, peerOfStore, type SyncStatus, startSyncDriver } from './index.ts';

/** A driver whose sleeps are listed and end when told to. */
function driven(reachable: () => boolean) {
  const [store, there] = [openMemoryStore(), openMemoryStore()];
  const direct = peerOfStore(there, () => 'life');
  const peer: Peer = { ...direct, pull: (q) => (reachable() ? direct.pull(q) : Promise.reject(new Error('no way'))) };
  const sleeps: number[] = [];
  const states: SyncStatus['state'][] = [];
  let wakeUp = () => {};
  let asleep = () => {};
  const driver = startSyncDriver({
    store,
    peer,
    chance: () => 1,
    onStatus: ({ state }) => states.push(state),
    sleep: (ms, signal) =>
      new Promise((done) => {
        sleeps.push(ms);
        wakeUp = done;
        signal.addEventListener('abort', () => done());
        asleep();
      }),
  });
  const untilAsleep = () => new Promise<void>((done) => (asleep = done));
  return { store, there, driver, sleeps, states, untilAsleep, wakeUp: () => wakeUp() };
}

it('waits longer after each failure, and starts over after a success', async () => {
  let isReachable = false;
  const d = driven(() => isReachable);
  for (let i = 0; i < 12; i++) {
    await d.untilAsleep();
    if (i === 10) isReachable = true;
    d.wakeUp();
  }
  expect(d.sleeps.slice(0, 4)).toEqual([1000, 2000, 4000, 8000]);
  expect(Math.max(...d.sleeps.slice(0, 11))).toBe(300_000);
  isReachable = false;
  await d.untilAsleep();
  d.wakeUp();
  await d.untilAsleep();
  expect(d.sleeps[d.sleeps.length - 1]).toBe(2000);
  await d.driver.stop();
  expect(d.states[d.states.length - 1]).toBe('stopped');
});

it('exchanges at once when something changed', async () => {
  const d = driven(() => true);
  await d.untilAsleep();
  await d.store.append([numberedEntry(1)]);
  d.driver.poke();
  await d.untilAsleep();
  expect(await d.there.count()).toBe(1);
  await d.driver.stop();
});

it('a change during an exchange is not forgotten', async () => {
  const d = driven(() => true);
  await d.store.append([numberedEntry(1)]);
  d.driver.poke();
  await d.untilAsleep();
  expect(d.states.filter((s) => s === 'syncing').length).toBe(2);
  await d.driver.stop();
});
