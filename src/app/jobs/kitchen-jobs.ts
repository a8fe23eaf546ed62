/** Washing and shopping for the planned starts, once the keeper has counted what is in the kitchen. */
import { addDays, type Day, said } from '../../foundation/index.ts';
import type { Facts } from '../../logbook/index.ts';
import type { ShoppingAnswer } from '../kitchen/shopping-answer.ts';
import { shopping } from '../shopping.ts';
import type { SaidJob } from './said-job.ts';

/** Jobs this far ahead will be decided again. */
const firmDays = 7;

/** Empty without stock entries, or when recipe or cups make no sense: `shopping` says why. */
export function kitchenJobs(facts: Facts, planned: readonly SaidJob[], on: Day): SaidJob[] {
  if (facts.stock.length === 0) return [];
  const answer = shopping(facts, planned, { on });
  if (!answer.ok) return [];
  const firmUntil = addDays(on, firmDays);
  const firmness = (date: string) => (date <= firmUntil ? 'firm' : 'expected');
  const washing = answer.value.wash.map((w) => washJob(w, firmness(w.on)));
  const trips = answer.value.shop.map((s) => shopJob(s, firmness(s.on)));
  return [...washing, ...trips];
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
