/** Who uses the page, where people have accounts. */
import type { Message } from './message.ts';

export const enCaller = {
  'caller.who': 'Signed in as {name}, {role}.',
  'caller.keeper': 'keeper',
  'caller.helper': 'helper',
  'caller.reader': 'reader',
  'caller.account': 'Passkeys, devices, sign out',
} satisfies Record<string, Message>;
