/** Mixing, washing and shopping for the planned starts, once the keeper has counted what is in the kitchen. */
import { addDays, type Day, said } from '../../foundation/index.ts';
import type { Facts } from '../../logbook/index.ts';
import type { ShoppingAnswer } from '../kitchen/shopping-answer.ts';
import { shopping } from '../shopping.ts';
import type { SaidJob } from './said-job.ts';

/** Jobs this far ahead will be decided again. */
const firmDays = 7;

export interface KitchenJobs {
  jobs: SaidJob[];
  /** The last day that the kitchen was reckoned for. */
  until: string;
}

/** Null without stock entries, or when recipe or cups make no sense (`shopping` says why): then nobody knows what is there. */
export function kitchenJobs(facts: Facts, planned: readonly SaidJob[], on: Day): KitchenJobs | null {
  if (facts.stock.length === 0) return null;
  const answer = shopping(facts, planned, { on });
  if (!answer.ok) return null;
  const firmUntil = addDays(on, firmDays);
  const firmness = (date: string) => (date <= firmUntil ? 'firm' : 'expected');
  const mixing = answer.value.mix.map((m) => mixJob(m, firmness(m.on)));
  const washing = answer.value.wash.map((w) => washJob(w, firmness(w.on)));
  const trips = answer.value.shop.map((s) => shopJob(s, firmness(s.on)));
  return { jobs: [...mixing, ...washing, ...trips], until: answer.value.until };
}

/** One batch for every start that it lasts for, as the kitchen's own page has it. */
function mixJob(
  { on, massG, forCups, goodUntil }: ShoppingAnswer['mix'][number],
  firmness: SaidJob['firmness'],
): SaidJob {
  const cups = Math.round(forCups);
  const why = said`About ${Math.round(massG)} g fill the ${cups} cups planned until ${{ day: goodUntil as Day }}, while it keeps: mix it early enough to cool, covered.`;
  return { id: `${on}:mix`, date: on, kind: 'mix', strain: null, cups, why, firmness };
}

function washJob({ on, cups }: ShoppingAnswer['wash'][number], firmness: SaidJob['firmness']): SaidJob {
  const why = said`Clean cups run out at the next start: wash the ${Math.round(cups)} that are dirty and let them dry overnight.`;
  return { id: `${on}:wash`, date: on, kind: 'wash', strain: null, cups, why, firmness };
}

function shopJob({ on, items }: ShoppingAnswer['shop'][number], firmness: SaidJob['firmness']): SaidJob {
  const list = items.map((i) => `${i.item} ${Math.ceil(i.missing)}${i.unit === 'g' ? ' g' : ''}`);
  const first = items.map((i) => i.neededOn).sort()[0] ?? on;
  const why = said`Missing from ${{ day: first as Day }} on: ${{ list }}.`;
  return { id: `${on}:shop`, date: on, kind: 'shop', strain: null, why, firmness };
}
