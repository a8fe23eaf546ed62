import { failed } from '../../foundation/index.ts';
import type { Command } from '../command.ts';
import { recordFile } from '../recording.ts';

export const command: Command = {
  usage: 'flylarder import (FILE.jsonl | -) [OPTIONS]',
  about: `Reads a JSON Lines logbook into the household, all of it or nothing. Entries that
are there already are passed over. The same as \`flylarder record FILE\`.`,
  options: ['data', 'database', 'household', 'by', 'json'],
  mostWords: 1,
  run: async ({ words, options }) =>
    words[0] === undefined
      ? failed({ where: 'import', found: 'no file', expected: command.usage })
      : recordFile(words[0], options),
};
