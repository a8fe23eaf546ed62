/** The options of all commands: how each is written, what it means and how its value is read. */
import { parseArgs } from 'node:util';
import {
  type Day,
  degreeUnits,
  type DegreeUnit,
  failed,
  ok,
  parseDay,
  type Problem,
  type Result,
  nearestName,
} from '../foundation/index.ts';
import {
  type AgeSpan,
  ageSpan,
  type ClockTime,
  clockTime,
  databaseAddress,
  decimal,
  flag,
  ipAddress,
  oneOf,
  option,
  type OptionKind,
  text,
  webAddress,
  wholeNumber,
} from './option-values.ts';
import { wrapped } from './text/layout.ts';

const optionTable = {
  data: option<string>('DIR', "the household's folder (default: household, or FLYLARDER_DATA)", text),
  logbook: option<string>('FILE', 'read this JSON Lines logbook instead; nothing is written', text),
  database: option<string>(
    'URL',
    'a PostgreSQL database in place of the folder (default: DATABASE_URL)',
    databaseAddress,
  ),
  household: option<string>('NAME', 'which household of the database (default: home)', text),
  save: option<string>('DIR', 'put every readable entry into a new household', text),
  on: option<Day>('DATE', 'answer as of this day, such as 2026-11-25 (default: today)', parseDay),
  seed: option<number>('N', 'seed of the random scenarios (default: 1)', wholeNumber(0, 2147483647)),
  json: flag('print the answer as JSON'),
  scenarios: option<number>('N', 'how many scenarios to draw', wholeNumber(50, 100000)),
  weeks: option<number>('N', 'how many weeks ahead', wholeNumber(1, 104)),
  since: option<Day>('DATE', 'what changed since the plan of that day, and why', parseDay),
  'what-if': option<string>('LIST', 'what to compare with, such as animals:1.25,warmer:2', text),
  bounds: flag('how near the best the plan is, and where its cups go'),
  rules: flag('what each rule costs, and the second-best plan'),
  'nothing-new': flag('as if no cup were started or bought from now on'),
  by: option<string>('NAME', 'who records (default: your user name)', text),
  port: option<number>('N', 'port to listen on (default: 4180, or a free one; 0: any free one)', wholeNumber(0, 65535)),
  lan: flag('open it to paired devices of the home network'),
  'https-port': option<number>('N', 'port of HTTPS on the home network (default: 4443)', wholeNumber(0, 65535)),
  'public-url': option<string>('URL', 'address under which your own proxy shows this server', webAddress),
  accounts: flag('people sign in, each to their household of the database'),
  listen: option<string>('ADDRESS', 'address to listen on (default: 127.0.0.1)', ipAddress),
  'metrics-port': option<number>('N', 'port of /metrics and /healthz (default: none)', wholeNumber(0, 65535)),
  role: option<'keeper' | 'helper' | 'reader'>('ROLE', 'keeper, helper or reader', oneOf('keeper', 'helper', 'reader')),
  strain: option<string>('STRAIN', 'a strain of the books (default: melanogaster)', text),
  temperature: option<number>('C', 'temperature in the cup, degrees Celsius (default: 23)', decimal(0, 45)),
  'temperature-file': option<string>('FILE', 'CSV of day or moment and degrees, oldest first, from the start on', text),
  founders: option<number>('N', 'flies that start the cup, or each generation of a cross', wholeNumber(1, 5000)),
  'founder-age': option<number>('DAYS', 'mean age of those flies', decimal(0, 200)),
  medium: option<number>('G', 'medium in the cup, grams', decimal(1, 10000)),
  'medium-g': option<number>('G', 'medium in the cup, grams', decimal(1, 10000)),
  'surface-cm2': option<number>('CM2', 'surface of the medium', decimal(1, 10000)),
  'harvest-every': option<number>('DAYS', 'days between harvests', wholeNumber(1, 60)),
  limit: option<number>('N', 'at most so many (default: 100)', wholeNumber(1, 1000000)),
  'harvest-share': option<number>('SHARE', 'of the flies that a harvest takes (default: 0.5)', decimal(0, 1)),
  'lights-on': option<number>('HOUR', 'at which it gets light: tells the hours of emergence', wholeNumber(0, 23)),
  humidity: option<number>('PERCENT', 'relative humidity of the room', decimal(0, 100)),
  yeast: option<'none' | 'good' | 'excess'>(
    'AMOUNT',
    'live yeast: none, good (default) or excess',
    oneOf('none', 'good', 'excess'),
  ),
  wet: option<AgeSpan>('DAYS', 'medium too wet on these days of age, such as 3-8', ageSpan),
  dry: option<AgeSpan>('DAYS', 'medium too dry on these days of age', ageSpan),
  mass: option<number>('G', 'one animal, grams', decimal(0, 1000000)),
  count: option<number>('N', 'how many animals', wholeNumber(0, 1000000000)),
  growth: option<number>('G', 'mass that one animal gains a day, grams', decimal(-1000, 1000000)),
  share: option<number>('SHARE', 'share of the diet that is flies, above 0 to 1 (default: 1)', decimal(-1000, 1000)),
  full: option<number>('MG', 'the pot with the flies, milligrams', decimal(0, 1e12)),
  empty: option<number>('MG', 'the pot without them', decimal(0, 1e12)),
  step: option<number>('MG', 'smallest step of the scale (default: 10)', decimal(0, 1e12)),
  reared: option<number>('C', 'where the flies grew up (default: 23)', decimal(-1000, 1000)),
  female: option<string>('GENOTYPE', 'the mother, such as vg/vg', text),
  male: option<string>('GENOTYPE', 'the father, such as "vg/+; ap/+"', text),
  generations: option<number>('N', 'how many generations (default: 4)', wholeNumber(1, 200)),
  distances: option<string>('LIST', 'map units that replace the map, such as vg-ap=11.8', text),
  cull: option<'winged' | 'flightless'>(
    'KIND',
    'cull winged or flightless flies each generation',
    oneOf('winged', 'flightless'),
  ),
  recipe: option<string>('RECIPE', 'a recipe of yours or one to start with (default: the last mixed)', text),
  cups: option<number>('N', 'how many cups (default: as many as the stock makes)', wholeNumber(1, 10000)),
  batch: option<number>('G', 'instead of cups: grams of the whole batch', decimal(1, 1000000)),
  preservative: option<string>('NAME', 'a preservative to add, with --percent', text),
  percent: option<number>('P', 'its dose in the finished medium', decimal(0, 100)),
  'stock-percent': option<number>('P', 'strength of the solution it is in', decimal(0.01, 100)),
  measures: option<'us' | 'metric' | 'au'>(
    'SYSTEM',
    'spoons and cups: us, metric (default) or au',
    oneOf('us', 'metric', 'au'),
  ),
  language: option<'en' | 'de'>(
    'LANGUAGE',
    'en (default) or de: papers, reasons and warnings; headings of answers stay English',
    oneOf('en', 'de'),
  ),
  degrees: option<DegreeUnit>('UNIT', 'degrees in sentences: C (default) or F', oneOf(...degreeUnits)),
  sheet: option<string>('SIZE', 'a label sheet by name, or one label a page as 50x25 (mm)', text),
  skip: option<number>('N', 'places of the first sheet that are used already', wholeNumber(0, 200)),
  link: option<string>('URL', "what a cup's address begins with (default: http://localhost:4180)", text),
  out: option<string>('FILE', 'write to this file (default: standard output)', text),
  'with-feeding': flag('feeding too, which is every day'),
  at: option<ClockTime>('HH:MM', 'time of day of the jobs (default: whole days)', clockTime),
  until: option<Day>('DATE', 'last day', parseDay),
  contact: option<string>('TEXT', 'whom to call', text),
  mated: flag('the flies have mated by the time they are culled'),
  match: option<string>('LIST', 'what columns mean, as COLUMN=FIELD,COLUMN=FIELD', text),
  'date-order': option<'dmy' | 'mdy' | 'ymd'>('ORDER', 'dmy, mdy or ymd', oneOf('dmy', 'mdy', 'ymd')),
  place: option<string>('PLACE', 'a place by its key', text),
  unit: option<'C' | 'F' | 'K'>('UNIT', 'C, F or K', oneOf('C', 'F', 'K')),
  zone: option<string>('ZONE', "the logger's clock: Europe/Berlin, or an offset such as +01:00", text),
  warmer: option<number>('C', 'that much warmer; below 0 for cooler', decimal(-15, 15)),
  move: option<string>('CUP', 'a cup to carry, by key or label, with --to', text),
  to: option<string>('PLACE', 'where it is carried', text),
  yes: flag('write it'),
  undo: option<string>('NAME', 'take an import back', text),
  csv: option<string>('DIR', 'write one CSV table a kind into this folder', text),
  help: flag('say how the command is used'),
} satisfies Record<string, OptionKind<unknown>>;

