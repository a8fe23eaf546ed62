import { describe, expect, it } from 'vitest';
import { value, where } from '../../tests/fixtures/results-read.ts';
import { facts, household, on, question, settings, started } from '../../tests/fixtures/two-cup-household.ts';
import { addDays, day } from '../foundation/index.ts';
import type { Job } from './answers.ts';
import { calendar, calendarEvents } from './calendar.ts';
import { labels } from './labels.ts';
import { given, month, shelf, sitter } from './sheets.ts';

describe('labels', () => {
  it('for all living cups, by label or key, each with its dates and address', () => {
    const answer = value(labels(household, { ...question, linkBase: 'http://192.168.1.5:4180/' }));
    expect(answer.labels.map((l) => [l.label, l.link])).toEqual([
      ['M1', 'http://192.168.1.5:4180/#/culture/c1'],
      ['M2', 'http://192.168.1.5:4180/#/culture/c2'],
    ]);
    for (const label of answer.labels) {
      expect((label.firstFliesOn ?? '') > label.startedOn).toBe(true);
      expect((label.throwOutOn ?? '') > (label.firstFliesOn ?? '')).toBe(true);
    }
    expect(value(labels(household, { ...question, cultures: ['M2', 'c1'], sheet: '50x25' })).pages).toBe(2);
  });
  it('refuses unknown cups and sheets', () => {
    expect(where(labels(household, { ...question, cultures: ['M9'] }))).toBe('cultures');
    expect(where(labels(household, { ...question, sheet: 'large' }))).toBe('sheet');
    expect(where(labels(household, { ...question, sheet: '9x9' }))).toBe('label M1; label M2');
  });
});

describe('calendar', () => {
  const job = (fields: Partial<Job>): Job => ({
    id: 'x',
    date: on,
    kind: 'start',
    strain: 'mel',
    why: 'Because.',
    firmness: 'firm',
    ...fields,
  });
  const asked = { on, madeAt: '2026-11-25T10:00:00Z' };
  const jobs = [
    job({ kind: 'feed', group: 'frogs', flies: 96 }),
    job({ cups: 2 }),
    job({ date: addDays(on, 7), cups: 1 }),
    job({ kind: 'discard', cultures: ['c1', 'c2'], date: addDays(on, 3) }),
  ];
  const keys = (list: Job[], log = household) => calendarEvents(log, list, asked).map((e) => e.key);
  it('numbers starts on from the logbook, whatever their day: two were made', () => {
    expect(keys(jobs)).toEqual(['start-mel-3', 'start-mel-4', 'discard-c1', 'discard-c2']);
    expect(keys(jobs.map((j) => ({ ...j, date: addDays(day(j.date), 2) })))).toEqual(keys(jobs));
  });
  it('the start that was made is gone, the next keeps its number', () => {
    const later = facts([...settings, started('c1', 'M1', 20), started('c2', 'M2', 6), started('c3', 'M3', 0)]);
    expect(keys(jobs.slice(2), later)).toEqual(['start-mel-4', 'discard-c1', 'discard-c2']);
  });
  it('a start that is half done today keeps its number, and so do all later ones', () => {
    const half = facts([...settings, started('c1', 'M1', 20), started('c2', 'M2', 6), started('c3', 'M3', 0)]);
    expect(keys(jobs, half)).toEqual(keys(jobs));
  });
  it('two starts of a strain that fall on one day are one event with the cups of both', () => {
    const twice = [job({ cups: 2 }), job({ id: 'y', cups: 1 }), job({ date: addDays(on, 7), cups: 1 })];
    const events = calendarEvents(household, twice, asked);
    expect(events.map((e) => [e.key, e.title])).toEqual([
      ['start-mel-3', 'Start 3 cups of D. melanogaster'],
      ['start-mel-4', 'Start 1 cup of D. melanogaster'],
    ]);
  });
  it('a changed plan moves events and never doubles them, whatever day each kind of work falls on', () => {
    const work = (shift: number) => [
      job({ kind: 'mix', strain: null, cups: 2, date: addDays(on, 1 + shift) }),
      job({ kind: 'wash', strain: null, cups: 4, date: addDays(on, 2 + shift) }),
      job({ kind: 'shop', strain: null, date: addDays(on, 3 + shift) }),
      job({ kind: 'buy', cups: 1, date: addDays(on, 4 + shift) }),
      job({ kind: 'look', cultures: ['c2'], date: addDays(on, 5 + shift) }),
      job({ kind: 'mix', strain: null, cups: 2, date: addDays(on, 8 + shift) }),
    ];
    expect(keys(work(0))).toEqual(['mix-all-3', 'wash-all-1', 'shop-all-1', 'buy-mel-1', 'look-c2-1', 'mix-all-4']);
    expect(keys(work(1))).toEqual(keys(work(0)));
  });
  it('speaks the language asked for and names cups by their labels', () => {
    const titles = calendarEvents(household, jobs, { ...asked, language: 'de' }).map((e) => e.title);
    expect(titles).toEqual([
      '2 Becher D. melanogaster ansetzen',
      '1 Becher D. melanogaster ansetzen',
      'Wegwerfen: M1',
      'Wegwerfen: M2',
    ]);
  });
  it('keeps its events when the household is renamed', () => {
    const renamed = facts([
      ...settings,
      started('c1', 'M1', 20),
      started('c2', 'M2', 6),
      { kind: 'household', name: 'New' },
    ]);
    const uids = (log: typeof household) => value(calendar(log, jobs, asked)).match(/UID:.*/g);
    expect(uids(renamed)).toEqual(uids(household));
    expect(uids(household)?.[0]).toBe('UID:start-mel-3.c1-2026-11-05@flylarder');
  });
  it('is text that calendars read, with feeding only when asked for', () => {
    expect(value(calendar(household, jobs, asked))).not.toContain('Feed');
    expect(value(calendar(household, jobs, { ...asked, withFeeding: true }))).toContain('SUMMARY:Feed Frogs: 96 flies');
  });
});

