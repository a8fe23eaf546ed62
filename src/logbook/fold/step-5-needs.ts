/** Step 5: what the animals ate and weighed, absences, orders, and what is in stock. */
import { daysBetween } from '../../foundation/index.ts';
import { type ReportOf, type Reports, sortedBy } from './draft-facts.ts';
import type { AbsenceFact, FeedingFact, OrderFact, PurchaseFact, StockFact, WeighingFact } from './facts.ts';
import { compare } from './step-1-amendments.ts';

export function feedingFacts(
  reports: Reports,
  groups: ReadonlySet<string>,
  cultures: ReadonlySet<string>,
): FeedingFact[] {
  return reports.of('fed').flatMap((entry) => {
    if (!groups.has(entry.group)) {
      reports.unknown(entry, 'group', entry.group, 'group');
      return [];
    }
    const fromCultures = (entry.fromCultures ?? []).filter((key) => {
      if (cultures.has(key)) return true;
      reports.unknown(entry, 'fromCultures', key, 'culture');
      return false;
    });
    const { id, on, group, flies, leftOver, supplements } = entry;
    return [
      { entryId: id, on, group, flies, fromCultures, leftOver: leftOver ?? null, supplements: supplements ?? null },
    ];
  });
}

export function weighingFacts(reports: Reports, groups: ReadonlySet<string>): WeighingFact[] {
  return reports.of('weighed').flatMap((entry) => {
    const { id, on, group, massG, lengthMm, animals } = entry;
    if (groups.has(group))
      return [{ entryId: id, on, group, massG: massG ?? null, lengthMm: lengthMm ?? null, animals: animals ?? 1 }];
    reports.unknown(entry, 'group', group, 'group');
    return [];
  });
}

export function absenceFacts(reports: Reports): AbsenceFact[] {
  return reports
    .of('absence')
    .map((e) => ({ from: e.from ?? e.on, until: e.until, sitterFeeds: e.sitterFeeds ?? false }))
    .sort(
      (a, b) => compare(a.from, b.from) || compare(a.until, b.until) || Number(a.sitterFeeds) - Number(b.sitterFeeds),
    );
}

export function orderFacts(reports: Reports, strains: ReadonlySet<string>): OrderFact[] {
  const orders = new Map<string, OrderFact>();
  for (const entry of reports.of('order')) {
    const { order, on, due, strain } = entry;
    const before = orders.get(order);
    if (strains.has(strain)) {
      const { flies = before?.flies ?? 0, cups = before?.cups ?? 0 } = entry;
      orders.set(order, { order, on: before?.on ?? on, due, strain, flies, cups });
    } else reports.unknown(entry, 'strain', strain, 'strain');
  }
  return [...orders.values()].sort((a, b) => compare(a.due, b.due) || compare(a.order, b.order));
}

/**
 * A cup that came is no longer awaited; a purchase that has come in full is left out. A bought cup that names
 * no purchase belongs to the strain's earliest open one expected within a week of it.
 */
export function purchaseFacts(reports: Reports, strains: ReadonlySet<string>): PurchaseFact[] {
  const purchases = new Map<string, PurchaseFact>();
  for (const entry of reports.of('purchase')) {
    const { purchase, on, strain, cups, stage = 'producing', arrives } = entry;
    if (strains.has(strain)) purchases.set(purchase, { purchase, on, strain, cups, stage, arrives });
    else reports.unknown(entry, 'strain', strain, 'strain');
  }
  for (const bought of reports.of('bought')) {
    const awaited = bought.purchase === undefined ? likelyPurchase(purchases, bought) : purchases.get(bought.purchase);
    if (awaited) awaited.cups = Math.max(0, awaited.cups - 1);
  }
  return sortedBy(purchases.values(), (p) => p.purchase).filter((p) => p.cups > 0);
}

function likelyPurchase(
  purchases: ReadonlyMap<string, PurchaseFact>,
  { strain, on }: ReportOf<'bought'>,
): PurchaseFact | undefined {
  return [...purchases.values()]
    .filter((p) => p.strain === strain && p.cups > 0 && p.on <= on && Math.abs(daysBetween(p.arrives, on)) <= 7)
    .sort((a, b) => compare(a.arrives, b.arrives) || compare(a.purchase, b.purchase))[0];
}

export function stockFacts(reports: Reports): StockFact[] {
  const byItem = new Map<string, StockFact>();
  for (const { item, amount, unit, on, pricePerUnit } of reports.of('stock')) {
    const before = byItem.get(item);
    const known = before?.unit === unit ? before.pricePerUnit : null;
    byItem.set(item, { item, amount, unit, on, pricePerUnit: pricePerUnit ?? known });
  }
  return sortedBy(byItem.values(), (s) => s.item);
}
