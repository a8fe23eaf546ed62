/** Names and phrases that several screens use for the same thing. */
import type { Job } from '../../app/index.ts';
import { chanceFromWorlds } from '../../foundation/index.ts';
import { book } from './book.svelte.ts';
import { locale, t, tMaybe } from '../text/text.svelte.ts';

export function strainName(strain: string): string {
  return book.facts?.strains.find((each) => each.strain === strain)?.name || tMaybe(`strain.${strain}`) || strain;
}

export function groupName(group: string | undefined): string {
  return book.facts?.groups.find((each) => each.group === group)?.name ?? group ?? t('job.animals');
}

export function cupLabel(culture: string): string {
  return book.facts?.cultures.find((each) => each.culture === culture)?.label ?? culture;
}

export function placeName(place: string | null): string {
  return book.facts?.places.find((each) => each.place === place)?.name || place || t('shelf.noPlace');
}

/** More cups than this are named by their number. */
const mostNamed = 6;

export function cupList(cultures: readonly string[] | undefined): string {
  const labels = (cultures ?? []).slice(0, mostNamed + 1).map(cupLabel);
  const others = (cultures?.length ?? 0) - mostNamed;
  const named = others > 1 ? [...labels.slice(0, mostNamed), t('part.others', { count: others })] : labels;
  return new Intl.ListFormat(locale(), { type: 'conjunction' }).format(named);
}

/** Counts of flies are never known to the last fly: two digits that matter are shown. */
export function aboutFlies(flies: number): string {
  const power = flies < 100 ? 1 : 10 ** (Math.floor(Math.log10(flies)) - 1);
  return (Math.round(flies / power) * power).toLocaleString(locale(), { maximumFractionDigits: 0 });
}

/** A number that somebody typed, as it was typed. */
export function exactFlies(flies: number): string {
  return Math.round(flies).toLocaleString(locale());
}

export function percent(share: number): string {
  const digits = (share > 0.99 && share < 1) || (share > 0 && share < 0.01) ? 1 : 0;
  const shown = Math.floor(share * 100 * 10 ** digits) / 10 ** digits;
  return t('part.percent', { n: shown.toLocaleString(locale(), { maximumFractionDigits: digits }) });
}

/** A chance from simulated worlds: never certain, however many went well. */
export function chance(share: number, worlds: number): string {
  const known = chanceFromWorlds(share, worlds);
  if (known.is === 'about') return percent(known.share);
  const shown = known.is === 'above' ? known.share : Math.ceil(known.share * 1000) / 1000;
  return t(known.is === 'above' ? 'part.moreThan' : 'part.lessThan', { chance: percent(shown) });
}

/** The job in a few words, without its reason. */
export function jobTitle(job: Job): string {
  const from = cupList(job.fromCultures ?? job.cultures);
  const params = {
    flies: aboutFlies(job.flies ?? 0),
    count: job.cups ?? job.cultures?.length ?? 1,
    cups: from,
    strain: job.strain ? strainName(job.strain) : '',
    group: groupName(job.group),
    place: placeName(job.place ?? null),
  };
  if (job.kind === 'buy' && job.boughtStage === 'young') return t('job.buyYoung', params);
  if (job.kind === 'look' && job.group !== undefined) return t('job.lookHatch', params);
  if (job.kind === 'stretch' && job.flies === 0) return t('job.stretchNone', params);
  if (job.kind === 'feed' && from === '') return t('job.feedAny', params);
  return t(`job.${job.kind}`, params);
}
