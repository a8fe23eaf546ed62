/** A job as one sentence in the imperative, cups by the labels on them. */
import type { Job } from '../../app/index.ts';
import { counted } from './layout.ts';

/** A cup's label and a group's name by key. */
export interface LabelBook {
  cup(key: string): string;
  group(key: string): string;
  strain(key: string): string;
  place(key: string): string;
}

export function jobSentence(job: Job, labels: LabelBook): string {
  const cups = listed((job.cultures ?? []).map(labels.cup));
  const from = job.fromCultures?.length ? ` from ${listed(job.fromCultures.map(labels.cup))}` : '';
  const strain = job.strain ? ` of ${labels.strain(job.strain)}` : '';
  const flies = job.flies === undefined ? '' : `about ${counted(Math.round(job.flies), 'fly', 'flies')}`;
  const number = job.cups === undefined ? 'cups' : counted(job.cups, 'cup');
  const sentences: Record<Job['kind'], string> = {
    start: `Start ${number}${strain}${from}${foundersText(job)}.`,
    feed: `Feed ${job.group ? `${labels.group(job.group)} ` : ''}${flies || 'flies'}${from || (cups && ` from ${cups}`)}.`,
    look: `Look at ${cups || 'the cups'}.`,
    discard: `Throw out ${cups || 'the spent cups'}.`,
    mix: `Mix medium for ${number}.`,
    receive: `Unpack ${number}${strain} from the post.`,
    buy: `Order ${job.boughtStage === 'young' ? number.replace('cup', 'young cup') : number.replace('cup', 'producing cup')}${strain}.`,
    move: `Move ${cups || 'the cups'}${job.place === undefined ? '' : ` to ${labels.place(job.place)}`}.`,
    stretch:
      job.flies === 0
        ? 'No flies to feed today.'
        : `Feed ${job.group ? labels.group(job.group) : 'the animals'} less for a while.`,
    wash: `Wash ${number}.`,
    shop: 'Buy what the next medium needs.',
  };
  return sentences[job.kind];
}

/** The flies of a start are those of all its cups together. */
function foundersText({ flies, cups = 1 }: Job): string {
  if (flies === undefined) return '';
  const each = Math.round(flies / Math.max(1, cups));
  return cups === 1 ? ` with ${counted(each, 'fly', 'flies')}` : ` with ${counted(each, 'fly', 'flies')} each`;
}

/** `a, b and c` */
export function listed(items: readonly string[]): string {
  return items.length < 2 ? (items[0] ?? '') : `${items.slice(0, -1).join(', ')} and ${items.at(-1)}`;
}
