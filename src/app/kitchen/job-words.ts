/** A job as a short title in a language, with the household's names in it. */
import type { Facts } from '../../logbook/index.ts';
import { type Language, texts } from '../../paper/index.ts';
import type { Job } from '../answers.ts';

/** @example jobTitle(facts, job, 'en') // => 'Start 2 cups of D. hydei' */
export function jobTitle(facts: Facts, job: Job, language: Language): string {
  const labelOf = (key: string) => facts.cultures.find((c) => c.culture === key)?.label ?? key;
  const values: Record<string, string | number> = {
    strain: facts.strains.find((s) => s.strain === job.strain)?.name ?? job.strain ?? '',
    group: facts.groups.find((g) => g.group === job.group)?.name ?? job.group ?? '',
    cultures: (job.cultures ?? []).map(labelOf).join(', '),
    place: facts.places.find((p) => p.place === job.place)?.name ?? job.place ?? '',
  };
  if (job.cups !== undefined) values.cups = Math.round(job.cups);
  if (job.flies !== undefined) values.flies = Math.round(job.flies);
  return texts(language).jobs[job.kind](values);
}
