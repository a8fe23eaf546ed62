import { spawn, spawnSync, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { chmodSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { connect as dial, createServer, type AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { connectAsync } from 'mqtt';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { needsDebian } from '../../../tests/reference/debian-program.ts';
import { failed, ok, type Result } from '../../foundation/index.ts';
import { MqttFeed } from './mqtt-feed.ts';
import type { SensorMessage } from './sensor-message.ts';

/** A real Mosquitto on a spare loopback port, which wants a password. */
const folder = mkdtempSync(join(tmpdir(), 'flylarder-broker-'));
const credentials = { username: 'flies', password: 'a-password-of-the-test' };
let port: number;
let broker: ChildProcess;

beforeAll(async () => {
  needsDebian('mosquitto', ['test', '-x', '/usr/sbin/mosquitto']);
  chmodSync(folder, 0o755);
  const passwords = join(folder, 'passwords');
  const made = spawnSync('mosquitto_passwd', ['-b', '-c', passwords, credentials.username, credentials.password]);
  expect(made.status).toBe(0);
  chmodSync(passwords, 0o644);
  port = await sparePort();
  const lines = [
    `listener ${port} 127.0.0.1`,
    'allow_anonymous false',
    `password_file ${passwords}`,
    'persistence false',
  ];
  writeFileSync(join(folder, 'broker.conf'), `${lines.join('\n')}\n`);
  await startBroker();
}, 300_000);

afterAll(async () => {
  await stopBroker();
  rmSync(folder, { recursive: true, force: true });
});

async function sparePort(): Promise<number> {
  const server = createServer().listen(0, '127.0.0.1');
  await once(server, 'listening');
  const { port: spare } = server.address() as AddressInfo;
  await new Promise((resolve) => server.close(resolve));
  return spare;
}

async function startBroker(): Promise<void> {
  broker = spawn('/usr/sbin/mosquitto', ['-c', join(folder, 'broker.conf')], { stdio: 'ignore' });
  await until(() => answers(port));
}

async function stopBroker(): Promise<void> {
  if (broker.exitCode !== null) return;
  const gone = once(broker, 'exit');
  broker.kill();
  await gone;
}

function answers(at: number): Promise<boolean> {
  return new Promise((resolve) => {
    const socket = dial(at, '127.0.0.1');
    socket.once('connect', () => resolve(true)).once('error', () => resolve(false));
    socket.once('connect', () => socket.destroy());
  });
}

async function until(holds: () => boolean | Promise<boolean>): Promise<void> {
  for (let tries = 0; tries < 300; tries += 1) {
    if (await holds()) return;
    await pause(100);
  }
  throw new Error('until: it did not come about in 30 seconds');
}

const open: MqttFeed[] = [];
afterEach(async () => {
  for (const feed of open.splice(0)) await feed.close();
});

async function feedOf(taken: SensorMessage[], asked: object = credentials): Promise<MqttFeed> {
  const take = (message: SensorMessage): Result<null> => {
    if (!(Math.abs(message.celsius) < 60)) return failed({ where: 'x', found: 'x', expected: 'x' });
    taken.push(message);
    return ok(null);
  };
  const topics = [
    { topic: 'house/+/climate', path: 'values.0.temperature', place: 'shelf' },
    { topic: 'cellar/temperature', place: 'cellar', unit: 'F' as const },
  ];
  const feed = await MqttFeed.open({ url: `mqtt://127.0.0.1:${port}`, topics, ...asked }, take);
  open.push(feed);
  return feed;
}

/** Publishes until the feed, which subscribes in its own time, has heard the first message. */
async function heard(taken: SensorMessage[], asked: object = credentials): Promise<MqttFeed> {
  const feed = await feedOf(taken, asked);
  const sender = await connectAsync(`mqtt://127.0.0.1:${port}`, credentials);
  await until(async () => {
    await sender.publishAsync('cellar/temperature', '50');
    return taken.length > 0;
  });
  await sender.endAsync();
  await pause(200);
  taken.length = 0;
  return feed;
}

describe('a broker', () => {
  it('gives readings by topic, path and unit; what is none is left out with a count', async () => {
    const taken: SensorMessage[] = [];
    const feed = await heard(taken);
    const sender = await connectAsync(`mqtt://127.0.0.1:${port}`, credentials);
    await sender.publishAsync('house/kitchen/climate', '{"values":[{"temperature":21.5}]}');
    await sender.publishAsync('house/kitchen/climate/more', '{"values":[{"temperature":1}]}');
    for (const bad of ['warm', '{"values":[]}', '{"values":[{"temperature":1e9}]}', '', 'x'.repeat(100_000)]) {
      await sender.publishAsync('house/attic/climate', bad);
    }
    await sender.publishAsync('cellar/temperature', '59');
    await sender.endAsync();
    await until(() => taken.length === 2);
    expect(taken).toEqual([
      { place: 'shelf', celsius: 21.5 },
      { place: 'cellar', celsius: 15 },
    ]);
    expect(feed.counts()).toEqual({ 'house/attic/climate': 5 });
  }, 40_000);

  it('that floods is taken message by message and fills nothing', async () => {
    const taken: SensorMessage[] = [];
    const feed = await heard(taken);
    const sender = await connectAsync(`mqtt://127.0.0.1:${port}`, credentials);
    const sent = 5000;
    for (let i = 0; i < sent; i += 1)
      sender.publish('house/x/climate', i % 2 ? 'noise' : '{"values":[{"temperature":20}]}');
    await sender.endAsync();
    await until(() => taken.length + (feed.counts()['house/x/climate'] ?? 0) === sent);
    expect(taken).toHaveLength(sent / 2);
  }, 60_000);

  it('that refuses the password harms nothing', async () => {
    const taken: SensorMessage[] = [];
    const feed = await feedOf(taken, { ...credentials, password: 'wrong' });
    await until(() => (feed.counts().broker ?? 0) > 0);
    expect(taken).toEqual([]);
  }, 40_000);

  it('that goes away and comes back is heard again', async () => {
    const taken: SensorMessage[] = [];
    await heard(taken);
    await stopBroker();
    await pause(500);
    await startBroker();
    const sender = await connectAsync(`mqtt://127.0.0.1:${port}`, credentials);
    await until(async () => {
      await sender.publishAsync('cellar/temperature', '50');
      return taken.length > 0;
    });
    await sender.endAsync();
    expect(taken[0]).toEqual({ place: 'cellar', celsius: 10 });
  }, 60_000);
});
