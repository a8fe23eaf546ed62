/** Firm starts and purchases of two plans, matched and told apart. */
import { type Day, dayFromNumber, dayNumber, type Said, said } from '../../foundation/index.ts';
import type { PlannedJob } from '../../planner/index.ts';
import type { Situation } from '../planning-problem.ts';

export interface Decision {
  kind: 'start' | 'buy' | 'receive';
  strain: string;
  /** Of bought cups. */
  boughtStage?: 'producing' | 'young';
  name: string;
  day: number;
  cups: number;
}

export interface ChangedJob {
  change: 'new' | 'dropped' | 'more' | 'fewer' | 'earlier' | 'later';
  kind: Decision['kind'];
  strain: string;
  boughtStage?: 'producing' | 'young';
  date: Day;
  cups: number;
  before: { date: Day; cups: number } | null;
  text: Said;
}

interface Planned {
  at: Situation;
  jobs: Decision[];
}

/** Days by which the same job may have moved. */
const movedDays = 4;

/** Starts, orders and parcels that are firm, by day number. */
export function firmDecisions({ model }: Situation, jobs: PlannedJob[]): Decision[] {
  const kinds = { start: 'start', order: 'buy', buy: 'receive' } as const;
  return jobs.flatMap((job) => {
    const kind = kinds[job.kind as keyof typeof kinds];
    if (!job.firm || kind === undefined) return [];
    const name = model.strains.get(job.strain)?.facts.name ?? job.strain;
    const stage = job.boughtKind && { boughtStage: job.boughtKind };
    return [{ kind, strain: job.strain, ...stage, name, day: model.today + job.day, cups: job.cups ?? 0 }];
  });
}

/** Differences on the days from today on that the earlier plan was firm about; jobs done since are none. */
export function changedJobs(then: Planned, now: Planned): ChangedJob[] {
  const { today } = now.at.model;
  const last = then.at.model.today + 14 - 1;
  const done = startedToday(now.at);
  const before = then.jobs.filter(({ day }) => day >= today).map((job) => lessDone(job, today, done));
  const left = before.filter(({ cups }) => cups > 0);
  const changes: ChangedJob[] = [];
  for (const job of now.jobs.filter(({ day }) => day <= last)) {
    const match = closest(left, job);
    if (match) left.splice(left.indexOf(match), 1);
    changes.push(...changesBetween(match ?? null, job));
  }
  return [...changes, ...left.map((job) => changeOf('dropped', job, job))].sort((a, b) => (a.date < b.date ? -1 : 1));
}

function startedToday({ model }: Situation): Map<string, number> {
  const done = new Map<string, number>();
  for (const { strain, origin, on } of model.facts.cultures) {
    if (origin === 'started' && dayNumber(on) === model.today) done.set(strain, (done.get(strain) ?? 0) + 1);
  }
  return done;
}

function lessDone(job: Decision, today: number, done: Map<string, number>): Decision {
  if (job.kind !== 'start' || job.day !== today) return job;
  return { ...job, cups: Math.max(0, job.cups - (done.get(job.strain) ?? 0)) };
}

function closest(jobs: Decision[], to: Decision): Decision | undefined {
  return jobs
    .filter((job) => isSameWork(job, to) && Math.abs(job.day - to.day) <= movedDays)
    .sort((a, b) => Math.abs(a.day - to.day) - Math.abs(b.day - to.day))[0];
}

function isSameWork(a: Decision, b: Decision): boolean {
  return a.kind === b.kind && a.strain === b.strain && a.boughtStage === b.boughtStage;
}

function changesBetween(before: Decision | null, job: Decision): ChangedJob[] {
  if (!before) return [changeOf('new', job, null)];
  if (before.day !== job.day) return [changeOf(job.day < before.day ? 'earlier' : 'later', job, before)];
  if (before.cups === job.cups) return [];
  return [changeOf(job.cups > before.cups ? 'more' : 'fewer', job, before)];
}

function changeOf(change: ChangedJob['change'], job: Decision, before: Decision | null): ChangedJob {
  return {
    change,
    kind: job.kind,
    strain: job.strain,
    ...(job.boughtStage && { boughtStage: job.boughtStage }),
    date: dayFromNumber(job.day),
    cups: job.cups,
    before: before && { date: dayFromNumber(before.day), cups: before.cups },
    text: textOf(change, job, before),
  };
}

function whatOf({ kind, cups, name, boughtStage }: Decision): Said {
  if (kind === 'start') return said`${cups} × ${name} to start`;
  if (boughtStage === 'young') {
    return kind === 'buy' ? said`${cups} × ${name}, young, to order` : said`${cups} × ${name}, young, to unpack`;
  }
  return kind === 'buy' ? said`${cups} × ${name} to order` : said`${cups} × ${name} to unpack`;
}

function textOf(change: ChangedJob['change'], job: Decision, before: Decision | null): Said {
  const on = { day: dayFromNumber(job.day) };
  const what = whatOf(job);
  switch (change) {
    case 'new':
      return said`New on ${on}: ${what}.`;
    case 'dropped':
      return said`No longer on ${on}: ${what}.`;
    case 'earlier':
    case 'later':
      return said`Now on ${on} instead of ${{ day: dayFromNumber(before?.day ?? job.day) }}: ${what}.`;
    case 'more':
    case 'fewer':
      return said`On ${on} now ${what}, instead of ${before?.cups ?? 0}.`;
  }
}
