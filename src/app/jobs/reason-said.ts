/** One plain sentence for a planned job's reason, with its numbers. */
import { type Day, dayFromNumber, type Said, said } from '../../foundation/index.ts';
import type { Reason, ReasonCode } from '../../planner/index.ts';

type Say = (value: (key: string) => string | number, dayOf: (key: string) => { day: Day }) => Said;

const sayings: Record<ReasonCode, Say> = {
  'cover-need': (v, d) =>
    v('cups') === 1
      ? said`Without it ${v('strain')} would not be safe from ${d('shortDay')}; it covers the need until ${d('untilDay')}, when cups of later sessions help.`
      : said`Without them ${v('strain')} would not be safe from ${d('shortDay')}; ${v('cups')} cover the need until ${d('untilDay')}, when cups of later sessions help.`,
  'cover-need-and-founders': (v, d) =>
    v('cups') === 1
      ? said`It covers the need of ${v('strain')} from ${d('shortDay')} and keeps cups at their best ready as founders from ${d('foundersDay')}.`
      : said`They cover the need of ${v('strain')} from ${d('shortDay')} and keep cups at their best ready as founders from ${d('foundersDay')}.`,
  'keep-founders': (v, d) =>
    v('founderCups') === 1
      ? said`The need is covered, but from ${d('foundersDay')} no cup of ${v('strain')} would be at its best to give founders.`
      : said`The need is covered, but from ${d('foundersDay')} fewer than ${v('founderCups')} cups of ${v('strain')} would be at their best to give founders.`,
  'keep-backup': (v) =>
    said`The need is covered; they keep ${v('backupCups')} cups of ${v('strain')} that can found others, as you asked.`,
  'bridge-gap': (_v, d) =>
    said`Cups started now give flies only from ${d('homeGrownFromDay')}; bought ones arriving on ${d('arrivalDay')} feed until then but start no other cup before ${d('releasedDay')}.`,
  'bridge-first': (_v, d) =>
    said`Cups started now give flies only from ${d('homeGrownFromDay')}; bought ones arriving on ${d('arrivalDay')} feed until then. With no cup of your own there is nothing to protect yet: look for mites, then they may found others at once.`,
  'first-founders': (v, d) =>
    said`There is no cup of ${v('strain')} to give founders yet; those arriving on ${d('arrivalDay')} may give them as soon as they are at their best, once you have looked for mites: there is nothing of your own to protect yet.`,
  'restart-founders': (v, d) =>
    said`No cup of ${v('strain')} will be at its best to give founders; those arriving on ${d('arrivalDay')} may give them from ${d('releasedDay')}, when quarantine is over.`,
  'feed-oldest-first': (v) =>
    said`${v('flies')} flies are wanted; cups that are thrown out soonest are fed from first, so that those at their best keep founders.`,
  'feed-at-best': (v) => said`${v('flies')} flies are wanted and only cups at their best hold enough.`,
  'feed-short': (v) => said`${v('wanted')} flies are wanted but only about ${v('flies')} are expected on hand.`,
  'past-its-time': (v) =>
    said`It is ${v('ageDays')} days old and gives hardly any more flies; about ${v('flies')} are left in it after feeding.`,
};

/** @param today day number that the reason's days count from. */
export function reasonSaid(reason: Reason, today: number): Said {
  const value = (key: string) => reason.values[key] ?? '';
  return sayings[reason.code](value, (key) => ({ day: dayFromNumber(today + Number(reason.values[key])) }));
}
