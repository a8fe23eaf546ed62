/** The commands that need the household's facts. */
import { type Question, today } from '../app/index.ts';
import type { Result } from '../foundation/index.ts';
import { type Facts, fold } from '../logbook/index.ts';
import type { Command, CommandInput } from './command.ts';
import type { ExitStatus } from './exit-status.ts';
import { given } from './given-options.ts';
import { databaseUrl, householdExists, householdFolder, readHousehold } from './household.ts';
import { withKeptWork } from './kept-work-file.ts';
import type { OptionName, Options } from './options.ts';
import { todayIn } from './shell.ts';

export interface HouseholdCommand {
  usage: string;
  about: string;
  /** Beside data, logbook, on and seed. */
  options?: readonly OptionName[];
  mostWords?: number;
  /** Answers from the books while there is no household yet. */
  worksWithout?: boolean;
  run(facts: Facts, question: Question, input: CommandInput): Promise<Result<ExitStatus>>;
}

export function householdCommand({
  options = [],
  mostWords = 0,
  worksWithout = false,
  ...kind
}: HouseholdCommand): Command {
  return {
    usage: kind.usage,
    about: kind.about,
    options: ['data', 'database', 'household', 'logbook', 'on', 'seed', ...options],
    mostWords,
    run: async (input) => {
      if (worksWithout && isUnnamedAndMissing(input.options)) {
        const facts = fold([]);
        const on = input.options.on ?? todayIn(facts.household.timeZone);
        return kind.run(facts, { on, seed: input.options.seed ?? 1 }, input);
      }
      const household = await readHousehold(input.options);
      if (!household.ok) return household;
      const { facts, on } = household.value;
      const { seed = 1, scenarios, weeks, language, degrees } = input.options;
      const asked = given({ scenarios, weeks, language, degrees });
      return keepingWork(input.options, () => kind.run(facts, { on, seed, ...asked }, input));
    },
  };
}

/** A household that was named and is not there is a slip of the pen; none at all is a newcomer. */
function isUnnamedAndMissing(options: Options): boolean {
  const isNamed =
    options.data !== undefined || options.logbook !== undefined || process.env.FLYLARDER_DATA !== undefined;
  return !isNamed && !householdExists(options);
}

/** Answers once and throws the answer away, so that the first question that is really asked finds the work done. */
export async function warmUp(options: Options): Promise<void> {
  const household = await readHousehold(options);
  if (!household.ok) return;
  const { facts, on } = household.value;
  await keepingWork(options, async () => today(facts, { on, seed: 1 }));
}

/** Runs `act` with the work that is kept in the household's folder, where it is a folder. */
export function keepingWork<T>(options: Options, act: () => Promise<T>): Promise<T> {
  return withKeptWork(cacheFolder(options), act);
}

/** A household in a folder keeps its work there; one in a database or a file that is only read does not. */
export function cacheFolder(options: Options): string | null {
  return options.logbook !== undefined || databaseUrl(options) !== undefined ? null : householdFolder(options);
}
