/** Wer die Seite benutzt, wo Leute Konten haben. */
import type { Message } from './message.ts';
import type { enCaller } from './en-caller.ts';

export const deCaller: Record<keyof typeof enCaller, Message> = {
  'caller.who': 'Angemeldet als {name}, {role}.',
  'caller.keeper': 'Halterin oder Halter',
  'caller.helper': 'Hilfe',
  'caller.reader': 'nur lesend',
  'caller.account': 'Passkeys, Geräte, Abmelden',
};
