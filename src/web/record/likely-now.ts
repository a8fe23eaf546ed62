/** What most likely just happened: the open jobs that a tick can write, and a look at the cup at hand. */
import type { CultureToday, TodayAnswer } from '../../app/index.ts';
import type { Day } from '../../foundation/index.ts';
import type { EntryDraft } from '../../logbook/index.ts';
import type { drawings } from '../parts/drawings.ts';
import { entriesOfJob, formOfJob } from '../screens/today/entries-of-job.ts';
import { aboutFlies, jobTitle } from '../state/words.ts';
import { t } from '../text/text.svelte.ts';

export interface Likely {
  icon: keyof typeof drawings;
  label: string;
  entries: EntryDraft[];
  done: string;
}

const mostOffered = 4;

/** @param culture the cup whose page is open, if any: then it is offered first. */
export function likelyNow(today: TodayAnswer, culture: string | null): Likely[] {
  const on = today.on as Day;
  const cup = today.cultures.find((each) => each.id === culture);
  const ticks = today.jobs
    .filter((job) => job.kind !== 'start' && formOfJob(job, on) === null)
    .filter((job) => !culture || [...(job.cultures ?? []), ...(job.fromCultures ?? [])].includes(culture))
    .map((job) => {
      const label = jobTitle(job);
      return { icon: job.kind, label, entries: entriesOfJob(job, on), done: t('today.ticked', { job: label }) };
    });
  return [...ticks, ...(cup ? ofCup(cup, on) : bestHarvest(today, on))].slice(0, mostOffered);
}

function ofCup(cup: CultureToday, on: Day): Likely[] {
  const harvest = cup.onHandFlies.p50 >= 2 ? [halfOf(cup, on)] : [];
  const label = t('record.asExpected', { cup: cup.label, stage: t(`stage.${cup.stage}`) });
  const present = stagesOf(cup.stage);
  return [
    ...harvest,
    {
      icon: 'seen',
      label,
      entries: [{ kind: 'seen', on, culture: cup.id, present }],
      done: t('record.done.seen', { cup: cup.label }),
    },
  ];
}

function bestHarvest(today: TodayAnswer, on: Day): Likely[] {
  const best = [...today.cultures].sort((a, b) => b.onHandFlies.p50 - a.onHandFlies.p50)[0];
  return best && best.onHandFlies.p50 >= 2 ? [halfOf(best, on)] : [];
}

/** Keepers leave about half of the flies in a cup, so that it goes on. */
function halfOf(cup: CultureToday, on: Day): Likely {
  const flies = Math.max(1, Number((cup.onHandFlies.p50 / 2).toPrecision(1)));
  const params = { flies: aboutFlies(flies), cup: cup.label };
  return {
    icon: 'harvested',
    label: t('record.harvestAbout', params),
    entries: [{ kind: 'harvested', on, culture: cup.id, flies, purpose: 'feeding' }],
    done: t('record.done.harvested', params),
  };
}

type Stage = 'eggs' | 'larvae' | 'pupae' | 'adults';

function stagesOf(stage: CultureToday['stage']): Stage[] {
  if (stage === 'eggs' || stage === 'larvae' || stage === 'pupae') return [stage];
  return ['adults'];
}
