/** A cup thrown out or given away. */
import { type Said, said } from '../../foundation/index.ts';
import { type EndReason, endReasons } from '../fold/facts.ts';
import { entryKind, nameOf } from './entry-kind.ts';
import { key, word } from './field-checks.ts';

const sentenceByReason: Record<EndReason, (cup: string) => Said> = {
  spent: (cup) => said`${cup} thrown out, spent.`,
  mould: (cup) => said`${cup} thrown out for mould.`,
  mites: (cup) => said`${cup} thrown out for mites.`,
  dry: (cup) => said`${cup} thrown out, dried up.`,
  wet: (cup) => said`${cup} thrown out, too wet.`,
  crashed: (cup) => said`${cup} thrown out, crashed.`,
  contaminated: (cup) => said`${cup} thrown out, other flies in it.`,
  given: (cup) => said`${cup} given away.`,
  other: (cup) => said`${cup} ended.`,
};

export const ended = entryKind('ended', { culture: key, reason: word(endReasons) }, (e, names) =>
  sentenceByReason[e.reason](nameOf(names, 'culture', e.culture)),
);
