/**
 * The sensors that may send readings over HTTP: one file each in `sensors/` of the household's folder. A
 * sensor is for one place. Only the digest of its token is kept; a file that is removed is a sensor that is
 * shut out.
 */
import { readdirSync, unlinkSync } from 'node:fs';
import { join } from 'node:path';
import { readPrivateFile, writePrivateFile } from '../access/private-file.ts';
import { newToken, secretFits, tokenParts } from '../access/token.ts';

export const sensorPath = '/api/v1/sensors/readings';

export interface Sensor {
  id: string;
  name: string;
  place: string;
  /** ISO instant. */
  addedAt: string;
}

interface Kept extends Omit<Sensor, 'id'> {
  secretHash: string;
}

export class SensorRegister {
  private readonly folder: string;

  /** @param household the household's folder. */
  constructor(household: string) {
    this.folder = join(household, 'sensors');
  }

  /** Returns the text of the sensor's token, which is kept nowhere. */
  add(name: string, place: string, now: string): string {
    const { id, text, secretHash } = newToken();
    const kept: Kept = { name: name.trim().slice(0, 60), place, addedAt: now, secretHash };
    writePrivateFile(join(this.folder, `${id}.json`), `${JSON.stringify(kept, null, 2)}\n`);
    return text;
  }

  /** Oldest first. */
  list(): Sensor[] {
    return this.ids()
      .flatMap((id) => this.sensor(id) ?? [])
      .sort((a, b) => (a.addedAt < b.addedAt ? -1 : 1));
  }

  withToken(text: string | undefined): Sensor | null {
    const parts = tokenParts(text);
    const kept = parts && this.read(parts.id);
    return parts && kept && secretFits(parts.secret, kept.secretHash) ? this.sensor(parts.id) : null;
  }

  /** False when there is none of this id. */
  revoke(id: string): boolean {
    if (!this.ids().includes(id)) return false;
    unlinkSync(join(this.folder, `${id}.json`));
    return true;
  }

  private sensor(id: string): Sensor | null {
    const kept = this.read(id);
    return kept && { id, name: kept.name, place: kept.place, addedAt: kept.addedAt };
  }

  private read(id: string): Kept | null {
    const text = readPrivateFile(join(this.folder, `${id}.json`));
    return text === null ? null : (JSON.parse(text) as Kept);
  }

  private ids(): string[] {
    try {
      return readdirSync(this.folder).flatMap((file) => /^([0-9a-f]{16})\.json$/.exec(file)?.[1] ?? []);
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code === 'ENOENT') return [];
      throw error;
    }
  }
}
