/**
 * Readings as they come, from HTTP or a broker, made into four entries a day and place. What is not yet an
 * entry lies in `sensors/pending.json`, so that a restart loses at most a minute.
 */
import { join } from 'node:path';
import { type IntakeState, SensorIntake, type SensorSpan, ZoneClock } from '../../app/index.ts';
import { failed, type Problem, problemText, type Result } from '../../foundation/index.ts';
import { checkEntry, type Entry } from '../../logbook/index.ts';
import { readPrivateFile, writePrivateFile } from '../access/private-file.ts';
import type { LiveHousehold } from '../live-household.ts';
import type { Shell } from '../shell.ts';
import { MqttFeed } from './mqtt-feed.ts';
import { readMqttSettings } from './mqtt-settings.ts';
import type { SensorMessage } from './sensor-message.ts';
import { SensorRegister } from './sensor-register.ts';

const everyMs = 60_000;

export class LiveSensors {
  readonly register: SensorRegister;
  private readonly folder: string;
  private readonly household: LiveHousehold;
  private readonly shell: Shell;
  private intake: SensorIntake;
  private timeZone: string;
  private timer: NodeJS.Timeout | undefined;
  private feed: MqttFeed | null = null;

  constructor(folder: string, household: LiveHousehold, shell: Shell) {
    this.folder = folder;
    this.household = household;
    this.shell = shell;
    this.register = new SensorRegister(folder);
    this.timeZone = household.facts().household.timeZone;
    this.intake = new SensorIntake(clockOf(this.timeZone), this.kept());
  }

  /** Begins to write what is due, and listens to the broker when one is set. */
  async start(): Promise<void> {
    this.timer = setInterval(() => void this.write().catch(said), everyMs).unref();
    const settings = readMqttSettings(this.folder);
    if (!settings.ok) for (const problem of settings.problems) console.error(problemText(problem));
    else if (settings.value) this.feed = await MqttFeed.open(settings.value, (message) => this.take(message));
  }

  /** Keeps a reading until its hours are over, or says why not. */
  take({ place, celsius, atMs }: SensorMessage): Result<null> {
    const { household, places } = this.household.facts();
    if (!places.some((known) => known.place === place)) {
      const expected = `one of ${places.map((known) => known.place).join(', ')}`;
      return failed({ where: 'place', found: `"${place.slice(0, 60)}"`, expected });
    }
    if (household.timeZone !== this.timeZone) {
      this.timeZone = household.timeZone;
      this.intake = new SensorIntake(clockOf(this.timeZone), this.intake.state());
    }
    const now = this.nowMs();
    return this.intake.take({ place, celsius, atMs: atMs ?? now }, now);
  }

  /** Writes the hours that are over; keeps the rest on disk. */
  async write(): Promise<void> {
    const entries = this.intake.due(this.nowMs()).flatMap((span) => this.entryOf(span));
    if (entries.length > 0) {
      const report = await this.household.append(entries, () => 'sensors');
      if (!report.ok) for (const problem of report.problems) console.error(problemText(problem));
    }
    this.keep();
  }

  async stop(): Promise<void> {
    clearInterval(this.timer);
    await this.feed?.close();
    await this.write().catch(said);
  }

  private entryOf({ place, on, meanC, minC, maxC, leftOut }: SensorSpan): Entry[] {
    const { newEntryId, now } = this.shell;
    const note = leftOut > 0 ? { note: `${leftOut} readings left out` } : {};
    const draft = { kind: 'temperature', on, place, meanC, minC, maxC, ...note };
    const entry = checkEntry({ id: newEntryId(), recordedAt: now(), by: 'sensors', ...draft }, 'sensors');
    if (!entry.ok) for (const problem of entry.problems) console.error(problemText(problem));
    return entry.ok ? [entry.value] : [];
  }

  private nowMs(): number {
    return Date.parse(this.shell.now());
  }

  private get pendingFile(): string {
    return join(this.folder, 'sensors', 'pending.json');
  }

  private keep(): void {
    const state = this.intake.state();
    if (Object.keys(state).length > 0) writePrivateFile(this.pendingFile, JSON.stringify(state));
  }

  private kept(): IntakeState {
    const text = readPrivateFile(this.pendingFile);
    try {
      return text === null ? {} : (JSON.parse(text) as IntakeState);
    } catch {
      // A damaged file holds less than six hours of readings: what comes next is worth more.
      console.error(problemText(damaged(this.pendingFile)));
      return {};
    }
  }
}

function damaged(where: string): Problem {
  return { where, found: 'a damaged file', expected: 'readings not yet written; it begins anew' };
}

function clockOf(timeZone: string): ZoneClock {
  const clock = ZoneClock.of(timeZone);
  if (clock.ok) return clock.value;
  const utc = ZoneClock.of('UTC');
  if (utc.ok) return utc.value;
  throw new Error('clockOf: this system knows no UTC');
}

function said(error: unknown): void {
  console.error(`Readings of sensors wait to be written: ${error instanceof Error ? error.message : error}`);
}
