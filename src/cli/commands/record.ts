/** Writes entries into the logbook: from a JSON Lines file, standard input, or one from its fields. */
import { existsSync } from 'node:fs';
import { failed, type Problem, type Result, nearestName } from '../../foundation/index.ts';
import { checkBatch, checkEntry, entryKindNames, fold } from '../../logbook/index.ts';
import type { Command, CommandInput } from '../command.ts';
import { draftFromWords } from '../entry-words.ts';
import type { ExitStatus } from '../exit-status.ts';
import { standardInput } from '../logbook-file.ts';
import type { Options } from '../options.ts';
import { existingEntries, recordEntries, recordFile } from '../recording.ts';
import { entryMaker, todayIn } from '../shell.ts';
import { entryHelp } from '../text/entry-help.ts';
import { wrapped } from '../text/layout.ts';

export const command: Command = {
  usage: 'flylarder record (FILE.jsonl | - | KIND FIELD=VALUE ...) [OPTIONS]',
  about: `Records what happened. A file (- is standard input) has one entry a line, as
\`export\` writes them; lines without id, recordedAt and by are completed. All of
it is written or nothing. Or give one entry's kind and fields:

  flylarder record harvested culture=M12 flies=40
  flylarder record seen culture=M12 present=pupae,adults amount=plenty
  flylarder record household workWeekdays=mon,thu purchase.leadDays=3
  flylarder record ended culture=M9 reason=mould on=2026-11-24

The day is today, or on=DATE or --on DATE. \`record KIND --help\` lists a kind's
fields. Kinds:
${wrapped(entryKindNames.join(', '), '  ', 78).join('\n')}`,
  options: ['data', 'database', 'household', 'on', 'by', 'language', 'degrees', 'json'],
  aboutWord: (word) => (isKind(word) ? entryHelp(word) : null),
  mostWords: 200,
  run: record,
};

async function record({ words, options }: CommandInput): Promise<Result<ExitStatus>> {
  const [what, ...rest] = words;
  if (what === undefined) return failed({ where: 'record', found: 'nothing to record', expected: command.usage });
  if (isKind(what)) return recordOne(what, rest, options);
  if (what !== standardInput && !existsSync(what)) return failed(neitherKindNorFile(what));
  if (rest[0] !== undefined) {
    return failed({ where: 'record', found: `"${rest[0]}" after the file`, expected: command.usage });
  }
  return recordFile(what, options);
}

function isKind(word: string): boolean {
  return (entryKindNames as readonly string[]).includes(word);
}

async function recordOne(kind: string, fields: string[], options: Options): Promise<Result<ExitStatus>> {
  const existing = await existingEntries(options);
  const today = options.on ?? todayIn(fold(existing).household.timeZone);
  const draft = draftFromWords(kind, fields, today);
  if (!draft.ok) return draft;
  const entry = checkEntry(entryMaker(options.by)(draft.value), kind);
  if (!entry.ok) return entry;
  const batch = checkBatch([entry.value], existing, () => kind);
  return batch.ok ? recordEntries(batch.value, options) : batch;
}

function neitherKindNorFile(word: string): Problem {
  const near = nearestName(word, entryKindNames);
  const kinds = near ? `the kind "${near}"` : 'a kind (flylarder record --help lists them)';
  return {
    where: 'record',
    found: `"${word}", neither a file nor a kind of entry`,
    expected: `${kinds}, a file, or -`,
  };
}
