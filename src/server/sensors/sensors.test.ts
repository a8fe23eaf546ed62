import { mkdtempSync, readFileSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { day } from '../../foundation/index.ts';
import { entryIdMaker } from '../../logbook/index.ts';
import { openMemoryStore } from '../../store/memory/index.ts';
import { application } from '../application.ts';
import { LiveHousehold } from '../live-household.ts';
import { LiveSensors } from './live-sensors.ts';
import { messageValue, topicFits } from './message-value.ts';
import { readMqttSettings } from './mqtt-settings.ts';

let folder: string;
let nowMs: number;
let household: LiveHousehold;
const midnight = Date.UTC(2026, 10, 25);
const hour = 3_600_000;
const shell = {
  todayIn: () => day('2026-11-25'),
  now: () => new Date(nowMs).toISOString(),
  newEntryId: entryIdMaker({ now: () => nowMs, randomBytes: (n) => new Uint8Array(n) }),
};

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'flylarder-sensors-'));
  nowMs = midnight;
  household = await LiveHousehold.open(openMemoryStore());
  const place = { kind: 'place', on: '2026-11-01', place: 'shelf', temperatureC: 22, by: 'test' };
  const entry = { id: shell.newEntryId(), recordedAt: shell.now(), ...place } as Parameters<
    LiveHousehold['append']
  >[0][0];
  expect((await household.append([entry], () => '')).ok).toBe(true);
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const send = async (sensors: LiveSensors, token: string | null, body: unknown) => {
  const app = application(household, { shell, version: '0', webFolder: folder, sensors });
  const headers: Record<string, string> = { host: 'localhost:4180', 'content-type': 'application/json' };
  if (token !== null) headers.authorization = `Bearer ${token}`;
  const text = typeof body === 'string' ? body : JSON.stringify(body);
  const answer = await app.request('/api/v1/sensors/readings', { method: 'POST', headers, body: text }, {});
  return { status: answer.status, body: (await answer.json()) as Record<string, unknown> };
};

describe('readings over HTTP', () => {
  it('are taken with the sensor’s token alone', async () => {
    const sensors = new LiveSensors(folder, household, shell);
    const token = sensors.register.add('window', 'shelf', shell.now());
    expect(await send(sensors, null, { temperatureC: 22 })).toMatchObject({ status: 401 });
    expect(await send(sensors, `${token}x`, { temperatureC: 22 })).toMatchObject({ status: 401 });
    expect(await send(sensors, token, { temperatureC: 22 })).toMatchObject({ status: 200, body: { kept: 1 } });
    const [sensor] = sensors.register.list();
    sensors.register.revoke(sensor?.id ?? '');
    expect(await send(sensors, token, { temperatureC: 22 })).toMatchObject({ status: 401 });
  });

  it('keep no token, only its digest, in a file for this user alone', () => {
    const sensors = new LiveSensors(folder, household, shell);
    const token = sensors.register.add('window', 'shelf', shell.now());
    const [file] = readdirSync(join(folder, 'sensors'));
    const path = join(folder, 'sensors', file as string);
    expect(readFileSync(path, 'utf8')).not.toContain(token.split('.')[1]);
    expect(statSync(path).mode & 0o077).toBe(0);
  });

  it('become four entries a day, and bad ones are counted', async () => {
    const sensors = new LiveSensors(folder, household, shell);
    const token = sensors.register.add('window', 'shelf', shell.now());
    for (let minute = 0; minute < 24 * 60; minute += 5) {
      nowMs = midnight + 60_000 * minute;
      expect((await send(sensors, token, { temperatureC: 20 + minute / 1440 })).status).toBe(200);
      await sensors.write();
    }
    const bad = [{ temperatureC: 1e9 }, { temperatureC: -127 }, { temperatureC: 21, at: '2020-01-01T00:00:00Z' }];
    expect(await send(sensors, token, { readings: [...bad, { temperatureC: 21 }] })).toMatchObject({
      body: { kept: 1, leftOut: [{ readings: 2 }, { readings: 1 }] },
    });
    nowMs = midnight + 25 * hour;
    await sensors.write();
    const [place] = household.facts().places;
    expect(household.count).toBe(1 + 4);
    expect(place?.readings).toHaveLength(1);
    expect(place?.readings[0]?.meanC).toBeCloseTo(20.5, 1);
    expect(place?.readings[0]).toMatchObject({ on: '2026-11-25', minC: 20 });
  });

  it('may flood: what is kept does not grow with them, and what was good is there', async () => {
    const sensors = new LiveSensors(folder, household, shell);
    const token = sensors.register.add('window', 'shelf', shell.now());
    const readings = Array.from({ length: 1000 }, (_, i) => ({ temperatureC: i % 10 === 0 ? 1e9 : 21 + (i % 7) / 10 }));
    for (let batch = 0; batch < 20; batch += 1) {
      nowMs = midnight + 60_000 * batch;
      expect((await send(sensors, token, { readings })).body).toMatchObject({ kept: 900 });
    }
    await sensors.write();
    expect(statSync(join(folder, 'sensors', 'pending.json')).size).toBeLessThan(2000);
    nowMs = midnight + 7 * hour;
    await sensors.write();
    expect(household.count).toBe(1 + 1);
    expect(household.facts().places[0]?.readings[0]?.meanC).toBeCloseTo(21.3, 1);
  });

  it('that are no readings are refused, and the server goes on', async () => {
    const sensors = new LiveSensors(folder, household, shell);
    const token = sensors.register.add('window', 'shelf', shell.now());
    for (const body of ['', '{', '[]', '{"temperatureC":"warm"}', { temperatureC: 20, at: 'soon' }, { readings: [] }]) {
      expect((await send(sensors, token, body)).status).toBe(400);
    }
    expect((await send(sensors, token, ' '.repeat(200_000))).status).toBe(413);
    expect((await send(sensors, token, { temperatureC: 20 })).status).toBe(200);
  });

  it('are not lost in a restart', async () => {
    const before = new LiveSensors(folder, household, shell);
    before.take({ place: 'shelf', celsius: 24 });
    await before.stop();
    const after = new LiveSensors(folder, household, shell);
    nowMs = midnight + 7 * hour;
    await after.write();
    expect(household.facts().places[0]?.readings).toMatchObject([{ on: '2026-11-25', meanC: 24 }]);
  });

  it('begin anew from a damaged file', () => {
    new LiveSensors(folder, household, shell).register.add('window', 'shelf', shell.now());
    writeFileSync(join(folder, 'sensors', 'pending.json'), '{"shelf":');
    expect(new LiveSensors(folder, household, shell).take({ place: 'shelf', celsius: 20 }).ok).toBe(true);
    expect(new LiveSensors(folder, household, shell).take({ place: 'attic', celsius: 20 })).toMatchObject({
      problems: [{ where: 'place', found: '"attic"' }],
    });
  });
});

