/**
 * The code that lets one device in: shown on the computer, typed or scanned on the device, good once and
 * for ten minutes. It lies as a digest in the household's folder, so that the server and the command
 * line give and take the same one.
 */
import { randomInt } from 'node:crypto';
import { unlinkSync } from 'node:fs';
import { join } from 'node:path';
import { readPrivateFile, writePrivateFile } from './private-file.ts';
import { digest, secretFits } from './token.ts';

const goodForMs = 600_000;
/** Wrong codes after which the right one is withdrawn: 31^8 codes leave a guesser no chance. */
const mostWrong = 20;
/** Without characters that look alike. */
const alphabet = '23456789ABCDEFGHJKMNPQRSTUVWXYZ';
const codeLength = 8;

export interface Invitation {
  /** As it is shown: two groups of four. */
  code: string;
  /** ISO instant. */
  until: string;
}

interface Kept {
  codeHash: string;
  untilMs: number;
  wrong: number;
}

const fileOf = (household: string) => join(household, 'devices', 'invitation.json');

/** A new code; a former one no longer lets anyone in. */
export function invite(household: string, nowMs: number): Invitation {
  const code = Array.from({ length: codeLength }, () => alphabet[randomInt(alphabet.length)]).join('');
  const untilMs = nowMs + goodForMs;
  write(household, { codeHash: digest(code), untilMs, wrong: 0 });
  return { code: `${code.slice(0, 4)}-${code.slice(4)}`, until: new Date(untilMs).toISOString() };
}

/** True once for the right code in time; then it is used up. Small letters and spaces do not matter. */
export function redeem(household: string, code: string, nowMs: number): boolean {
  const text = readPrivateFile(fileOf(household));
  if (text === null) return false;
  const kept = JSON.parse(text) as Kept;
  const fits = secretFits(code.toUpperCase().replace(/[^0-9A-Z]/g, ''), kept.codeHash);
  if (nowMs >= kept.untilMs || kept.wrong >= mostWrong) {
    withdraw(household);
    return false;
  }
  if (fits) return withdraw(household);
  write(household, { ...kept, wrong: kept.wrong + 1 });
  return false;
}

/** Of several who come with the same code, the one whose removal of the file succeeds is let in. */
function withdraw(household: string): boolean {
  try {
    unlinkSync(fileOf(household));
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return false;
    throw error;
  }
}

function write(household: string, kept: Kept): void {
  writePrivateFile(fileOf(household), JSON.stringify(kept));
}
