/**
 * A keeper who does what the tool says, in a world that the tool does not know: writes patchy, rounded,
 * noisy notes, asks for the plan once a week, and acts on its jobs. Only the public doors are used:
 * entries in, the plan's answer out.
 */
import { type PlanAnswer, plan } from '../../../src/app/index.ts';
import { addDays, type Day, day as asDay, daysBetween } from '../../../src/foundation/index.ts';
import { checkBatch, checkDraft, type Entry, fold } from '../../../src/logbook/index.ts';
import type { YearResult } from './habit.ts';
import {
  feedFrom,
  gauss,
  generator,
  liveADay,
  newCup,
  type OtherCup,
  type OtherHousehold,
  roomC,
  visibleStages,
} from './other-world.ts';

const weekdayNames = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'];
/** Day 0 of the world; a Monday. */
const dayZero = asDay('2025-01-06');
const foundersPerCup = 50;
/** Flies a day for which the run-up starts a cup on each work day. */
const cupsWorth = 140;
/** Worlds simulated for each weekly decision: the plan's promises are not needed, only its jobs. */
const scenarios = 1;

export interface KeeperYear extends YearResult {
  decisions: number;
  /** Processor time is the caller's to take; these are the plan's own last figures. */
  lastPlan: PlanAnswer | null;
}

export function keeperYear(household: OtherHousehold): KeeperYear {
  const keeper = new Keeper(household);
  for (let day = -household.fly.runUpDays; day < household.weeks * 7; day++) keeper.liveThrough(day);
  return keeper.year;
}

class Keeper {
  readonly year: KeeperYear = {
    shortDays: 0,
    judgedDays: 0,
    cups: 0,
    sessions: 0,
    bought: 0,
    decisions: 0,
    lastPlan: null,
  };
  private readonly random: () => number;
  /** Chance of the keeper's own: notes and counts do not change the world's luck. */
  private readonly pen: () => number;
  private readonly cups: OtherCup[] = [];
  private readonly entries: Entry[] = [];
  private jobs: PlanAnswer['jobs'] = [];

  constructor(private readonly household: OtherHousehold) {
    this.random = generator(household.seed);
    this.pen = generator(household.seed + 999);
    this.writeSettings();
  }

  liveThrough(day: number): void {
    const { household } = this;
    const temperatureC = roomC(household, day, this.random);
    for (const cup of this.cups) liveADay(cup, day, temperatureC);
    if (day % 5 === 0)
      this.write(day, { kind: 'temperature', place: 'shelf', meanC: Math.round(temperatureC * 2) / 2 });
    const isWorkDay = household.workWeekdays.includes(((day % 7) + 7) % 7);
    if (isWorkDay) this.look(day);
    if (day < 0) this.runUp(day, isWorkDay);
    else {
      if (day % 7 === 0) this.decide(day);
      this.act(day);
    }
    this.feed(day);
  }

  /** Before the tool is asked: one cup on each work day, thrown out by age. */
  private runUp(day: number, isWorkDay: boolean): void {
    for (const cup of this.cups) if (day - cup.start > cup.fly.throwOutDays) this.throwOut(cup, day, 'spent');
    if (isWorkDay) this.startCups(day, Math.ceil(this.household.fliesADay / cupsWorth), []);
  }

  private decide(day: number): void {
    const facts = fold(this.entries);
    const answer = plan(facts, { on: dateOf(day), seed: this.household.seed, scenarios, weeks: 12 });
    this.jobs = answer.jobs;
    this.year.lastPlan = answer;
    this.year.decisions++;
  }

  private act(day: number): void {
    const date = dateOf(day);
    for (const job of this.jobs.filter((j) => j.date === date)) {
      if (job.kind === 'discard') {
        for (const id of job.cultures ?? []) {
          const cup = this.cups.find((c) => c.id === id);
          if (cup && !cup.thrownOut) this.throwOut(cup, day, 'spent');
        }
      } else if (job.kind === 'start') {
        const started = this.startCups(day, job.cups ?? 0, job.fromCultures ?? []);
        this.year.cups += started;
        if (started > 0) this.year.sessions++;
      } else if (job.kind === 'receive') this.receive(day, job);
    }
  }

  private receive(day: number, job: PlanAnswer['jobs'][number]): void {
    for (let i = 0; i < (job.cups ?? 0); i++) {
      const { boughtYoungDays, boughtProducingDays } = this.household.fly;
      const ageDays = job.boughtStage === 'young' ? boughtYoungDays : boughtProducingDays;
      const id = `b${day}-${this.cups.length}`;
      const cup = newCup(this.household, id, day - ageDays, foundersPerCup, this.random);
      for (let d = day - ageDays; d <= day; d++) liveADay(cup, d, 24);
      cup.bought = true;
      this.cups.push(cup);
      this.year.bought++;
      this.write(day, { kind: 'bought', culture: id, strain: this.household.fly.strain, place: 'shelf', ageDays });
    }
  }

