/** The entries that say that cups were started. */
import type { Job } from '../../../app/index.ts';
import type { Day } from '../../../foundation/index.ts';
import type { EntryDraft, Facts } from '../../../logbook/index.ts';
import { freshLabels } from '../../state/cup-names.ts';

export interface CupsStarted {
  labels: string[];
  strain: string;
  /** In each cup. */
  founders: number;
  place: string | null;
  parents: string[];
}

/** The founders that a cup gets when nobody says otherwise; common practice, without a source. */
const usualFounders = 50;

/** What the plan's job asks for, or one usual cup where there is no job. */
export function startAsked(job: Job | null, facts: Facts, strain: string): CupsStarted {
  const cups = job?.cups ?? 1;
  const asked = job?.flies ? Math.round(job.flies / cups) : null;
  const kind = job?.strain ?? strain;
  return {
    labels: freshLabels(facts, kind, cups),
    strain: kind,
    founders: asked ?? facts.containers[0]?.founders ?? usualFounders,
    place: facts.places[0]?.place ?? null,
    parents: job?.fromCultures ?? [],
  };
}

export function entriesOfStart(
  { labels, strain, founders, place, parents }: CupsStarted,
  facts: Facts,
  on: Day,
): EntryDraft[] {
  const container = facts.containers[0]?.container;
  return labels.map((label) => ({
    kind: 'started',
    on,
    culture: label,
    label,
    strain,
    founders: Math.round(founders),
    ...(place && { place }),
    ...(container && { container }),
    ...(parents.length > 0 && { fromCultures: [...parents] }),
  }));
}
