/**
 * The secrets that a browser carries in a cookie: `id.secret`. Only a digest is kept. The secret has 256
 * random bits, so a plain SHA-256 is enough: there is nothing to guess.
 */
import { createHash, randomBytes, timingSafeEqual } from 'node:crypto';

export interface Token {
  id: string;
  /** What the browser gets. */
  text: string;
  /** What is kept. */
  secretHash: string;
}

export function newToken(): Token {
  const id = randomBytes(8).toString('hex');
  const secret = randomBytes(32).toString('base64url');
  return { id, text: `${id}.${secret}`, secretHash: digest(secret) };
}

/** The parts of a token's text, or null when it has another form. */
export function tokenParts(text: string | undefined): { id: string; secret: string } | null {
  const match = /^([0-9a-f]{16})\.([A-Za-z0-9_-]{43})$/.exec(text ?? '');
  return match ? { id: match[1] as string, secret: match[2] as string } : null;
}

/** Takes as long whether the first or the last character differs. */
export function secretFits(secret: string, keptHash: string): boolean {
  const [given, kept] = [Buffer.from(digest(secret), 'hex'), Buffer.from(keptHash, 'hex')];
  return given.length === kept.length && timingSafeEqual(given, kept);
}

export function digest(secret: string): string {
  return createHash('sha256').update(secret).digest('hex');
}
