/** A cup thrown out or given away. */
import { type EndReason, endReasons } from '../fold/facts.ts';
import { entryKind, nameOf } from './entry-kind.ts';
import { key, word } from './field-checks.ts';

const sentenceByReason: Record<EndReason, string> = {
  spent: 'thrown out, spent',
  mould: 'thrown out for mould',
  mites: 'thrown out for mites',
  dry: 'thrown out, dried up',
  wet: 'thrown out, too wet',
  crashed: 'thrown out, crashed',
  contaminated: 'thrown out, other flies in it',
  given: 'given away',
  other: 'ended',
};

export const ended = entryKind(
  'ended',
  { culture: key, reason: word(endReasons) },
  (e, names) => `${nameOf(names, 'culture', e.culture)} ${sentenceByReason[e.reason]}.`,
);
