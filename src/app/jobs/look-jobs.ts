/** Looks worth taking: the day after a start, when a stage is due, weekly in quarantine, and when a cup is off its course. */
import { type Day, dayFromNumber, dayNumber, type Said, said } from '../../foundation/index.ts';
import { type SaidCulture, saidEvent, troublesSeen } from '../culture-today.ts';
import { isSick } from '../sick-cup.ts';
import type { CupHistory } from '../cup-history.ts';
import type { SaidJob } from './said-job.ts';

const looksFor = ['larvae', 'pupae', 'first flies'];
/** Days between two looks at a cup that is off its course. */
const lookAgainDays = 3;
/** Days between two looks at a cup in quarantine, and from its arrival to the first. */
const quarantineLookDays = 7;

export function lookJobs(cups: CupHistory[], states: SaidCulture[], today: number, daysAhead: number): SaidJob[] {
  const jobs = states.flatMap((state) => {
    const cup = cups.find((c) => c.culture.culture === state.id) as CupHistory;
    if (isSick(cup.culture)) return [];
    return [
      ...nextDayLook(cup, today),
      ...dueStages(state, today),
      ...strayCup(cup, state, today),
      ...quarantineLook(cup, today),
      ...firstParcelLook(cup, today),
    ];
  });
  const last = dayFromNumber(today + daysAhead);
  return jobs.filter((job) => job.date <= last);
}

function lookJob(on: number, culture: SaidCulture['id'], strain: string, why: Said): SaidJob {
  const date = dayFromNumber(on);
  return { id: `${date}:look:${culture}`, date, kind: 'look', strain, cultures: [culture], why, firmness: 'firm' };
}

function nextDayLook({ culture, start }: CupHistory, today: number): SaidJob[] {
  const due = start + 1;
  const looked = culture.seen.some((s) => s.on > culture.startedOn);
  if (culture.origin === 'bought' || looked || due < today) return [];
  const why = said`${culture.label} was started the day before: are the founders alive, is the medium moist and not wet?`;
  return [lookJob(due, culture.culture, culture.strain, why)];
}

/** A stage whose middle date has come and that nobody has noted yet. */
function dueStages(state: SaidCulture, today: number): SaidJob[] {
  return state.nextEvents
    .filter((e) => looksFor.includes(e.event))
    .map((e) => {
      const [early, middle, late] = [e.p05, e.p50, e.p95].map((day) => ({ day: day as Day })) as [Due, Due, Due];
      const why = said`${state.label}: ${saidEvent(e.event)} are due about ${middle} (${early} to ${late}); a note sharpens the forecast.`;
      return lookJob(Math.max(today, dayNumber(e.p50 as Day)), state.id, state.strain, why);
    });
}

interface Due {
  day: Day;
}

function strayCup(cup: CupHistory, state: SaidCulture, today: number): SaidJob[] {
  const warning = state.offCourse ? state.warnings.at(-1) : troublesSeen(cup.culture).at(-1);
  const lately = cup.culture.seen.some((s) => s.on > dayFromNumber(today - lookAgainDays));
  if (warning === undefined || lately) return [];
  return [lookJob(today, state.id, state.strain, said`${state.label}: ${warning}`)];
}

/** The first look at a cup that came while nothing home-grown stood here: it may found others at once. */
function firstParcelLook({ culture }: CupHistory, today: number): SaidJob[] {
  const { origin, quarantinedUntil, seen, on } = culture;
  const isNew = dayNumber(on) + quarantineLookDays > today;
  if (origin !== 'bought' || quarantinedUntil !== null || seen.length > 0 || !isNew) return [];
  const why = said`${culture.label}: bought while no cup of your own stood here, so without quarantine; look for mites at its lid and rim before it gives founders.`;
  return [lookJob(Math.max(today, dayNumber(on)), culture.culture, culture.strain, why)];
}

function quarantineLook({ culture }: CupHistory, today: number): SaidJob[] {
  const until = culture.quarantinedUntil;
  if (culture.origin !== 'bought' || until === null) return [];
  const last = culture.seen.reduce<string>((day, s) => (s.on > day ? s.on : day), culture.on);
  const due = Math.max(today, dayNumber(last as Day) + quarantineLookDays);
  if (due >= dayNumber(until)) return [];
  const why = said`${culture.label}: in quarantine until ${{ day: until }}; look for mites at its lid and rim.`;
  return [lookJob(due, culture.culture, culture.strain, why)];
}
