/** The animals: each group's periods, with those that joined and left it in between. */
import { canWaitDaysDefault, everyDay } from './defaults.ts';
import { type ReportOf, type Reports, sortedBy } from './draft-facts.ts';
import type { GroupFacts, GroupPeriod } from './facts.ts';
import { compare, type Reported } from './step-1-amendments.ts';

/** A group on the way, with the place of each period's entry among all reports. */
interface Draft extends GroupFacts {
  placeOf: Map<GroupPeriod, number>;
}

/**
 * Groups are described first, whenever that was written; then animals join and leave in order.
 * @param ordered all reports in order: a head count changes what was written before it.
 */
export function groupFacts(reports: Reports, ordered: readonly Reported[], strains: ReadonlySet<string>): GroupFacts[] {
  const groups = new Map<string, Draft>();
  ordered.forEach((report, place) => {
    if (report.kind === 'group') describe(groups, report, place, reports, strains);
  });
  ordered.forEach((report, place) => {
    if (report.kind === 'headcount') changeCount(groups, report, place, reports);
  });
  return sortedBy(groups.values(), (g) => g.group).map(({ group, name, animal, periods, dusting }) => ({
    group,
    name,
    animal,
    periods,
    dusting,
  }));
}

function describe(
  groups: Map<string, Draft>,
  entry: ReportOf<'group'>,
  place: number,
  reports: Reports,
  strains: ReadonlySet<string>,
): void {
  if (!strains.has(entry.strain)) {
    reports.unknown(entry, 'strain', entry.strain, 'strain');
    return;
  }
  const { group, name, animal, dusting } = entry;
  const before = groups.get(group) ?? newGroup(group);
  const period = periodOf(entry, before);
  before.placeOf.set(period, place);
  groups.set(group, {
    ...before,
    name: name ?? before.name,
    animal: animal ?? before.animal,
    dusting: dusting ?? before.dusting,
    periods: inTime([...standing(before.periods, period), period]),
  });
}

/** What goes on beside a new period: all but one of the same day, and a hatch that has come with it. */
function standing(periods: readonly GroupPeriod[], added: GroupPeriod): GroupPeriod[] {
  const wasThere = periods.findLast((p) => p.from <= added.from && !p.arrival);
  const hatched = !added.arrival && added.count > 0 && (wasThere?.count ?? 0) === 0;
  return periods.filter((p) => p.from !== added.from && !(hatched && p.arrival && p.from > added.from));
}

function newGroup(group: string): Draft {
  return { group, name: group, animal: null, periods: [], dusting: null, placeOf: new Map() };
}

/** Feeding days, patience, warmth and body mass go on from the period written before, unless given anew. */
function periodOf(entry: ReportOf<'group'>, { periods, animal, placeOf }: Draft): GroupPeriod {
  const before = lastWritten(periods, placeOf);
  return {
    from: entry.from ?? entry.on,
    until: entry.until ?? null,
    count: entry.count,
    fliesPerFeeding: entry.fliesPerFeeding,
    strain: entry.strain,
    feedingWeekdays: entry.feedingWeekdays ?? before?.feedingWeekdays ?? everyDay,
    animal: entry.animal ?? animal,
    canWaitDays: entry.canWaitDays ?? before?.canWaitDays ?? canWaitDaysDefault,
    canWaitIsWritten: entry.canWaitDays !== undefined || (before?.canWaitIsWritten ?? false),
    massG: entry.massG ?? before?.massG ?? null,
    temperatureC: entry.temperatureC ?? before?.temperatureC ?? null,
    flyShare: entry.flyShare ?? before?.flyShare ?? 1,
    keepRation: entry.keepRation ?? before?.keepRation ?? false,
    arrival: entry.arrival ?? null,
  };
}

function lastWritten(periods: readonly GroupPeriod[], placeOf: Draft['placeOf']): GroupPeriod | undefined {
  return [...placeOf.keys()].findLast((period) => periods.includes(period));
}

/**
 * Animals join or leave from that day on. The period that holds is split there; later ones that were planned
 * before change too, and those written afterwards count anew. An uncertain hatch stays as it is.
 */
function changeCount(groups: Map<string, Draft>, entry: ReportOf<'headcount'>, place: number, reports: Reports): void {
  const group = groups.get(entry.group);
  const held = group?.periods.findLast((p) => p.from <= entry.on);
  if (!group || !held) {
    if (group) reports.problem(entry, 'on', `${entry.on}, before the group began`, 'a day of the group');
    else reports.unknown(entry, 'group', entry.group, 'group');
    return;
  }
  // Counted anew later on that same day: they are in that number already.
  if (held.from === entry.on && placeIn(group, held) > place) return;
  if (held.count + entry.change < 0) {
    reports.problem(entry, 'change', `${entry.change} of ${held.count} animals`, `at least -${held.count}`);
    return;
  }
  group.periods = inTime(group.periods.flatMap((period) => changed(group, period, period === held, entry, place)));
}

function placeIn({ placeOf }: Draft, period: GroupPeriod): number {
  return placeOf.get(period) ?? -1;
}

function changed(
  group: Draft,
  period: GroupPeriod,
  isHeld: boolean,
  { on, change }: ReportOf<'headcount'>,
  place: number,
): GroupPeriod[] {
  const later = period.from > on && placeIn(group, period) < place && period.count > 0 && !period.arrival;
  if (!isHeld && !later) return [period];
  const after = { ...period, from: isHeld ? on : period.from, count: Math.max(0, period.count + change) };
  group.placeOf.set(after, placeIn(group, period));
  return isHeld && period.from < on ? [period, after] : [after];
}

function inTime(periods: GroupPeriod[]): GroupPeriod[] {
  return periods.sort((a, b) => compare(a.from, b.from));
}
