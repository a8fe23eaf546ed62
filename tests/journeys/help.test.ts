import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { emptyFolder, flylarder, type Outcome } from './command-line.ts';

const project = fileURLToPath(new URL('../..', import.meta.url));
const pages = [
  'README.md',
  'CONTRIBUTING.md',
  ...readdirSync(join(project, 'docs'), { recursive: true })
    .map((file) => join('docs', String(file)))
    .filter((file) => file.endsWith('.md')),
];
const textOf = (page: string) => readFileSync(join(project, page), 'utf8');

const help = flylarder(emptyFolder(), ['help']);
const commands = [...help.out.matchAll(/^ {2}([a-z]+) {2,}\S/gm)].map((line) => line[1] as string);
const helps = new Map(commands.map((command) => [command, flylarder(emptyFolder(), [command, '--help'])]));

describe('help', () => {
  it('lists the commands', () => {
    expect(help).toMatchObject({ status: 0, err: '' });
    expect(commands).toEqual(
      expect.arrayContaining(['serve', 'demo', 'record', 'export', 'today', 'forecast', 'plan']),
    );
  });

  for (const command of commands) {
    it(`of ${command} says how it is used, in 80 columns`, () => {
      const said = helps.get(command) as Outcome;
      expect(said).toMatchObject({ status: 0, err: '' });
      expect(said.out).toMatch(new RegExp(`^Usage: flylarder ${command}\\b`));
      // The line of usage may be longer: it is copied, not read.
      const lines = said.out.split('\n').slice(1);
      expect(lines.filter((line) => line.length > 80)).toEqual([]);
    });
  }
});

describe('help of a kind of entry', () => {
  it('lists its fields, those that are needed first, in 80 columns', () => {
    const said = flylarder(emptyFolder(), ['record', 'group', '--help']);
    expect(said).toMatchObject({ status: 0, err: '' });
    const [needed, known] = said.out.split('If known:') as [string, string];
    for (const field of ['group', 'count', 'fliesPerFeeding', 'strain']) expect(needed).toContain(`  ${field} `);
    expect(known).toMatch(/ {2}feedingWeekdays +Every day when left out; list of mon \| tue/);
    expect(known).toContain('arrival.earliest');
    expect(said.out.split('\n').filter((line) => line.length > 80)).toEqual([]);
    expect(flylarder(emptyFolder(), ['help', 'record', 'group']).out).toBe(said.out);
  });
});

describe('without a household', () => {
  it('general questions are answered from the books, and a folder that was named must be there', () => {
    for (const question of [['ration'], ['mix'], ['recipes']]) {
      expect(flylarder(emptyFolder(), question)).toMatchObject({ err: '' });
      expect(flylarder(emptyFolder(), [...question, '--data', 'typo'])).toMatchObject({ status: 2, out: '' });
    }
  });
});

/** Options that the pages print beside a command, by command. */
function optionsIn(text: string): [command: string, option: string][] {
  const printed = [
    ...text.matchAll(/(?:npx |`|^|ExecStart=\S+ )(?:flylarder|bin\/flylarder\.mjs) ([a-z]+)([^`#\n]*)/gm),
  ];
  return printed.flatMap(([, command, rest]) =>
    [...(rest as string).matchAll(/(?<!\S)--[a-z-]+/g)].map(([option]): [string, string] => [
      command as string,
      option,
    ]),
  );
}

describe('pages', () => {
  for (const page of pages) {
    it(`${page} names commands that exist, and links to files that do`, () => {
      const text = textOf(page);
      const named = [...text.matchAll(/(?:npx |`|^)flylarder ([a-z]+)/gm)].map((match) => match[1] as string);
      expect(named.filter((name) => ![...commands, 'help'].includes(name))).toEqual([]);
      const unknown = optionsIn(text).filter(([command, option]) => !helps.get(command)?.out.includes(`${option} `));
      expect(unknown).toEqual([]);
      const links = [...text.matchAll(/\]\((?!https?:|#|mailto:)([^)#]+)/g)].map((match) => match[1] as string);
      expect(links.filter((link) => !existsSync(join(project, dirname(page), link)))).toEqual([]);
      const scripts = [...text.matchAll(/npm run ([a-z:]+)/g)].map((match) => match[1] as string);
      const known = Object.keys(JSON.parse(textOf('package.json')).scripts);
      expect(scripts.filter((script) => !known.includes(script))).toEqual([]);
    });
  }
});
