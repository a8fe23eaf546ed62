/** No text that people read is hard-coded: the page and the server's own pages take it from catalogues. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { scriptsOf, textsOfHtml, textsOfMarkup, textsOfScript } from './hard-coded.ts';

const source = join(import.meta.dirname, '../../src');

function filesOf(room: string, ending: string) {
  return readdirSync(join(source, room), { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith(ending) && !file.endsWith('.test.ts') && !file.startsWith('text'))
    .map((file) => ({ file, text: readFileSync(join(source, room, file), 'utf8') }));
}

/** Strings of two words that nobody reads: values of answers, and names under which a browser keeps things. */
const notRead = [
  'mixed strains',
  'two species',
  'winged flies',
  'same session',
  'same place',
  'same batch',
  'breeds true',
  'session failure',
  'flightless virgins',
  'flightless mated',
  'too little',
  'too few weighings',
  'open recording form',
  /^flylarder [a-z ]+$/,
  /^@media /,
  // How an import signs its entries; file names are looked for by it.
  'import of',
  // A paper size's own name.
  'Letter',
  // The project's name, a file's name, the part of an address that holds the key.
  '· Flylarder',
  'calendar.ics',
  '?key=',
  // A language is called by its own name in every language.
  'English',
  'Deutsch',
];
const isRead = (text: string) =>
  !notRead.some((known) => (typeof known === 'string' ? known === text.trim() : known.test(text)));

describe('no text is hard-coded', () => {
  const components = filesOf('web', '.svelte');
  const modules = filesOf('web', '.ts');

  it('in the markup of the page', () => {
    expect(components.length).toBeGreaterThan(30);
    const found = components.flatMap(({ file, text }) =>
      textsOfMarkup(text)
        .filter(isRead)
        .map((words) => `${file}: ${words}`),
    );
    expect(found).toEqual([]);
  });

  it('in the programs of the page', () => {
    expect(modules.length).toBeGreaterThan(30);
    const scripts = [...components.map(({ file, text }) => ({ file, text: scriptsOf(text) })), ...modules];
    const found = scripts.flatMap(({ file, text }) =>
      textsOfScript(text)
        .filter(isRead)
        .map((words) => `${file}: ${words}`),
    );
    expect(found).toEqual([]);
  });

  it('in the pages that the server writes', () => {
    const pages = filesOf('server', '.ts').filter(({ text }) => text.includes('html`'));
    expect(pages.length).toBeGreaterThan(5);
    const found = pages.flatMap(({ file, text }) =>
      textsOfHtml(text)
        .filter(isRead)
        .map((words) => `${file}: ${words}`),
    );
    expect(found).toEqual([]);
  });
});

describe('what would be found', () => {
  it.each([
    ['<p>Hello</p>', ['Hello']],
    ['<button aria-label="Close it">x</button>', ['Close it']],
    ["<p>{open ? 'closed' : t('open')}</p>", ['closed']],
    ['<p>{`${n} flies`}</p>', ['flies']],
    ["<input placeholder={'Search'} />", ['Search']],
    ['<Sheet heading="Throw it out" kind="quiet" />', ['Throw it out']],
    ["<button onclick={() => say('It is done')}>+</button>", ['It is done']],
    ['<p class="large soft">{words} {n} mg {t(`cup.${kind}`)}</p>', []],
  ])('in %s', (markup, texts) => expect(textsOfMarkup(markup)).toEqual(texts));

  it('in a program', () => {
    expect(textsOfScript("say('It is done'); const title = `Start ${n} cups of it`;")).toEqual([
      'It is done',
      'Start ',
      ' cups of it',
    ]);
    expect(textsOfScript("throw new RangeError('ask: no such question'); go('shelf');")).toEqual([]);
  });

  it('in HTML', () => {
    expect(textsOfHtml('html`<p>Sign in as ${name}</p><input placeholder="my phone">`')).toEqual([
      'my phone',
      'Sign in as',
    ]);
    expect(textsOfHtml('html`<p class="quiet">${text.signIn}</p>`')).toEqual([]);
  });
});

describe('German', () => {
  it('says Sie throughout', () => {
    const catalogues = ['web/text', 'server/text', 'paper/text', 'app/words'].flatMap((folder) =>
      readdirSync(join(source, folder))
        .filter((file) => /^de\b.*\.ts$/.test(file))
        .map((file) => readFileSync(join(source, folder, file), 'utf8')),
    );
    expect(catalogues.length).toBeGreaterThan(15);
    const familiar = /[^.]{0,30}(?<![\p{L}])(du|dich|dir|dein\p{L}*|euch|euer|eure[mnrs]?)(?![\p{L}]).{0,20}/giu;
    expect(catalogues.flatMap((text) => text.match(familiar) ?? [])).toEqual([]);
  });
});
