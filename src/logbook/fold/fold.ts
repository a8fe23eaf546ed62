/**
 * Entries to facts. The same entries give the same facts in whatever order they come: nothing here
 * reads a clock or draws a number. Entries that contradict others are listed and left out.
 */
import type { Day } from '../../foundation/index.ts';
import type { Entry } from '../entries/entry.ts';
import { Reports } from './draft-facts.ts';
import type { Facts } from './facts.ts';
import { toldProblems } from './near-names.ts';
import { applyAmendments, compare, type EntryProblem } from './step-1-amendments.ts';
import { inOrder } from './step-2-order.ts';
import {
  batchFacts,
  containerFacts,
  householdFacts,
  loggerFacts,
  placeFacts,
  recipeFacts,
  strainFacts,
} from './step-3-settings.ts';
import { cultureFacts } from './step-4-cultures.ts';
import { groupFacts } from './step-5-groups.ts';
import { absenceFacts, feedingFacts, orderFacts, purchaseFacts, stockFacts, weighingFacts } from './step-5-needs.ts';

export interface FoldOptions {
  /** Leaves out what happened after this day, as corrected by now: for looking back. */
  until?: Day;
}

/** What the logbook says after all amendments. Every list is sorted; days are ISO text. */
export function fold(entries: Iterable<Entry>, options: FoldOptions = {}): Facts {
  const facts = foldUntold(entries, options);
  return { ...facts, problems: toldProblems(facts.problems, facts) };
}

/** Facts whose problems are yet to be told as a keeper reads them. */
export type UntoldFacts = Omit<Facts, 'problems'> & { problems: EntryProblem[] };

export function foldUntold(entries: Iterable<Entry>, { until }: FoldOptions = {}): UntoldFacts {
  const { reports: all, problems } = applyAmendments(entries);
  const ordered = inOrder(until === undefined ? all : all.filter((r) => r.on <= until));
  const reports = new Reports(ordered);
  const household = householdFacts(reports);
  const [places, strains] = [placeFacts(reports), strainFacts(reports)];
  const [containers, batches] = [containerFacts(reports), batchFacts(reports)];
  const strainKeys = new Set(strains.map((s) => s.strain));
  const cultures = cultureFacts(reports, ordered, {
    places: new Set(places.map((p) => p.place)),
    strains: strainKeys,
    containers: new Map(containers.map((c) => [c.container, c])),
    batches: new Set(batches.map((b) => b.batch)),
    quarantineDays: household.purchase.quarantineDays,
  });
  const groups = groupFacts(reports, ordered, strainKeys);
  const groupKeys = new Set(groups.map((g) => g.group));
  return {
    household,
    places,
    strains,
    containers,
    batches,
    recipes: recipeFacts(reports),
    cultures,
    groups,
    feedings: feedingFacts(reports, groupKeys, new Set(cultures.map((c) => c.culture))),
    weighings: weighingFacts(reports, groupKeys),
    absences: absenceFacts(reports),
    orders: orderFacts(reports, strainKeys),
    purchases: purchaseFacts(reports, strainKeys),
    stock: stockFacts(reports),
    loggers: loggerFacts(reports),
    lastEntryOn: ordered.length > 0 ? (ordered[ordered.length - 1] as { on: Day }).on : null,
    problems: [...problems, ...reports.problems].sort(byPlace),
  };
}

function byPlace(a: EntryProblem, b: EntryProblem): number {
  return compare(a.where, b.where) || compare(a.found, b.found);
}