  private startCups(day: number, wanted: number, from: string[]): number {
    let started = 0;
    for (let i = 0; i < wanted; i++) {
      const givers = this.givers(day, from);
      const fromOutside = day < -this.household.fly.runUpDays + this.household.fly.bestFrom + 1;
      const sources = new Set<string>();
      const founders = fromOutside ? foundersPerCup : feedFrom(givers, foundersPerCup, (cup) => sources.add(cup.id));
      if (founders < 0.6 * foundersPerCup) break;
      const id = `c${day}-${i}`;
      this.cups.push(newCup(this.household, id, day, founders, this.random));
      this.write(day, {
        kind: 'started',
        culture: id,
        strain: this.household.fly.strain,
        place: 'shelf',
        founders: Math.round(founders),
        ...(sources.size > 0 ? { fromCultures: [...sources] } : {}),
      });
      started++;
    }
    return started;
  }

  /** The cups that the plan names; else, and after them, those at their best. */
  private givers(day: number, from: string[]): OtherCup[] {
    const named = from.flatMap((id) => this.cups.filter((c) => c.id === id && !c.thrownOut && c.spentOn === null));
    const { bestFrom, bestUntil } = this.household.fly;
    const atBest = this.cups
      .filter(
        (c) => c.spentOn === null && day - c.start >= bestFrom && day - c.start <= bestUntil && !named.includes(c),
      )
      .reverse();
    return [...named, ...atBest];
  }

  private throwOut(cup: OtherCup, day: number, reason: 'spent' | 'mould'): void {
    if (cup.thrownOut || cup.spentOn !== null) return;
    if (reason === 'spent') cup.spentOn = day;
    else cup.thrownOut = true;
    this.write(day, { kind: 'ended', culture: cup.id, reason });
  }

  /** Looks on work days, at about half of the shelf; finds dead cups, counts some. */
  private look(day: number): void {
    for (const cup of this.cups) {
      if (cup.thrownOut || cup.spentOn !== null || day - cup.start < 2) continue;
      if (cup.diesOn !== null && day >= cup.diesOn + 2) this.throwOut(cup, day, 'mould');
      else if (this.pen() < 0.5) this.note(cup, day);
    }
  }

  private note(cup: OtherCup, day: number): void {
    const stages = visibleStages(cup);
    const present = (['larvae', 'pupae', 'adults'] as const).filter((stage) => stages[stage]);
    const absent = (['larvae', 'pupae', 'adults'] as const).filter((stage) => !stages[stage]).slice(0, 1);
    const seen = Math.max(0, 10 * Math.round((cup.flies * Math.exp(this.household.countSd * gauss(this.pen))) / 10));
    this.write(day, {
      kind: 'seen',
      culture: cup.id,
      ...(present.length > 0 ? { present } : {}),
      ...(absent.length > 0 ? { absent } : {}),
      ...(stages.adults ? { count: seen } : {}),
    });
  }

  private feed(day: number): void {
    const { fliesADay } = this.household;
    const written = this.pen() < 0.5;
    const given = feedFrom(this.cups, fliesADay, (cup, flies) => {
      // Flies in the holding cup come from no cup that the log still has.
      if (written && cup.spentOn === null)
        this.write(day, { kind: 'harvested', culture: cup.id, flies: 5 * Math.ceil(flies / 5) });
    });
    if (day < 0) return;
    this.year.judgedDays++;
    if (given < 0.95 * fliesADay) this.year.shortDays++;
  }

  private writeSettings(): void {
    const { household } = this;
    const day = -household.fly.runUpDays;
    this.write(day, {
      kind: 'household',
      name: `World ${household.seed}`,
      workWeekdays: household.workWeekdays.map((d) => weekdayNames[d]),
      purchase: { leadDays: 3, deliveryWeekdays: ['tue', 'wed', 'thu', 'fri'] },
    });
    this.write(day, { kind: 'place', place: 'shelf', temperatureC: Math.round(household.meanC) });
    this.write(day, {
      kind: 'group',
      group: 'all',
      count: 1,
      fliesPerFeeding: household.fliesADay,
      strain: household.fly.strain,
    });
  }

  /** Through the same checks as every door; a refused entry is a fault of this test. */
  private write(day: number, draft: Record<string, unknown>): void {
    const number = String(this.entries.length).padStart(12, '0');
    const on = dateOf(day);
    const checked = checkDraft({ ...draft, on }, 'keeper');
    if (!checked.ok) throw new Error(JSON.stringify(checked.problems));
    const entry = {
      ...checked.value,
      id: `01940000-0000-7000-8000-${number}`,
      recordedAt: `${on}T20:00:00Z`,
      by: 'keeper',
    } as Entry;
    this.entries.push(entry);
  }

  /** The whole log is one that a door takes. */
  logIsClean(): boolean {
    return checkBatch(this.entries, []).ok;
  }
}

function dateOf(day: number): Day {
  return addDays(dayZero, day);
}

/** Days of the world that a date lies after its first. */
export function worldDay(date: Day): number {
  return daysBetween(dayZero, date);
}
