/** Passwords as argon2id digests (RFC 9106), by a library that brings the algorithm compiled. */
import { hash, verify } from '@node-rs/argon2';

/** argon2id, the library's own choice, with 19 MiB, two passes, one lane: what OWASP's password storage page names as its first choice. */
const cost = { memoryCost: 19_456, timeCost: 2, parallelism: 1 };

export const mostPasswordLength = 200;

export function hashPassword(password: string): Promise<string> {
  return hash(password, cost);
}

let nobody: Promise<string> | null = null;

/** With `kept` null, for a name that nobody has, it takes as long and is false. */
export async function passwordFits(password: string, kept: string | null): Promise<boolean> {
  nobody ??= hashPassword('of nobody');
  const fits = await verify(kept ?? (await nobody), password);
  return kept !== null && fits;
}
