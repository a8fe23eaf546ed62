/**
 * The deterministic core as a program: one strain in the mean world, every cup's flies followed apart, so
 * that what is thrown out with a spent cup is lost and founders come from cups at their best. Each rule
 * can be left out, which makes the program's optimum a bound of the stricter ones. Variables: cups of each
 * session and delivery (x, p, y), flies kept in them overnight (h), founders taken from them (g), and
 * rations owed and missed (b, u). No start needs a yes or no, so the relaxation is the flow itself.
 */
import { meanOf, meanWorld } from '../forecast/strain-world.ts';
import type { PreparedHousehold, PreparedStrain } from '../forecast/prepared-household.ts';
import type { CountedCups } from './counted-cups.ts';
import { type RationClass, rationBounds, rationsOf, rationTerms } from './ration-terms.ts';

/** What a plan of the core has to respect. */
export interface CoreRules {
  wholeCups: boolean;
  /** Founders are flies, taken from cups at their best. */
  founders: boolean;
  /** Work days, cups a session, containers and medium, shelf. */
  keeper: boolean;
}

/** Cups of one origin: started on a day, delivered on one, or one that lives. */
interface Source {
  /** Its variable; empty for a living cup. */
  cups: string;
  name: string;
  /** First day with flies, and those that come on each day from then on, of one cup. */
  from: number;
  flies: number[];
  /** Days on which founders may be taken from it. */
  founderFrom: number;
  founderUntil: number;
  /** Day on which it was started or comes, and its last one. */
  day: number;
  lastDay: number;
  most: number;
  cost: number;
}

/** CPLEX-LP text: the fewest cups, counted as `counted` says, that feed every day from `judgedFrom` on in full. */
export function certainCore(
  household: PreparedHousehold,
  prepared: PreparedStrain,
  counted: CountedCups,
  judgedFrom: number,
  rules: CoreRules,
): string {
  const { days } = household.problem;
  const started = startedSources(household, prepared, counted, rules);
  const sources = [...livingSources(prepared, days), ...started, ...boughtSources(household, prepared, counted)];
  const rations = rationsOf(prepared, meanWorld, 1, days);
  const rows = [
    ...sources.flatMap((one) => stockRows(one, prepared, rules, started)),
    ...feedingRows(sources, prepared, rations, days, rules, started),
    ...(rules.founders ? founderRows(sources, prepared, started) : []),
    ...(rules.keeper ? shelfRows(household, sources, started) : []),
  ];
  const cups = sources.filter((one) => one.cups !== '');
  const objective = cups.map(({ cost, cups: name }) => `${cost.toFixed(6)} ${name}`).join(' + ');
  const bounds = [
    ...cups.map(({ cups: name, most }) => ` 0 <= ${name} <= ${most}`),
    ...rationBounds(rations, days, judgedFrom),
  ];
  const whole = rules.wholeCups ? `Generals\n ${cups.map(({ cups: name }) => name).join('\n ')}\n` : '';
  return `Minimize\n obj: ${objective}\nSubject To\n ${rows.join('\n ')}\nBounds\n${bounds.join('\n')}\n${whole}End\n`;
}

/** Cups beyond which no count is limited. */
const noLimit = 10_000;

function startedSources(
  { problem }: PreparedHousehold,
  prepared: PreparedStrain,
  counted: CountedCups,
  { keeper }: CoreRules,
): Source[] {
  const sources: Source[] = [];
  for (let t = 0; t < problem.days; t++) {
    if (keeper && !problem.workDays[t]) continue;
    const onHand = problem.cupsOnHandByDay?.[t] ?? noLimit;
    const most = keeper ? Math.min(problem.maxCupsPerSession, onHand) : noLimit;
    const curve = { curve: t, age: 0, day: t, founderFromDay: t };
    const name = `x_${t}`;
    sources.push(newSource(prepared, problem.days, { ...curve, name, most, cost: counted.started[t] as number }));
  }
  return sources;
}

function boughtSources({ problem }: PreparedHousehold, prepared: PreparedStrain, counted: CountedCups): Source[] {
  const { curves, strain } = prepared;
  const { purchase, days } = problem;
  const awaited = (strain.awaited ?? []).map(({ kind, arrivalDay }) => `${kind} ${arrivalDay}`);
  const sources: Source[] = [];
  for (let t = 0; t < days; t++) {
    for (const kind of ['producing', 'young'] as const) {
      const onTheWay = awaitedOn(prepared, kind, t);
      const canOrder = t >= Math.max(1, purchase.leadDays) && purchase.deliveryDays[t] === 1;
      if (!canOrder && !awaited.includes(`${kind} ${t}`)) continue;
      const age = kind === 'young' ? strain.bought.youngAgeDays : strain.bought.producingAgeDays;
      const curve = { curve: curves[kind], age, day: t, founderFromDay: t + purchase.quarantineDays };
      if (onTheWay > 0) {
        const parcel = newSource(prepared, days, { ...curve, name: '', most: 0, cost: 0 });
        sources.push({ ...parcel, name: `w${kind[0]}_${t}`, flies: parcel.flies.map((flies) => flies * onTheWay) });
      }
      const name = `${kind[0]}_${t}`;
      const cost = counted[kind][t] as number;
      if (canOrder) sources.push(newSource(prepared, days, { ...curve, name, most: noLimit, cost }));
    }
  }
  return sources;
}

function awaitedOn({ strain }: PreparedStrain, kind: 'producing' | 'young', day: number): number {
  return (strain.awaited ?? [])
    .filter((one) => one.kind === kind && one.arrivalDay === day)
    .reduce((sum, { cups }) => sum + cups, 0);
}

