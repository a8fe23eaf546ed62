/** What every command is: a name, what it takes, and what it does with it. */
import type { Result } from '../foundation/index.ts';
import type { ExitStatus } from './exit-status.ts';
import type { OptionName, Options } from './options.ts';

export interface CommandInput {
  /** The words after the command's name that are not options. */
  words: string[];
  options: Options;
}

export interface Command {
  /** How it is called, in the notation of manual pages. */
  usage: string;
  /** What it does, in a few lines of at most 78 characters. */
  about: string;
  options: readonly OptionName[];
  /** More of what one of its words means, such as a kind of entry; null where there is no more. */
  aboutWord?(word: string): string[] | null;
  /** The most words it takes. */
  mostWords: number;
  /** Resolves to problems with the input (nothing was written), or to the exit status. */
  run(input: CommandInput): Promise<Result<ExitStatus>>;
}
