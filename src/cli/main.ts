/** The command line: finds the command, reads its options, runs it, and says what is wrong. */
import {
  failed,
  gatheredProblems,
  ok,
  type Problem,
  problemText,
  type Result,
  nearestName,
} from '../foundation/index.ts';
import type { Command } from './command.ts';
import { commandTable } from './commands/command-table.ts';
import { type ExitStatus, exitStatus } from './exit-status.ts';
import { optionLines, readArguments } from './options.ts';
import { StoreFault } from '../store/store.ts';
import { reflowed } from './text/layout.ts';
import { printLines } from './text/print.ts';
import { flylarderVersion } from './version.ts';

async function main(args: string[]): Promise<ExitStatus> {
  const [name, ...rest] = args;
  if (name === undefined || name === 'help' || name === '--help' || name === '-h') return showHelp(rest[0], rest[1]);
  if (name === '--version' || name === 'version') return showVersion();
  const outcome = await runCommand(name, rest);
  if (outcome.ok) return outcome.value;
  printProblems(gatheredProblems(outcome.problems));
  return exitStatus.badInput;
}

/** So many are read at once; a file with more is mended in turns. */
const mostProblems = 40;

function printProblems(problems: readonly Problem[]): void {
  for (const problem of problems.slice(0, mostProblems)) console.error(problemText(problem));
  if (problems.length > mostProblems) console.error(`and ${problems.length - mostProblems} more like these`);
}

async function runCommand(name: string, args: string[]): Promise<Result<ExitStatus>> {
  const loaded = await loadCommand(name);
  if (!loaded.ok) return loaded;
  const command = loaded.value;
  const input = readArguments(args, command.options);
  if (!input.ok) return input;
  if (input.value.options.help) return ok(showCommandHelp(command, input.value.words[0]));
  const { words } = input.value;
  if (words.length > command.mostWords) {
    return failed({ where: name, found: `"${words[command.mostWords]}"`, expected: command.usage });
  }
  return command.run(input.value);
}

async function loadCommand(name: string): Promise<Result<Command>> {
  const entry = Object.hasOwn(commandTable, name) ? commandTable[name] : undefined;
  if (entry) return ok((await entry.load()).command);
  const names = Object.keys(commandTable);
  const near = nearestName(name, names);
  const expected = near ? `${near} (flylarder help lists all)` : `one of ${names.join(', ')}`;
  return failed({ where: 'flylarder', found: `the unknown command "${name}"`, expected });
}

async function showHelp(name?: string, word?: string): Promise<ExitStatus> {
  if (name !== undefined) {
    const loaded = await loadCommand(name);
    if (loaded.ok) return showCommandHelp(loaded.value, word);
  }
  const width = Math.max(...Object.keys(commandTable).map((known) => known.length));
  printLines([
    'Flylarder: logbook, forecast and daily jobs for growing flightless fruit flies.',
    '',
    'Usage: flylarder COMMAND [OPTIONS]',
    '',
    ...Object.entries(commandTable).map(([known, { summary }]) => `  ${known.padEnd(width)}  ${summary}`),
    '',
    'flylarder COMMAND --help says more. Exit status: 0 done, 1 a warning that needs',
    'you, 2 bad input (nothing was written), 3 a fault.',
  ]);
  return exitStatus.done;
}

function showCommandHelp(command: Command, word?: string): ExitStatus {
  const more = word === undefined ? null : (command.aboutWord?.(word) ?? null);
  printLines([
    ...(more ?? [`Usage: ${command.usage}`, '', ...reflowed(command.about)]),
    '',
    ...optionLines([...command.options, 'help']),
  ]);
  return exitStatus.done;
}

function showVersion(): ExitStatus {
  printLines([`flylarder ${flylarderVersion}`]);
  return exitStatus.done;
}

/** What the store says of itself (a full disk, a locked file) is for the keeper; anything else is a bug. */
function faultText(fault: unknown): string {
  if (fault instanceof StoreFault) return problemText(fault.problem);
  return `flylarder: a fault of the program, not of your input: ${fault instanceof Error ? fault.stack : fault}`;
}

try {
  process.exitCode = await main(process.argv.slice(2));
} catch (fault) {
  console.error(faultText(fault));
  process.exitCode = exitStatus.fault;
}
