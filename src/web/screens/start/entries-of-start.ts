/** The entries that say that cups were started. */
import type { Job } from '../../../app/index.ts';
import type { Day } from '../../../foundation/index.ts';
import type { EntryDraft, Facts } from '../../../logbook/index.ts';
import { freshLabels } from '../../state/cup-names.ts';
import { keyOfLabel } from '../../state/key-of-name.ts';

/** What the page offers of the logbook's words for live yeast. */
export const yeastWords = ['none', 'good', 'excess'] as const;
export type YeastWord = (typeof yeastWords)[number];

export interface CupsStarted {
  labels: string[];
  strain: string;
  /** In each cup. */
  founders: number;
  place: string | null;
  parents: string[];
  liveYeast?: YeastWord | null;
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
  { labels, strain, founders, place, parents, liveYeast }: CupsStarted,
  facts: Facts,
  on: Day,
): EntryDraft[] {
  const container = facts.containers[0]?.container;
  const batches = mediumFor(labels.length, facts, on);
  return labels.map((label, i) => ({
    kind: 'started',
    on,
    culture: keyOfLabel(label),
    label,
    strain,
    founders: Math.round(founders),
    ...(place && { place }),
    ...(container && { container }),
    ...(batches[i] && { batch: batches[i] }),
    ...(liveYeast && { liveYeast }),
    ...(parents.length > 0 && { fromCultures: [...parents] }),
  }));
}

/** The batch that each cup is filled from: the one that spoils first, while it lasts; null where none is left. */
export function mediumFor(cups: number, { batches, cultures, containers }: Facts, on: Day): (string | null)[] {
  const cupG = containers[0]?.mediumMassG ?? 0;
  const left = batches
    .filter((batch) => batch.on <= on && batch.goodUntil !== null && batch.goodUntil >= on)
    .sort((a, b) => String(a.goodUntil).localeCompare(String(b.goodUntil)))
    .map(({ batch, massG }) => {
      const usedG = cultures.filter((each) => each.batch === batch).reduce((sum, each) => sum + each.mediumMassG, 0);
      return { batch, massG: massG - usedG };
    });
  return Array.from({ length: cups }, () => {
    const from = left.find(({ massG }) => cupG > 0 && massG >= cupG * fillsWith);
    if (from) from.massG -= cupG;
    return from?.batch ?? null;
  });
}

/** The last cup of a batch may be a little less full: what stays in the pot is not weighed. */
const fillsWith = 0.8;
