/**
 * A household of devices and one server, with everything that goes wrong between them, drawn by seed:
 * partitions, lost and repeated messages, late ones, crashes before and after a write, a server put
 * back to an old copy, devices that stay away. At the end all are connected and must agree.
 */
import { randomStream } from '../../src/foundation/index.ts';
import { canonicalText, type Entry, fold } from '../../src/logbook/index.ts';
import { type MemoryPlace, memoryPlace, openMemoryStore } from '../../src/store/memory/index.ts';
import type { Store } from '../../src/store/store.ts';
import {
  answerOffer,
  answerPull,
  answerPush,
  forgetEpoch,
  type Peer,
  pullReply,
  pullRequest,
  pushRequest,
  storeEpoch,
  syncLimits,
  syncOnce,
} from '../../src/sync/index.ts';
import { type Drawing, drawing, randomEntry } from './random-logbook.ts';

export interface FuzzReport {
  steps: number;
  entries: number;
  crashes: number;
  restores: number;
  /** The texts of each replica, server first, sorted by id. */
  replicas: string[][];
  /** Texts that a device had acknowledged. */
  recorded: string[];
}

interface Device {
  place: MemoryPlace;
  number: number;
  isCutOff: boolean;
}

class Fault extends Error {}

/** Runs `steps` steps (a record, a message, a restart each) and then heals all; the same for a seed. */
export async function fuzzReplicas(seed: number, devices: number, steps: number): Promise<FuzzReport> {
  const world = new World(seed, devices);
  while (world.steps < steps) await world.step();
  await world.heal();
  return world.report();
}

class World {
  steps = 0;
  private crashes = 0;
  private restores = 0;
  private readonly draw: Drawing;
  private server = memoryPlace();
  private copy: MemoryPlace | null = null;
  private epochs = 0;
  private readonly devices: Device[];
  private readonly recorded = new Map<string, Entry>();
  private late: (() => Promise<unknown>)[] = [];

  constructor(seed: number, devices: number) {
    this.draw = drawing(randomStream(seed, 'replicas'));
    this.devices = Array.from({ length: devices }, (_, number) => ({ place: memoryPlace(), number, isCutOff: false }));
  }

  async step(): Promise<void> {
    this.steps += 1;
    const device = this.draw.pick(this.devices);
    const kind = this.draw.r.uniform();
    if (kind < 0.45) await this.record(device);
    else if (kind < 0.55) device.isCutOff = !device.isCutOff;
    else if (kind < 0.57) this.copy = structuredClone(this.server);
    else if (kind < 0.58) await this.restoreServer();
    else if (kind < 0.62) await this.late.splice(this.draw.r.below(this.late.length + 1), 1)[0]?.();
    else if (!device.isCutOff) await this.exchange(device);
  }

  async heal(): Promise<void> {
    for (let round = 0; round < 2; round++) {
      for (const { place } of this.devices) await syncOnce(openMemoryStore(place), this.peer(false));
    }
  }

  report(): FuzzReport {
    const replicas = [this.server, ...this.devices.map((d) => d.place)].map((p) => [...p.texts].sort());
    const recorded = [...this.recorded.values()].map(canonicalText).sort();
    const { steps, crashes, restores } = this;
    return { steps, crashes, restores, entries: recorded.length, replicas, recorded };
  }

  private async record(device: Device): Promise<void> {
    const known = device.place.texts.slice(-20).map((t) => JSON.parse(t) as Entry);
    const entry = randomEntry(this.draw, this.recorded.size, device.number, known);
    const result = await openMemoryStore(device.place).append([entry]);
    if (!result.ok) throw new RangeError(`fuzz: ${JSON.stringify(result.problems)}`);
    this.recorded.set(entry.id, entry);
  }

  /** The server dies and comes back with an old copy of its log, as after a restored backup. */
  private async restoreServer(): Promise<void> {
    if (this.copy === null) return;
    this.restores += 1;
    this.server = structuredClone(this.copy);
    await forgetEpoch(openMemoryStore(this.server));
  }