interface Origin {
  curve: number;
  age: number;
  day: number;
  founderFromDay: number;
  name: string;
  most: number;
  cost: number;
}

function newSource(prepared: PreparedStrain, days: number, origin: Origin): Source {
  const { curves, strain } = prepared;
  const { curve, age, day, founderFromDay, name, most, cost } = origin;
  const { logYield, logPace } = strain.uncertainty.householdDraws;
  const factor = meanOf(logYield, Math.exp, 1);
  const pace = Math.exp(meanOf(logPace, (x) => x, 0));
  const born = day - age;
  const lastDay = born + (curves.spentAge[curve] as number);
  const flies: number[] = [];
  let from = day;
  for (let t = day; t <= Math.min(lastDay, days - 1); t++) {
    const emerging = factor * (curves.expected[curve * curves.stride + t - born] as number);
    if (flies.length === 0 && emerging < 0.001) from = t + 1;
    else flies.push(emerging);
  }
  return {
    cups: name,
    name,
    from,
    flies,
    founderFrom: Math.max(founderFromDay, born + (curves.founderFromAge[curve] as number) / pace),
    founderUntil: Math.min(lastDay, born + (curves.founderUntilAge[curve] as number) / pace),
    day,
    lastDay,
    most,
    cost,
  };
}

function livingSources({ curves, strain }: PreparedStrain, days: number): Source[] {
  return strain.existing.map((cup, k) => {
    const curve = curves.firstExisting + k;
    const pace = Math.exp(meanOf(cup.draws.logPace, (x) => x, 0));
    const lastDay = Math.max(0, (curves.spentAge[curve] as number) - cup.ageDays);
    const flies = Array.from(
      { length: Math.min(lastDay, days - 1) + 1 },
      (_, t) => curves.expected[curve * curves.stride + cup.ageDays + t] ?? 0,
    );
    flies[0] = (flies[0] ?? 0) + meanOf(cup.draws.fliesNow, (x) => x, 0);
    return {
      cups: '',
      name: `l_${k}`,
      from: 0,
      flies,
      founderFrom: Math.max(cup.foundersFromDay, (curves.founderFromAge[curve] as number) / pace - cup.ageDays),
      founderUntil: Math.min(lastDay, (curves.founderUntilAge[curve] as number) / pace - cup.ageDays),
      day: -cup.ageDays,
      lastDay,
      most: 0,
      cost: 0,
    };
  });
}

/** What a source keeps and founds with on day `t` less what it has: terms, and a constant that it has besides. */
function given(source: Source, t: number, survival: number, founders: boolean, isSession: boolean) {
  const i = t - source.from;
  if (i < 0 || i >= source.flies.length) return null;
  const terms: string[] = [];
  if (i > 0) terms.push(`- ${survival} h_${source.name}_${t - 1}`);
  if (i < source.flies.length - 1) terms.push(`+ h_${source.name}_${t}`);
  if (founders && isSession && mayFound(source, t)) terms.push(`+ g_${source.name}_${t}`);
  const flies = source.flies[i] as number;
  if (source.cups !== '') terms.push(`- ${flies.toFixed(3)} ${source.cups}`);
  return { terms, constant: source.cups === '' ? flies : 0 };
}

function mayFound(source: Source, t: number): boolean {
  return t >= source.founderFrom && t <= source.founderUntil;
}

function stockRows(source: Source, { strain }: PreparedStrain, rules: CoreRules, started: Source[]): string[] {
  const sessions = new Set(started.map(({ day }) => day));
  return source.flies.map((_, i) => {
    const t = source.from + i;
    const flow = given(source, t, strain.adultDailySurvival, rules.founders, sessions.has(t));
    return `k_${source.name}_${t}: ${flow?.terms.join(' ')} <= ${(flow?.constant ?? 0).toFixed(3)}`;
  });
}

function feedingRows(
  sources: Source[],
  { strain }: PreparedStrain,
  rations: RationClass[],
  days: number,
  rules: CoreRules,
  started: Source[],
): string[] {
  const sessions = new Set(started.map(({ day }) => day));
  return Array.from({ length: days }, (_, t) => {
    const flows = sources.flatMap(
      (one) => given(one, t, strain.adultDailySurvival, rules.founders, sessions.has(t)) ?? [],
    );
    const { taken, need } = rationTerms(rations, t);
    const constant = flows.reduce((sum, flow) => sum + flow.constant, 0);
    return `f_${t}: ${flows.flatMap(({ terms }) => terms).join(' ')} ${taken} <= ${(constant - need).toFixed(3)}`;
  });
}

function founderRows(sources: Source[], { strain }: PreparedStrain, started: Source[]): string[] {
  return started.map(({ day, cups }) => {
    const from = sources.filter((one) => mayFound(one, day) && day >= one.from && day - one.from < one.flies.length);
    const taken = from.map(({ name }) => `+ g_${name}_${day}`).join(' ');
    return `o_${day}: ${taken} - ${strain.foundersPerCup} ${cups} >= 0`;
  });
}

/** Started and living cups fit the shelf at each session; bought ones may stand beside it, as in the worlds. */
function shelfRows({ problem }: PreparedHousehold, sources: Source[], started: Source[]): string[] {
  return started.map(({ day }) => {
    const standing = sources.filter((one) => one.day <= day && one.lastDay >= day);
    const living = standing.filter(({ cups }) => cups === '').length;
    const room = Math.max(0, problem.shelfCups - living);
    const names = standing.filter(({ cups }) => cups.startsWith('x_')).map(({ cups }) => `+ ${cups}`);
    return `r_${day}: ${names.join(' ')} <= ${room}`;
  });
}
