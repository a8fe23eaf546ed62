/**
 * The devices that may reach a household over the network: one file each in `devices/` of its folder,
 * named after the device's id. A file that is removed is a device that is shut out, at once and by any
 * process; its time of change is the day it was last seen. Only digests of secrets are kept.
 */
import { readdirSync, statSync, unlinkSync, utimesSync, watch } from 'node:fs';
import { join } from 'node:path';
import { readPrivateFile, writePrivateFile } from './private-file.ts';
import { newToken, secretFits, tokenParts } from './token.ts';

export interface Device {
  id: string;
  name: string;
  /** ISO instant. */
  pairedAt: string;
  lastSeenAt: string;
}

interface Kept {
  name: string;
  pairedAt: string;
  secretHash: string;
  /** Digest of the secret in the address of the device's calendar; null when it has none. */
  calendarHash: string | null;
}

/** How often a device's file is touched at most. */
const seenEveryMs = 3_600_000;

export class Devices {
  private readonly folder: string;

  /** @param household the household's folder. */
  constructor(household: string) {
    this.folder = join(household, 'devices');
  }

  /** Lets a device in; returns the text of its token, which is kept nowhere. */
  add(name: string, now: string): string {
    const { id, text, secretHash } = newToken();
    this.write(id, { name: name.trim().slice(0, 80), pairedAt: now, secretHash, calendarHash: null });
    return text;
  }

  /** Oldest first. */
  list(): Device[] {
    return this.ids()
      .flatMap((id) => this.device(id) ?? [])
      .sort((a, b) => (a.pairedAt < b.pairedAt ? -1 : 1));
  }

  /** The device whose token this is, or null. */
  withToken(text: string | undefined): Device | null {
    return this.withSecret(text, 'secretHash');
  }

  /** The device whose calendar's address holds this key, or null. */
  withCalendarKey(key: string | undefined): Device | null {
    return this.withSecret(key, 'calendarHash');
  }

  /** A new key for the device's calendar; the former one no longer opens it. Null without such a device. */
  renewCalendarKey(id: string): string | null {
    const kept = this.read(id);
    if (!kept) return null;
    const { text, secretHash } = newToken();
    this.write(id, { ...kept, calendarHash: secretHash });
    return `${id}.${text.split('.')[1]}`;
  }

  /** The device's calendar is closed; the device itself stays in. */
  endCalendarKey(id: string): void {
    const kept = this.read(id);
    if (kept) this.write(id, { ...kept, calendarHash: null });
  }

  /** Shuts a device out. False when there is none of this id. */
  revoke(id: string): boolean {
    try {
      unlinkSync(this.file(id));
      return true;
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code === 'ENOENT') return false;
      throw error;
    }
  }

  isPaired(id: string): boolean {
    return this.read(id) !== null;
  }

  /** Calls `changed` when the device's file changes or goes; the function returned ends that. */
  onChange(id: string, changed: () => void): () => void {
    try {
      const watcher = watch(this.file(id), { persistent: false }, () => changed());
      // A file system that cannot be watched: whoever listens looks again by itself.
      watcher.on('error', () => watcher.close());
      return () => watcher.close();
    } catch {
      return () => {};
    }
  }

  /** Remembers that the device was here; a device that was just shut out stays so. */
  seen({ id, lastSeenAt }: Device, now: string): void {
    const at = new Date(now);
    if (at.getTime() - Date.parse(lastSeenAt) < seenEveryMs) return;
    try {
      utimesSync(this.file(id), at, at);
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== 'ENOENT') throw error;
    }
  }

  private withSecret(text: string | undefined, which: 'secretHash' | 'calendarHash'): Device | null {
    const parts = tokenParts(text);
    const hash = parts && this.read(parts.id)?.[which];
    return parts && hash && secretFits(parts.secret, hash) ? this.device(parts.id) : null;
  }

  private ids(): string[] {
    try {
      return readdirSync(this.folder).flatMap((file) => /^([0-9a-f]{16})\.json$/.exec(file)?.[1] ?? []);
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code === 'ENOENT') return [];
      throw error;
    }
  }

  private device(id: string): Device | null {
    const kept = this.read(id);
    const seen = kept && statSync(this.file(id), { throwIfNoEntry: false });
    return kept && seen ? { id, name: kept.name, pairedAt: kept.pairedAt, lastSeenAt: seen.mtime.toISOString() } : null;
  }

  private read(id: string): Kept | null {
    const text = readPrivateFile(this.file(id));
    return text === null ? null : (JSON.parse(text) as Kept);
  }

  private write(id: string, kept: Kept): void {
    writePrivateFile(this.file(id), `${JSON.stringify(kept, null, 2)}\n`);
  }

  private file(id: string): string {
    if (!/^[0-9a-f]{16}$/.test(id)) throw new RangeError(`Devices: id ${id} is not 16 hexadecimal digits`);
    return join(this.folder, `${id}.json`);
  }
}
