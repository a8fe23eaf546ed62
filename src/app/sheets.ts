/** Printed sheets from the household's facts: the sitter's sheet, a month, a shelf card, a given culture's sheet. */
import { addDays, type Day, day, daysBetween, failed, type Result } from '../foundation/index.ts';
import type { Facts } from '../logbook/index.ts';
import {
  givenSheet,
  type Language,
  monthSheet,
  type Sheet,
  shelfCard,
  type SitterDay,
  sitterSheet,
} from '../paper/index.ts';
import type { Job } from './answers.ts';
import { cupLives } from './cup-lives.ts';
import { chosenCups } from './kitchen/chosen-cups.ts';
import { jobTitle } from './kitchen/job-words.ts';
import { lifecycle } from './lifecycle.ts';
import type { Question } from './question.ts';

/** Longer absences do not fit two pages. */
const mostSitterDays = 21;

export interface SitterQuestion {
  from: Day;
  until: Day;
  language?: Language;
  contact?: string;
}

/** Who is fed what from which cup on each day of an absence, and which cups are worth a look. */
export function sitter(facts: Facts, jobs: readonly Job[], question: SitterQuestion): Result<Sheet> {
  const { from, until } = question;
  const length = daysBetween(from, until) + 1;
  if (length < 1 || length > mostSitterDays) {
    return failed({ where: 'absence', found: `${length} days`, expected: `1 to ${mostSitterDays} days` });
  }
  const days = Array.from({ length }, (_, i) => sitterDay(facts, jobs, addDays(from, i)));
  return sitterSheet({
    language: question.language ?? 'en',
    household: facts.household.name,
    days,
    contact: question.contact ?? null,
  });
}

function sitterDay(facts: Facts, jobs: readonly Job[], on: Day): SitterDay {
  const labelOf = (key: string) => facts.cultures.find((c) => c.culture === key)?.label ?? key;
  const todays = jobs.filter((job) => job.date === on);
  return {
    on,
    feedings: todays
      .filter((job) => job.kind === 'feed')
      .map((job) => ({
        group: facts.groups.find((g) => g.group === job.group)?.name ?? job.group ?? '',
        flies: Math.round(job.flies ?? 0),
        fromCups: (job.fromCultures ?? []).map(labelOf),
      })),
    look: [...new Set(todays.filter((job) => job.kind === 'look').flatMap((job) => (job.cultures ?? []).map(labelOf)))],
  };
}

/** The month's jobs but feeding, which is every day's. `month` is `2026-12`. */
export function month(
  facts: Facts,
  jobs: readonly Job[],
  question: { month: string; language?: Language },
): Result<Sheet> {
  const parts = /^(\d{4})-(\d{2})$/.exec(question.month);
  if (!parts) return failed({ where: 'month', found: `"${question.month}"`, expected: 'a month such as 2026-12' });
  const language = question.language ?? 'en';
  return monthSheet({
    language,
    household: facts.household.name,
    year: Number(parts[1]),
    month: Number(parts[2]),
    jobs: eachOnce(
      jobs
        .filter((job) => job.kind !== 'feed' && job.date.startsWith(question.month))
        .map((job) => ({ on: day(job.date), title: jobTitle(facts, job, language) })),
    ),
  });
}

/** Medium for two strains on one day is one pot, and one line. */
function eachOnce<T extends { on: Day; title: string }>(jobs: readonly T[]): T[] {
  return jobs.filter((job, i) => jobs.findIndex((j) => j.on === job.on && j.title === job.title) === i);
}

export interface ShelfQuestion extends Question {
  place?: string;
  language?: Language;
}

/** The living cups of a place with their dates; without a place all of them. */
export function shelf(facts: Facts, question: ShelfQuestion): Result<Sheet> {
  const { place } = question;
  const known = facts.places.find((p) => p.place === place || p.name === place);
  if (place !== undefined && !known) {
    return failed({
      where: 'place',
      found: `"${place}"`,
      expected: `one of ${facts.places.map((p) => p.place).join(', ')}`,
    });
  }
  const lives = cupLives(facts, question).filter((l) => !l.ended && (known === undefined || l.place === known.place));
  return shelfCard({
    language: question.language ?? 'en',
    place: known?.name ?? facts.household.name,
    on: question.on,
    cups: lives.map((life) => ({
      label: life.label,
      strain: facts.strains.find((s) => s.strain === life.strain)?.name ?? life.strain,
      startedOn: life.from as Day,
      firstFliesOn: addDays(life.from as Day, Math.round(life.fliesAt)),
      founders: null,
      throwOutOn: life.until as Day,
    })),
  });
}

export interface GivenQuestion {
  culture: string;
  /** Of the room that the culture goes to. */
  temperatureC: number;
  language?: Language;
  calendarLink?: string;
}

/** One page for the person who gets the culture, its dates reckoned for their room from the day it was started. */
export function given(facts: Facts, question: GivenQuestion): Result<Sheet> {
  const found = chosenCups(facts, [question.culture]);
  if (!found.ok) return found;
  const cup = found.value[0];
  if (!cup) return failed({ where: 'culture', found: question.culture, expected: 'a cup' });
  const strain = facts.strains.find((s) => s.strain === cup.strain);
  const life = lifecycle({
    strain: strain?.base ?? cup.strain,
    temperatureC: question.temperatureC,
    founders: cup.founders,
    mediumMassG: cup.mediumMassG,
    surfaceCm2: cup.surfaceCm2,
  });
  if (!life.ok) return life;
  const at = (days: number) => addDays(cup.startedOn, Math.round(days));
  const { firstEmergenceDay, peakDay, founderFromDay, founderUntilDay, spentDay } = life.value;
  return givenSheet({
    language: question.language ?? 'en',
    strain: strain?.name ?? cup.strain,
    label: cup.label,
    temperatureC: question.temperatureC,
    startedOn: cup.startedOn,
    firstFlies: { from: at(firstEmergenceDay - firstFliesDays), until: at(firstEmergenceDay + firstFliesDays) },
    mostFlies: { from: at(peakDay - mostFliesDays), until: at(peakDay + mostFliesDays) },
    founders: { from: at(founderFromDay), until: at(founderUntilDay) },
    throwOutOn: at(spentDay),
    calendarLink: question.calendarLink ?? null,
  });
}

/** Half widths of the spans given: a room differs from its figure by half a degree or so, 4 to 5 % of the time. */
const firstFliesDays = 1;
const mostFliesDays = 3;
