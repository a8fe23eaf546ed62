/** Who recorded what, when and from where. */
import { ok, type Result } from '../../foundation/index.ts';
import { entryInWords } from '../../app/index.ts';
import type { Receipt } from '../../store/receipts.ts';
import type { Command, CommandInput } from '../command.ts';
import { type ExitStatus, exitStatus } from '../exit-status.ts';
import { withExistingStore } from '../household.ts';
import { wrapped } from '../text/layout.ts';
import { printJson, printLines } from '../text/print.ts';

const usualCount = 100;

type Language = CommandInput['options']['language'];

export const command: Command = {
  usage: 'flylarder audit [OPTIONS]',
  about: `Says of each entry, newest first, who sent it, when and from which address, and
whom it names as its author. Entries of the command line have no sender.`,
  options: ['data', 'database', 'household', 'limit', 'language', 'json'],
  mostWords: 0,
  run: audit,
};

async function audit({ options }: CommandInput): Promise<Result<ExitStatus>> {
  const found = await withExistingStore(options, async (_, receipts) =>
    ok(await receipts(Number.MAX_SAFE_INTEGER, options.limit ?? usualCount)),
  );
  if (!found.ok) return found;
  if (options.json)
    printJson(found.value.map(({ entry, ...receipt }) => ({ ...receipt, ...authored(entry, options.language) })));
  else printLines(found.value.flatMap((each) => lines(each, options.language)));
  return ok(exitStatus.done);
}

function authored(entry: Receipt['entry'], language: Language) {
  const { id, on, kind, by } = entry;
  return { id, on, kind, by, sentence: entryInWords(entry, language) };
}

function lines({ entry, person, address, receivedAt }: Receipt, language: Language): string[] {
  const sender = person === null ? 'on this computer' : `${person} from ${address}`;
  const head = `${receivedAt ?? entry.recordedAt}  ${sender}, signed "${entry.by}"`;
  return [head, ...wrapped(`${entry.on}: ${entryInWords(entry, language)}`, '  ')];
}
