/** What ticking a job writes, and which jobs need a word more before they can be written. */
import type { Job } from '../../../app/index.ts';
import type { Day } from '../../../foundation/index.ts';
import type { EndReason, EntryDraft, Facts } from '../../../logbook/index.ts';
import type { RecordForm } from '../../record/recording.svelte.ts';
import { jobTitle } from '../../state/words.ts';

/** The entries that say this job was done; a job that changes no fact becomes a note. */
export function entriesOfJob(job: Job, on: Day): EntryDraft[] {
  const cultures = job.cultures ?? job.fromCultures ?? [];
  if (job.kind === 'feed') return feedingOf(job, on, job.fromCultures ?? cultures);
  if (job.kind === 'discard') return cultures.map((culture) => ({ kind: 'ended', on, culture, reason: 'spent' }));
  if (job.kind === 'move' && job.place !== undefined)
    return cultures.map((culture) => ({ kind: 'moved', on, culture, place: job.place as string }));
  if (job.kind === 'buy' && job.strain !== null) return [purchaseOf(job, job.strain, on)];
  return [{ kind: 'note', on, text: `${jobTitle(job)}.` }];
}

/** What was ordered is counted on from the day it should arrive, and not ordered twice. */
function purchaseOf(job: Job, strain: string, on: Day): EntryDraft {
  return {
    kind: 'purchase',
    on,
    purchase: job.id.replaceAll(':', '-').slice(0, 64),
    strain,
    cups: job.cups ?? 1,
    stage: job.boughtStage ?? 'producing',
    arrives: (job.arrives ?? on) as Day,
  };
}

function feedingOf(job: Job, on: Day, fromCultures: string[]): EntryDraft[] {
  const flies = Math.round(job.flies ?? 0);
  if (job.group !== undefined) {
    const { group, supplements } = job;
    return [{ kind: 'fed', on, group, flies, fromCultures, ...(supplements && { supplements }) }];
  }
  return shares(flies, fromCultures.length).map((part, i) => ({
    kind: 'harvested',
    on,
    culture: fromCultures[i] as string,
    flies: part,
    purpose: 'feeding',
  }));
}

/** `flies` in whole parts as equal as can be. */
export function shares(flies: number, parts: number): number[] {
  return Array.from({ length: parts }, (_, i) => Math.floor(flies / parts) + (i < flies % parts ? 1 : 0));
}

/** The form that a job opens, or null when a tick says it all. */
export function formOfJob(job: Job, on: Day, facts: Facts | null): RecordForm | null {
  if (job.kind === 'look' && job.group === undefined)
    return { kind: 'seen', on, cultures: job.cultures ?? job.fromCultures ?? [] };
  if (job.kind === 'discard')
    return { kind: 'ended', on, cultures: job.cultures ?? [], reason: sicknessOf(job, facts) };
  if (job.kind === 'receive') return { kind: 'bought', on, strain: job.strain ?? 'melanogaster', cups: job.cups ?? 1 };
  return null;
}

/** Mites or mould that were seen in one of its cups, else that they are spent. */
function sicknessOf({ cultures = [] }: Job, facts: Facts | null): EndReason {
  const seen = (facts?.cultures ?? []).filter(({ culture }) => cultures.includes(culture)).flatMap((cup) => cup.seen);
  if (seen.some(({ mites }) => mites)) return 'mites';
  return seen.some(({ mould }) => mould) ? 'mould' : 'spent';
}
