/**
 * The line of founders: at every coming session some cups must be at their best, or no cup can be
 * started. Judged from what the keeper knows: ordinary pace, failures only once noticed.
 */
import type { HouseholdWorld } from './household-world.ts';
import type { KeeperView } from './keeper-view.ts';
import type { Rhythm } from './rhythm.ts';

/** Cups to start on `t` so that sessions that only they can serve find `wanted` cups at their best. */
export function cupsForFounderLine(
  view: KeeperView,
  { sessionDays }: Rhythm,
  t: number,
  next: number,
  wanted: number,
): number {
  const { curves, lastNeedDay } = view.sw.prepared;
  const from = Math.ceil(t + (curves.founderFromAge[t] as number));
  const totalDays = sessionDays.length;
  const reach = next < totalDays ? next + (curves.founderFromAge[next] as number) : totalDays;
  const last = Math.min(totalDays, Math.ceil(Math.max(reach, from + 1)));
  // Where a cup stays at its best over several sessions, the line should stand on several of them.
  const bySession = (curves.founderUntilAge[t] as number) - (curves.founderFromAge[t] as number) >= next - t;
  let missing = 0;
  for (let day = from; day < last; day++) {
    if (!sessionDays[day]) continue;
    if (day + (curves.effectAge[day] as number) > lastNeedDay) break;
    missing = Math.max(missing, wanted - (bySession ? sessionsAtBest(view, day) : cupsAtBest(view, day)));
  }
  return bySession ? Math.min(1, missing) : missing;
}

/** Cups to start so that as many as the keeper keeps in reserve can found others at the session on `next` or later. */
export function cupsForBackup(view: KeeperView, next: number): number {
  const { table, prepared } = view.sw;
  const wanted = prepared.strain.backupCups ?? 0;
  if (wanted <= 0) return 0;
  let cups = 0;
  for (let i = table.head; i < table.blocks; i++) {
    const b = table.order[i] as number;
    const until = (table.born[b] as number) + (prepared.curves.founderUntilAge[table.curve[b] as number] as number);
    if (!table.gone[b] && table.judged[b] !== 2 && until >= next) cups += table.cups[b] as number;
  }
  return Math.max(0, Math.ceil(wanted - cups));
}

/** Cups that the keeper expects to be at their best on `day`. */
export function cupsAtBest(view: KeeperView, day: number): number {
  const { table, prepared } = view.sw;
  const { order, gone, judged } = table;
  let cups = 0;
  for (let i = table.head; i < table.blocks; i++) {
    const b = order[i] as number;
    if (isAtBest(view, b, day) && !gone[b] && judged[b] !== 2) cups += table.cups[b] as number;
  }
  return prepared.blockSize > 1 ? Math.round(cups) : cups;
}

/** Sessions of which the keeper expects some cup to be at its best on `day`. */
function sessionsAtBest(view: KeeperView, day: number): number {
  const { table } = view.sw;
  const { order, born: bornDay, gone, judged } = table;
  let sessions = 0;
  let lastBorn = Number.NaN;
  for (let i = table.head; i < table.blocks; i++) {
    const b = order[i] as number;
    const born = bornDay[b] as number;
    if (born === lastBorn || !isAtBest(view, b, day) || gone[b] || judged[b] === 2) continue;
    lastBorn = born;
    sessions++;
  }
  return sessions;
}

function isAtBest(view: KeeperView, b: number, day: number): boolean {
  const { table, prepared } = view.sw;
  const age = day - (table.born[b] as number);
  const c = table.curve[b] as number;
  const { founderFromAge, founderUntilAge } = prepared.curves;
  return (
    age >= (founderFromAge[c] as number) &&
    age <= (founderUntilAge[c] as number) &&
    day >= (table.releasedDay[b] as number)
  );
}

/** Sessions and bought cups, living or ordered, that can still give founders at a session from `t` on. */
export function founderSources(hw: HouseholdWorld, k: number, t: number): number {
  const view = hw.views[k] as KeeperView;
  const { table } = view.sw;
  let sources = youngAfter(hw, k, t);
  let lastBorn = Number.NaN;
  for (let i = table.head; i < table.blocks; i++) {
    const b = table.order[i] as number;
    const born = table.born[b] as number;
    // Cups of one session at home share its luck; bought ones were started apart, as far as anybody knows.
    const alike = born === lastBorn && !table.bought[b];
    if (alike || table.gone[b] || table.judged[b] === 2 || !canFoundLater(hw, view, b, t)) continue;
    lastBorn = born;
    sources += table.bought[b] ? (table.cups[b] as number) : 1;
  }
  return sources;
}

/** Cups, living or coming, that can give founders at a session from `t` on, where no quarantine holds yet. */
export function founderCups(hw: HouseholdWorld, k: number, t: number): number {
  const view = hw.views[k] as KeeperView;
  const { table } = view.sw;
  let cups = 0;
  for (let i = table.head; i < table.blocks; i++) {
    const b = table.order[i] as number;
    if (!table.gone[b] && table.judged[b] !== 2 && canFoundLater(hw, view, b, t)) cups += table.cups[b] as number;
  }
  const { producing, young } = hw.pending[k] as HouseholdWorld['pending'][number];
  for (let day = t + 1; day < young.length; day++) cups += (producing[day] as number) + (young[day] as number);
  return cups;
}

function youngAfter({ pending, prepared }: HouseholdWorld, k: number, t: number): number {
  const young = pending[k]?.young;
  if (!young) return 0;
  // What is ordered arrives with the next parcel, what was ordered long ago on its own day.
  const last = Math.max(prepared.deliveryByOrderDay[t] as number, prepared.lastAwaitedDay);
  let cups = 0;
  for (let day = t + 1; day <= last && day < young.length; day++) cups += young[day] as number;
  return cups;
}

function canFoundLater(hw: HouseholdWorld, view: KeeperView, b: number, t: number): boolean {
  const { table, prepared } = view.sw;
  const c = table.curve[b] as number;
  const born = table.born[b] as number;
  const from = Math.ceil(
    Math.max(table.releasedDay[b] as number, born + (prepared.curves.founderFromAge[c] as number)),
  );
  const until = born + (prepared.curves.founderUntilAge[c] as number);
  for (let day = Math.max(t, from); day <= until && day < hw.prepared.totalDays; day++) {
    if (hw.prepared.problem.workDays[day]) return true;
  }
  return false;
}