describe('a broker’s messages', () => {
  it('are read as a number or at a path', () => {
    expect(messageValue(' 22.5 ', '')).toEqual({ ok: true, value: 22.5 });
    expect(messageValue('{"sensors":[{"temperature":"21"}]}', 'sensors.0.temperature')).toEqual({
      ok: true,
      value: 21,
    });
    for (const [message, path] of [
      ['warm', ''],
      ['', ''],
      ['{"a":1}', 'b'],
      ['{', 'a'],
      ['{"a":null}', 'a'],
      ['{"a":{}}', 'a'],
      ['1', 'constructor'],
    ]) {
      expect(messageValue(message as string, path as string), message).toMatchObject({ ok: false });
    }
  });
  it('are matched as MQTT 5.0, section 4.7, has it', () => {
    // The examples of the standard: 4.7.1.2 and 4.7.1.3.
    const fits = [
      ['sport/tennis/player1/#', 'sport/tennis/player1'],
      ['sport/tennis/player1/#', 'sport/tennis/player1/score/wimbledon'],
      ['sport/tennis/+', 'sport/tennis/player1'],
      ['sport/+', 'sport/'],
      ['+/+', '/finance'],
      ['/+', '/finance'],
    ];
    const not = [
      ['sport/tennis/+', 'sport/tennis/player1/ranking'],
      ['sport/+', 'sport'],
      ['+', '/finance'],
    ];
    for (const [filter, topic] of fits) expect(topicFits(filter as string, topic as string), topic).toBe(true);
    for (const [filter, topic] of not) expect(topicFits(filter as string, topic as string), topic).toBe(false);
  });
  it('come from settings that are checked, and no password is repeated', () => {
    const sensors = new LiveSensors(folder, household, shell);
    sensors.register.add('window', 'shelf', shell.now());
    const settingsOf = (text: string) => {
      writeFileSync(join(folder, 'sensors', 'mqtt.json'), text);
      return readMqttSettings(folder);
    };
    expect(settingsOf('{').ok).toBe(false);
    const wrong = settingsOf('{"url":"http://a","password":"secret-word","topics":[]}');
    expect(wrong.ok).toBe(false);
    expect(JSON.stringify(wrong)).not.toContain('secret-word');
    expect(settingsOf('{"url":"mqtt://localhost","topics":[{"topic":"a/+","place":"shelf"}]}').ok).toBe(true);
  });
});