describe('sheets', () => {
  const feed: Job = {
    id: 'f',
    date: on,
    kind: 'feed',
    strain: 'mel',
    group: 'frogs',
    flies: 96,
    fromCultures: ['c1'],
    why: '',
    firmness: 'firm',
  };
  it('the sitter’s sheet names group, flies and cup', () => {
    const text = JSON.stringify(value(sitter(household, [feed], { from: on, until: addDays(on, 1) })));
    expect(text).toContain('Frogs: about 96 flies, from cup M1');
    expect(text).toContain('Nothing to do');
    expect(where(sitter(household, [], { from: on, until: addDays(on, -1) }))).toBe('absence');
  });
  it('a month leaves feeding out and refuses what is no month', () => {
    const mixing: Job = { ...feed, kind: 'mix' };
    const jobs: Job[] = [feed, { ...feed, kind: 'start', cups: 1 }, mixing, { ...mixing, id: 'm2' }];
    const text = JSON.stringify(value(month(household, jobs, { month: '2026-11' })));
    expect(text).toContain('Start 1 cup of D. melanogaster');
    expect(text).not.toContain('Frogs');
    expect(text.match(/Mix medium/g)).toHaveLength(1);
    expect(where(month(household, jobs, { month: '2026-1' }))).toBe('month');
  });
  it('a shelf card lists the living cups of a place, youngest first', () => {
    const sheet = value(shelf(household, { ...question, place: 'shelf' }));
    const [table] = sheet.blocks;
    expect(table?.kind === 'table' && table.rows.map((r) => r[0]?.[0]?.text)).toEqual(['M2', 'M1']);
    const ended = facts([
      ...settings,
      started('c1', 'M1', 20),
      started('c2', 'M2', 6),
      { kind: 'ended', culture: 'c1', reason: 'spent', on },
    ]);
    expect(JSON.stringify(value(shelf(ended, question)))).not.toContain('"M1"');
    expect(where(shelf(household, { ...question, place: 'cellar' }))).toBe('place');
  });
  it('a given culture’s dates are later in a colder room', () => {
    const dates = (temperatureC: number) => {
      const table = value(given(household, { culture: 'M2', temperatureC })).blocks.find((b) => b.kind === 'table');
      return table?.kind === 'table' ? table.rows.map((row) => row[1]?.[0]?.text) : [];
    };
    const [warm, cold] = [dates(25), dates(20)];
    // Started on 19 November. The books: about 9.2 days from egg to adult at 25 C, 14.8 at 20 C.
    expect([warm[0], cold[0]]).toEqual(['19 November 2026', '19 November 2026']);
    expect(warm[1]).toMatch(/Nov to .* (Nov|Dec)$/);
    expect(cold[1]).toMatch(/^[2-4] Dec to [4-6] Dec$/);
    expect(where(given(household, { culture: 'M2', temperatureC: 60 }))).toBe('temperatureC');
    expect(where(given(household, { culture: 'M77', temperatureC: 22 }))).toBe('cultures');
  });
});