export type OptionName = keyof typeof optionTable;
export type Options = {
  [Name in OptionName]?: (typeof optionTable)[Name] extends OptionKind<infer Value> ? Value : never;
};

/** The options and words of a command line, or what is wrong with it. */
export function readArguments(
  args: string[],
  allowed: readonly OptionName[],
): Result<{ words: string[]; options: Options }> {
  const names: readonly OptionName[] = [...allowed, 'help'];
  const { tokens } = parseArgs({
    args,
    strict: false,
    allowPositionals: true,
    tokens: true,
    options: Object.fromEntries(names.map((name) => [name, { type: optionTable[name].value ? 'string' : 'boolean' }])),
  });
  const words: string[] = [];
  const found: Record<string, unknown> = {};
  const problems: Problem[] = [];
  for (const token of tokens) {
    if (token.kind === 'positional') words.push(token.value);
    if (token.kind !== 'option') continue;
    const name = names.find((known) => known === token.name);
    if (!name) problems.push(unknownOption(token.rawName, names));
    else if (name in found) problems.push({ where: token.rawName, found: 'it twice', expected: 'it once' });
    else {
      const value = readValue(name, token.rawName, token.value);
      if (value.ok) found[name] = value.value;
      else problems.push(...value.problems);
    }
  }
  return problems.length > 0 ? failed(...problems) : ok({ words, options: found as Options });
}

