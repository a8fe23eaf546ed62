/** Who recorded what, when and from where. */
import { given } from '../given-options.ts';
import { ok, type Result } from '../../foundation/index.ts';
import { entryInWords } from '../../app/index.ts';
import type { Receipt } from '../../store/receipts.ts';
import type { Command, CommandInput } from '../command.ts';
import { type ExitStatus, exitStatus } from '../exit-status.ts';
import { withExistingStore } from '../household.ts';
import { wrapped } from '../text/layout.ts';
import { printJson, printLines } from '../text/print.ts';

const usualCount = 100;

type Options = CommandInput['options'];

export const command: Command = {
  usage: 'flylarder audit [OPTIONS]',
  about: `Says of each entry, newest first, who sent it, when and from which address, and
whom it names as its author. Entries of the command line have no sender.`,
  options: ['data', 'database', 'household', 'limit', 'language', 'degrees', 'json'],
  mostWords: 0,
  run: audit,
};

async function audit({ options }: CommandInput): Promise<Result<ExitStatus>> {
  const found = await withExistingStore(options, async (_, receipts) =>
    ok(await receipts(Number.MAX_SAFE_INTEGER, options.limit ?? usualCount)),
  );
  if (!found.ok) return found;
  if (options.json)
    printJson(found.value.map(({ entry, ...receipt }) => ({ ...receipt, ...authored(entry, options) })));
  else printLines(found.value.flatMap((each) => lines(each, options)));
  return ok(exitStatus.done);
}

function authored(entry: Receipt['entry'], { language, degrees }: Options) {
  const { id, on, kind, by } = entry;
  return { id, on, kind, by, sentence: entryInWords(entry, given({ language, degrees })) };
}

function lines({ entry, person, address, receivedAt }: Receipt, { language, degrees }: Options): string[] {
  const sender = person === null ? 'on this computer' : `${person} from ${address}`;
  const head = `${receivedAt ?? entry.recordedAt}  ${sender}, signed "${entry.by}"`;
  return [head, ...wrapped(`${entry.on}: ${entryInWords(entry, given({ language, degrees }))}`, '  ')];
}
