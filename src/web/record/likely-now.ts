/**
 * What most likely just happened, one offer of each kind of work: looked at, harvested, fed, started and
 * thrown out, each with what the day's answer holds to be usual. Two taps write any of them from anywhere.
 */
import type { CultureToday, Job, TodayAnswer } from '../../app/index.ts';
import type { Day } from '../../foundation/index.ts';
import type { EntryDraft, Facts, SeenStage } from '../../logbook/index.ts';
import type { drawings } from '../parts/drawings.ts';
import { entriesOfStart, startAsked } from '../screens/start/entries-of-start.ts';
import { entriesOfJob } from '../screens/today/entries-of-job.ts';
import { strainChoices } from '../state/cup-names.ts';
import { periodOn } from '../state/groups.ts';
import { aboutFlies, cupList, exactFlies, jobTitle } from '../state/words.ts';
import { t } from '../text/text.svelte.ts';

export interface Likely {
  icon: keyof typeof drawings;
  label: string;
  entries: EntryDraft[];
  done: string;
}

/** @param culture the cup whose page is open, if any: then the offers are about it. */
export function likelyNow(today: TodayAnswer, facts: Facts, culture: string | null): Likely[] {
  const on = today.on as Day;
  const cup = today.cultures.find((each) => each.id === culture);
  if (cup) return [...looked([cup], on), ...harvested(cup, today), thrownOut([cup.id], on)];
  return [
    ...fed(today, facts, on),
    ...harvested(fullest(today), today),
    ...looked(toLookAt(today), on),
    ...started(today, facts, on),
    ...spent(today, on),
  ];
}

/** As the jobs say; without one, the usual ration of the first group that is fed. */
function fed(today: TodayAnswer, facts: Facts, on: Day): Likely[] {
  const jobs = today.jobs.filter((each) => each.kind === 'feed').map((job) => ticked(job, on));
  const group = facts.groups.find((each) => (periodOn(each, on)?.count ?? 0) > 0);
  const period = group && periodOn(group, on);
  if (jobs.length > 0 || !group || !period) return jobs.slice(0, 2);
  const flies = Math.round(period.count * period.fliesPerFeeding);
  const params = { flies: aboutFlies(flies), group: group.name };
  return [
    {
      icon: 'fed',
      label: t('record.fedUsual', params),
      entries: [{ kind: 'fed', on, group: group.group, flies }],
      done: t('record.done.fed', { ...params, flies: exactFlies(flies) }),
    },
  ];
}

function ticked(job: Job, on: Day): Likely {
  const label = jobTitle(job);
  return { icon: job.kind, label, entries: entriesOfJob(job, on), done: t('today.ticked', { job: label }) };
}

function fullest(today: TodayAnswer): CultureToday | undefined {
  return [...today.cultures].sort((a, b) => b.onHandFlies.p50 - a.onHandFlies.p50)[0];
}

/** What the animals want of its strain today, but no more than about half of a cup, so that it goes on. */
export function usualHarvest(cup: CultureToday, { wantedFlies }: TodayAnswer): number {
  const half = Number((cup.onHandFlies.p50 / 2).toPrecision(1));
  const wanted = Math.round(wantedFlies[cup.strain] ?? 0);
  return Math.max(1, wanted > 0 ? Math.min(wanted, half) : half);
}

function harvested(cup: CultureToday | undefined, today: TodayAnswer): Likely[] {
  if (!cup || cup.onHandFlies.p50 < 2) return [];
  const on = today.on as Day;
  const flies = usualHarvest(cup, today);
  const params = { flies: aboutFlies(flies), cup: cup.label };
  return [
    {
      icon: 'harvested',
      label: t('record.harvestAbout', params),
      entries: [{ kind: 'harvested', on, culture: cup.id, flies, purpose: 'feeding' }],
      done: t('record.done.harvested', { ...params, flies: exactFlies(flies) }),
    },
  ];
}

/** The cups that a job wants looked at, or the youngest, which changes fastest. */
function toLookAt(today: TodayAnswer): CultureToday[] {
  const asked = today.jobs.filter((job) => job.kind === 'look').flatMap((job) => job.cultures ?? []);
  const cups = today.cultures.filter((cup) => asked.includes(cup.id));
  return cups.length > 0 ? cups : [...today.cultures].sort((a, b) => a.ageDays - b.ageDays).slice(0, 1);
}

/** All of them as expected, each in its own stage. */
function looked(cups: CultureToday[], on: Day): Likely[] {
  const [first] = cups;
  if (!first) return [];
  const names = cupList(cups.map((cup) => cup.id));
  const label =
    cups.length === 1
      ? t('record.asExpected', { cup: first.label, stage: t(`stage.${first.stage}`) })
      : t('record.allAsExpected', { cups: names });
  const entries = cups.map((cup): EntryDraft => ({ kind: 'seen', on, culture: cup.id, present: stagesOf(cup.stage) }));
  return [{ icon: 'seen', label, entries, done: t('record.done.seen', { cup: names }) }];
}

function stagesOf(stage: CultureToday['stage']): SeenStage[] {
  if (stage === 'eggs' || stage === 'larvae' || stage === 'pupae') return [stage];
  return ['adults'];
}

/** The plan's start of today, or one more cup of the first strain. */
function started(today: TodayAnswer, facts: Facts, on: Day): Likely[] {
  const job = today.jobs.find((each) => each.kind === 'start') ?? null;
  const asked = startAsked(job, facts, strainChoices(facts)[0]?.value ?? 'melanogaster');
  const params = { cups: asked.labels.join(', '), founders: asked.founders, parents: cupList(asked.parents) };
  return [
    {
      icon: 'started',
      label: t(asked.parents.length > 0 ? 'record.startedFrom' : 'record.startedWith', params),
      entries: entriesOfStart(asked, facts, on),
      done: t('start.done', { cups: params.cups }),
    },
  ];
}

function spent(today: TodayAnswer, on: Day): Likely[] {
  const asked = today.jobs
    .filter((job) => job.kind === 'discard')
    .flatMap((job) => job.cultures ?? job.fromCultures ?? []);
  const cups = asked.length > 0 ? asked : today.cultures.filter((cup) => cup.stage === 'spent').map((cup) => cup.id);
  return cups.length > 0 ? [thrownOut(cups, on)] : [];
}

function thrownOut(cultures: string[], on: Day): Likely {
  const cups = cupList(cultures);
  return {
    icon: 'ended',
    label: t('record.endedSpent', { cups }),
    entries: cultures.map((culture) => ({ kind: 'ended', on, culture, reason: 'spent' })),
    done: t('record.done.ended', { cup: cups }),
  };
}