function readValue(name: OptionName, rawName: string, value: string | undefined): Result<unknown> {
  const kind: OptionKind<unknown> = optionTable[name];
  if (kind.value === null) {
    return value === undefined
      ? ok(true)
      : failed({ where: rawName, found: `the value "${value}"`, expected: 'no value: it is a switch' });
  }
  if (value === undefined) return failed({ where: rawName, found: 'no value', expected: `${rawName} ${kind.value}` });
  return kind.read(value, rawName);
}

function unknownOption(rawName: string, names: readonly string[]): Problem {
  const bare = rawName.replace(/^-+/, '');
  const near = nearestName(bare, names);
  if (names.includes('data') && ['household', 'database'].includes(bare)) {
    const expected = '--data DIR; copies and checks of a database are made with its own tools: docs/facility.md';
    return { where: rawName, found: 'a household in a database, where this command needs a folder', expected };
  }
  const all = names.map((name) => `--${name}`).join(', ');
  return {
    where: rawName,
    found: 'an option this command does not have',
    expected: near ? `--${near}` : `one of ${all}`,
  };
}

/** One line for each option, aligned, for a command's help. */
export function optionLines(names: readonly OptionName[]): string[] {
  const kinds = names.map((name): { head: string; about: string } => {
    const kind: OptionKind<unknown> = optionTable[name];
    return { head: kind.value ? `--${name} ${kind.value}` : `--${name}`, about: kind.about };
  });
  const width = Math.max(...kinds.map(({ head }) => head.length));
  return kinds.flatMap(({ head, about }) => wrapped(about, `  ${head.padEnd(width)}  `));
}
