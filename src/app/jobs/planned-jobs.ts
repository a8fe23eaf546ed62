/** The planner's jobs with dates, names and sentences. */
import { dayFromNumber, type Said, said, saidTogether } from '../../foundation/index.ts';
import type { PlannedJob } from '../../planner/index.ts';
import { otherPlaceSaid } from '../plan/backup-places.ts';
import type { Situation } from '../planning-problem.ts';
import { feedJobs } from './feed-jobs.ts';
import { mixJobs } from './mix-jobs.ts';
import { reasonSaid } from './reason-said.ts';
import type { SaidJob } from './said-job.ts';

export interface JobNames {
  strains: Map<string, string>;
  cultures: Map<string, string>;
}

export function plannedJobs(at: Situation, planned: PlannedJob[]): SaidJob[] {
  const names = namesOf(at);
  const jobs = planned.flatMap((job) => {
    if (job.kind === 'feed') return feeding(at, job, names);
    // The planner lets go of a cup with its last flies; the keeper throws it out some days before.
    return job.kind === 'discard' ? [] : [datedJob(at, job, names)];
  });
  return [
    ...jobs,
    ...mixJobs(
      at,
      jobs.filter((job) => job.kind === 'start'),
    ),
  ];
}

function namesOf({ model }: Situation): JobNames {
  return {
    strains: new Map(model.facts.strains.map((s) => [s.strain, s.name])),
    cultures: new Map(model.facts.cultures.map((c) => [c.culture, c.label])),
  };
}

function feeding(at: Situation, job: PlannedJob, names: JobNames): SaidJob[] {
  const { model } = at;
  const sources = (job.cultures ?? []).map((cup, i) => ({ day: job.day, cup, flies: job.fliesByCulture?.[i] ?? 0 }));
  const firmness = job.firm ? 'firm' : 'expected';
  return feedJobs(model.facts, job.strain, model.today, job.day, sources, names.cultures).map((feed) => ({
    ...feed,
    firmness,
  }));
}

/** Ordering is what the keeper does on the day; the parcel's arrival is a job of its own. */
const doorKinds = { start: 'start', order: 'buy', buy: 'receive' } as const;

function datedJob(at: Situation, job: PlannedJob, names: JobNames): SaidJob {
  const arrival = job.reason.values.arrivalDay;
  const date = dayFromNumber(at.model.today + (job.kind === 'order' ? orderDay(at, job, arrival) : job.day));
  const kind = doorKinds[job.kind as keyof typeof doorKinds];
  return {
    id: [date, kind, job.strain, job.boughtKind].filter((part) => part !== undefined).join(':'),
    date,
    kind,
    strain: job.strain,
    ...(job.fromCultures?.length ? { fromCultures: job.fromCultures } : {}),
    ...(job.flies === undefined ? {} : { flies: job.flies }),
    ...(job.cups === undefined ? {} : { cups: job.cups }),
    ...(job.boughtKind === undefined ? {} : { boughtStage: job.boughtKind }),
    ...(typeof arrival === 'number' ? { arrives: dayFromNumber(at.model.today + arrival) } : {}),
    why: sentence(at, job, names),
    firmness: job.firm ? 'firm' : 'expected',
  };
}

/**
 * The planner orders on the last day that still makes a parcel, to know more by then. Who has no cup at
 * all has nothing to wait for, and orders the next parcel at once.
 */
function orderDay({ problem }: Situation, job: PlannedJob, arrival: number | string | undefined): number {
  const { leadDays, deliveryDays } = problem.purchase;
  const nextParcel = deliveryDays.findIndex((may, day) => may === 1 && day >= leadDays);
  const hasCups = problem.strains.some(({ strain, existing }) => strain === job.strain && existing.length > 0);
  return !hasCups && arrival === nextParcel ? 0 : job.day;
}

function sentence(at: Situation, job: PlannedJob, names: JobNames): Said {
  const values = { ...job.reason.values };
  if (typeof values.strain === 'string') values.strain = names.strains.get(values.strain) ?? values.strain;
  const why = reasonSaid({ ...job.reason, values }, at.model.today);
  const from = (job.fromCultures ?? []).map(
    (cup, i) => said`${names.cultures.get(cup) ?? cup} (${Math.round(job.fliesByCulture?.[i] ?? 0)})`,
  );
  const founders = from.length > 0 ? [said`Founders: ${{ list: from }}.`] : [];
  const elsewhere = job.kind === 'start' ? otherPlaceSaid(at, job.strain) : null;
  return saidTogether(why, ...founders, ...(elsewhere ? [elsewhere] : []));
}