  private async exchange(device: Device): Promise<void> {
    const { below } = this.draw.r;
    const limits = {
      ...syncLimits,
      offeredIds: 1 + below(30),
      pushedEntries: 1 + below(9),
      pulledEntries: 1 + below(30),
    };
    const crashing = this.draw.chance(0.3);
    const store = openMemoryStore(device.place);
    try {
      await syncOnce(crashing ? this.crashingStore(store, device) : store, this.peer(true), limits);
    } catch (error) {
      if (!(error instanceof Fault)) throw error;
      this.crashes += 1;
    }
  }

  private peer(withFaults: boolean): Peer {
    const ask = <Q, A>(answer: (store: Store, epoch: string, request: Q) => Promise<A>) => {
      return (request: Q) => this.message(withFaults, request, answer);
    };
    return {
      offer: ask(answerOffer),
      push: ask((store, epoch, q) => answerPush(store, epoch, pushRequest.parse(q).entries)),
      pull: ask(async (store, epoch, q) => pullReply.parse(await answerPull(store, epoch, pullRequest.parse(q)))),
    };
  }

  private async message<Q, A>(
    withFaults: boolean,
    request: Q,
    answer: (store: Store, epoch: string, request: Q) => Promise<A>,
  ): Promise<A> {
    this.steps += 1;
    const copy = structuredClone(request);
    const deliver = async () => {
      const store = openMemoryStore(this.server);
      return structuredClone(await answer(store, await storeEpoch(store, () => `life ${++this.epochs}`), copy));
    };
    const fate = withFaults ? this.draw.r.uniform() : 1;
    if (fate < 0.05) throw new Fault('the request was lost');
    if (fate < 0.1) {
      this.late.push(deliver);
      throw new Fault('the request comes late');
    }
    if (fate < 0.15) await deliver();
    const reply = await deliver();
    if (fate > 0.15 && fate < 0.22) throw new Fault('the reply was lost');
    return reply;
  }

  /** A store whose process dies before or after a write; or something is recorded beside the exchange. */
  private crashingStore(store: Store, device: Device): Store {
    const around = async <T>(write: () => Promise<T>): Promise<T> => {
      const fate = this.draw.r.uniform();
      if (fate < 0.1) throw new Fault('died before writing');
      if (fate < 0.2) await this.record(device);
      const result = await write();
      if (fate > 0.9) throw new Fault('died after writing');
      if (fate > 0.8) await this.record(device);
      return result;
    };
    return {
      ...bound(store),
      append: (entries) => around(() => store.append(entries)),
      setMark: (name, value) => around(() => store.setMark(name, value)),
      lastCursor: () => around(() => store.lastCursor()),
    };
  }
}

function bound(store: Store): Store {
  return {
    append: (e) => store.append(e),
    appendStream: (pieces) => store.appendStream(pieces),
    entries: (after) => store.entries(after),
    entry: (id) => store.entry(id),
    missing: (ids) => store.missing(ids),
    count: () => store.count(),
    lastCursor: () => store.lastCursor(),
    mark: (name) => store.mark(name),
    setMark: (name, value) => store.setMark(name, value),
    close: () => store.close(),
  };
}

/** What is wrong with a run, in words; empty when every replica has every entry, byte for byte. */
export function disagreements({ replicas, recorded }: FuzzReport): string[] {
  const wrong: string[] = [];
  const facts = JSON.stringify(fold(recorded.map((t) => JSON.parse(t) as Entry)));
  replicas.forEach((texts, i) => {
    const has = new Set(texts);
    const missing = recorded.filter((t) => !has.has(t));
    if (missing.length > 0) wrong.push(`replica ${i} lacks ${missing.length} of ${recorded.length} entries`);
    if (texts.length !== recorded.length)
      wrong.push(`replica ${i} has ${texts.length} entries, not ${recorded.length}`);
    if (JSON.stringify(fold(texts.map((t) => JSON.parse(t) as Entry))) !== facts)
      wrong.push(`replica ${i} has other facts`);
  });
  return wrong;
}
