/** Listens to the keeper's MQTT broker. What cannot be used is counted and said once a topic, then hourly. */
import { type Problem, problemText, type Result } from '../../foundation/index.ts';
import { messageValue, topicFits } from './message-value.ts';
import type { MqttSettings } from './mqtt-settings.ts';
import type { SensorMessage } from './sensor-message.ts';

const reconnectMs = 10_000;
const sayEveryMs = 3_600_000;
/** A message with a temperature in it is no longer; the rest is not looked at. */
const longestMessageBytes = 64 * 1024;
const mostTopicsSaid = 100;

type Take = (message: SensorMessage) => Result<null>;

export class MqttFeed {
  private readonly leftOut = new Map<string, { count: number; saidAtMs: number }>();
  private readonly settings: MqttSettings;
  private readonly takeOne: Take;
  private end: () => Promise<void> = async () => {};

  private constructor(settings: MqttSettings, take: Take) {
    this.settings = settings;
    this.takeOne = take;
  }

  /** Resolves at once; a broker that is away is tried again for as long as the server runs. */
  static async open(settings: MqttSettings, take: Take): Promise<MqttFeed> {
    const feed = new MqttFeed(settings, take);
    // The client is loaded only by a household that has a broker.
    const { connect } = await import('mqtt');
    const { url, username, password } = settings;
    const client = connect(url, {
      ...(username === undefined ? {} : { username }),
      ...(password === undefined ? {} : { password }),
      reconnectPeriod: reconnectMs,
      // Readings are kept by us, not queued by the broker for a client that is away.
      clean: true,
    });
    client.on('connect', () => client.subscribe(settings.topics.map(({ topic }) => topic)));
    client.on('message', (topic, payload) => feed.message(topic, payload));
    client.on('error', (error) =>
      feed.leave('broker', { where: hostOf(url), found: error.message, expected: 'a broker' }),
    );
    feed.end = () => client.endAsync(true);
    return feed;
  }

  close(): Promise<void> {
    return this.end();
  }

  /** How many messages were left out, by topic. */
  counts(): Record<string, number> {
    return Object.fromEntries([...this.leftOut].map(([topic, { count }]) => [topic, count]));
  }

  private message(topic: string, payload: Uint8Array): void {
    for (const { topic: filter, path = '', place, unit = 'C' } of this.settings.topics) {
      if (!topicFits(filter, topic)) continue;
      const value =
        payload.length > longestMessageBytes ? tooLong : messageValue(new TextDecoder().decode(payload), path);
      const taken = value.ok ? this.takeOne({ place, celsius: toCelsius(value.value, unit) }) : value;
      if (!taken.ok) this.leave(topic, taken.problems[0] as Problem);
    }
  }

  private leave(topic: string, problem: Problem): void {
    const now = Date.now();
    const known = this.leftOut.get(topic);
    if (!known && this.leftOut.size >= mostTopicsSaid) return;
    const entry = known ?? { count: 0, saidAtMs: Number.NEGATIVE_INFINITY };
    this.leftOut.set(topic, entry);
    entry.count += 1;
    if (now - entry.saidAtMs < sayEveryMs) return;
    entry.saidAtMs = now;
    console.error(`${topic.slice(0, 100)}: ${entry.count} left out; ${problemText(problem)}`);
  }
}

const tooLong: Result<number> = {
  ok: false,
  problems: [{ where: 'message', found: 'a long message', expected: `at most ${longestMessageBytes} bytes` }],
};

function toCelsius(value: number, unit: 'C' | 'F' | 'K'): number {
  if (unit === 'C') return value;
  return unit === 'F' ? ((value - 32) * 5) / 9 : value - 273.15;
}

/** Without a password that the address may hold. */
function hostOf(url: string): string {
  return URL.canParse(url) ? new URL(url).host : 'the broker';
}
