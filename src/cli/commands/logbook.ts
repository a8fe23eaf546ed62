/** Lists what was written, with the ids by which an entry is corrected. */
import { given } from '../given-options.ts';
import { entryInWords, namesIn } from '../../app/index.ts';
import { failed, ok, type Result } from '../../foundation/index.ts';
import { type Entry, type Facts, fold } from '../../logbook/index.ts';
import type { Command, CommandInput } from '../command.ts';
import { type ExitStatus, exitStatus } from '../exit-status.ts';
import { readEntries } from '../household.ts';
import { logbookText } from '../text/logbook-text.ts';
import { printJson, printLines } from '../text/print.ts';

/** Entries shown when no cup is named. */
const lastEntries = 20;

export const command: Command = {
  usage: 'flylarder logbook [CUP] [OPTIONS]',
  about: `Lists what was written, the newest last: the last ${lastEntries} entries, or all that name
the cup. Under each stands its id. A wrong one is struck out or corrected by a new
entry; both stay readable:

  flylarder record amended amends=ID void=true
  flylarder record amended amends=ID replacement='{"kind":"harvested",
    "culture":"M12","flies":90}'`,
  options: ['data', 'database', 'household', 'logbook', 'language', 'degrees', 'json'],
  mostWords: 1,
  run: list,
};

async function list({ words: [cup], options }: CommandInput): Promise<Result<ExitStatus>> {
  const entries = await readEntries(options);
  if (!entries.ok) return entries;
  const facts = fold(entries.value);
  const ordered = [...entries.value].sort((a, b) => (a.recordedAt + a.id < b.recordedAt + b.id ? -1 : 1));
  const chosen = cup === undefined ? ordered.slice(-lastEntries) : ordered.filter(namesCup(facts, cup));
  if (cup !== undefined && chosen.length === 0) {
    return failed({ where: 'logbook', found: `the cup ${cup}, which no entry names`, expected: 'the label of a cup' });
  }
  if (options.json) printJson(chosen);
  else {
    const names = namesIn(facts);
    const amended = new Set(entries.value.flatMap((entry) => (entry.kind === 'amended' ? [entry.amends] : [])));
    const telling = given({ language: options.language, degrees: options.degrees });
    const said = (entry: Entry) => entryInWords(entry, telling, names);
    printLines(logbookText(chosen, said, amended));
  }
  return ok(exitStatus.done);
}

/** By the cup's label or key: entries of its own, and amendments of those. */
function namesCup({ cultures }: Facts, cup: string): (entry: Entry, i: number, all: Entry[]) => boolean {
  const keys = new Set([cup, ...cultures.filter(({ label }) => label === cup).map(({ culture }) => culture)]);
  const isOf = (entry: Entry) => 'culture' in entry && entry.culture !== undefined && keys.has(entry.culture);
  return (entry, _, all) =>
    isOf(entry) || (entry.kind === 'amended' && all.some((other) => other.id === entry.amends && isOf(other)));
}
