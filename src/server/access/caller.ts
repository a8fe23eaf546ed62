/** Who sends a request: this computer's own user, a paired device, or a person with an account. */
import type { Context } from 'hono';

export const roles = ['keeper', 'helper', 'reader'] as const;
/** A keeper may do everything, a helper records the day's work, a reader only looks. */
export type Role = (typeof roles)[number];

export interface Caller {
  /** What entries without an author are signed with. */
  name: string;
  role: Role;
  /** The address that the request came from. */
  address: string;
  /** The device or account that it belongs to; null on the computer itself. */
  credential: string | null;
  /** How to learn that it has been shut out; absent where nobody can be. */
  standing?: Standing;
}

export interface Standing {
  /** Is the device still paired, the session still open, the right still given? */
  holds(): Promise<boolean>;
  /** Calls `changed` when that may have ended, at once; the function returned stops it. */
  onChange(changed: () => void): () => void;
}

interface Bindings {
  caller?: Caller;
  incoming?: { socket?: { remoteAddress?: string; encrypted?: boolean } };
}

export function setCaller(context: Context, caller: Caller): void {
  (context.env as Bindings).caller = caller;
}

/** Throws where no guard has said who it is: a route without a guard answers nobody. */
export function callerOf(context: Context): Caller {
  const { caller } = context.env as Bindings;
  if (!caller) throw new Error('callerOf: this request passed no guard');
  return caller;
}

/** The address at the other end of the connection; empty in a test that has none. */
export function remoteAddress(context: Context): string {
  return ((context.env ?? {}) as Bindings).incoming?.socket?.remoteAddress ?? '';
}

export function isEncrypted(context: Context): boolean {
  return ((context.env ?? {}) as Bindings).incoming?.socket?.encrypted === true;
}

/** 127.0.0.0/8 and ::1, also as IPv4 inside IPv6. */
export function isLoopback(address: string): boolean {
  return /^(::ffff:)?127\.\d+\.\d+\.\d+$/.test(address) || address === '::1';
}
