/** One plain sentence for a job's reason, with its numbers. */

/** Why a job is there: a code, and the numbers that the sentence tells. Days count from today. */
export interface Reason {
  code: ReasonCode;
  values: Record<string, number | string>;
}

export type ReasonCode =
  | 'cover-need'
  | 'cover-need-and-founders'
  | 'keep-founders'
  | 'bridge-gap'
  | 'restart-founders'
  | 'feed-oldest-first'
  | 'feed-at-best'
  | 'feed-short'
  | 'past-its-time';

type Say = (value: (key: string) => string, dayOf: (key: string) => string) => string;

const sentences: Record<ReasonCode, Say> = {
  'cover-need': (v, d) =>
    `Without them ${v('strain')} would not be safe from ${d('shortDay')}; ${v('cups')} cover the need until ${d('untilDay')}, when cups of later sessions help.`,
  'cover-need-and-founders': (v, d) =>
    `They cover the need of ${v('strain')} from ${d('shortDay')} and keep cups at their best ready as founders from ${d('foundersDay')}.`,
  'keep-founders': (v, d) =>
    `The need is covered, but from ${d('foundersDay')} fewer than ${v('founderCups')} cups of ${v('strain')} would be at their best to give founders.`,
  'bridge-gap': (_v, d) =>
    `Cups started now give flies only from ${d('homeGrownFromDay')}; bought ones arriving on ${d('arrivalDay')} feed until then but start no other cup before ${d('releasedDay')}.`,
  'restart-founders': (v, d) =>
    `No cup of ${v('strain')} will be at its best to give founders; those arriving on ${d('arrivalDay')} may give them from ${d('releasedDay')}, when quarantine is over.`,
  'feed-oldest-first': (v) =>
    `${v('flies')} flies are wanted; cups that are thrown out soonest are fed from first, so that those at their best keep founders.`,
  'feed-at-best': (v) => `${v('flies')} flies are wanted and only cups at their best hold enough.`,
  'feed-short': (v) => `${v('wanted')} flies are wanted but only about ${v('flies')} are expected on hand.`,
  'past-its-time': (v) =>
    `It is ${v('ageDays')} days old and gives hardly any more flies; about ${v('flies')} are left in it after feeding.`,
};

/** The sentence in English; `dayText` writes a day counted from today. */
export function reasonSentence(reason: Reason, dayText: (day: number) => string = (day) => `day ${day}`): string {
  const value = (key: string) => String(reason.values[key] ?? '');
  return sentences[reason.code](value, (key) => dayText(Number(reason.values[key])));
}
