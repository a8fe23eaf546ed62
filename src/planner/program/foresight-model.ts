/**
 * One simulated world as a linear model in which everything is known beforehand (information
 * relaxation). Variables: cups started on each allowed day and bought on each delivery day, flies eaten
 * on each day, flies kept until the next. A day may go short at a price; the price is taken back over
 * the days allowed, so that the mean over worlds bounds every policy that keeps its service (weak duality).
 */
import { cumulativeAt, transitDays } from '../forecast/curve-table.ts';
import type { PreparedHousehold, PreparedStrain } from '../forecast/prepared-household.ts';
import type { BlockDraw } from '../forecast/world-draws.ts';
import { deliveryDrawDay, drawBlock, type HouseholdDraw, householdDraw, worldKey } from '../forecast/world-draws.ts';

export interface ForesightOptions {
  seed: number;
  world: number;
  /** Cups that one short day is worth. */
  shortDayPrice: number;
  /** Days that are judged; short days before it cost nothing. */
  judgedFrom: number;
  /** Whole cups: an integer program, whose bound is closer. */
  whole: boolean;
}

/** Cups of one kind and delivery that are told apart; a policy that buys more at once is not bounded. */
const mostBoughtAtOnce = 4;
/** Flies by which a day may miss its need without being called short. */
const tolerance = 0.5;

interface Cup {
  variable: string;
  /** Day from which it is here, and flies that emerge on each day from then on. */
  founders: number;
  day: number;
  flies: { day: number; amount: number }[];
}

/** CPLEX-LP text: least cups plus priced short days of one strain in one world. */
export function foresightModel(
  household: PreparedHousehold,
  prepared: PreparedStrain,
  options: ForesightOptions,
): string {
  const { problem } = household;
  const { shortDayPrice, judgedFrom, whole } = options;
  const world = worldOf(prepared, options);
  const cups = [...startedCups(household, prepared, world), ...boughtCups(household, prepared, world)];
  const terms: string[][] = Array.from({ length: problem.days }, () => []);
  for (const cup of cups) {
    if (cup.founders > 0) terms[cup.day]?.push(`+ ${cup.founders} ${cup.variable}`);
    for (const { day, amount } of cup.flies) terms[day]?.push(`- ${amount.toFixed(3)} ${cup.variable}`);
  }
  const supply = existingFlies(prepared, options.world, problem.days);
  const needs = Array.from({ length: problem.days }, (_, t) =>
    Math.max(0, (prepared.need[t] as number) * world.household.needFactor - tolerance),
  );
  const rows = needs.map((need, t) => {
    const before = t > 0 ? `- ${prepared.strain.adultDailySurvival} s_${t - 1} ` : '';
    const right = ((supply[t] as number) - need).toFixed(3);
    return `f_${t}: s_${t} - u_${t} ${before}${(terms[t] as string[]).join(' ')} = ${right}`;
  });
  const prices = needs.flatMap((need, t) => (need > 0 && t >= judgedFrom ? [`${shortDayPrice / need} u_${t}`] : []));
  const bounds = [
    ...cups.map((cup) => ` 0 <= ${cup.variable} <= 1`),
    ...needs.map((need, t) => ` 0 <= u_${t} <= ${need.toFixed(3)}`),
  ];
  const objective = [...cups.map((cup) => cup.variable), ...prices].join(' + ');
  const kinds = whole ? `General\n ${cups.map((cup) => cup.variable).join('\n ')}\n` : '';
  return `Minimize\n obj: ${objective}\nSubject To\n ${rows.join('\n ')}\nBounds\n${bounds.join('\n')}\n${kinds}End\n`;
}

interface World {
  key: number;
  household: HouseholdDraw;
}

function worldOf(prepared: PreparedStrain, { seed, world }: ForesightOptions): World {
  const key = worldKey(seed, world, prepared.index);
  return { key, household: householdDraw(prepared.strain.uncertainty, prepared.strain.needLogSd, key, world) };
}

function startedCups(household: PreparedHousehold, prepared: PreparedStrain, world: World): Cup[] {
  const { problem } = household;
  const cups: Cup[] = [];
  for (let t = 0; t < problem.days; t++) {
    for (let n = 0; n < problem.maxCupsPerSession && problem.workDays[t]; n++) {
      const flies = fliesOf(prepared, world, { curve: t, drawDay: t, born: t, from: t, n, factor: 1 }, problem.days);
      cups.push({ variable: `x_${t}_${n}`, founders: prepared.strain.foundersPerCup, day: t, flies });
    }
  }
  return cups;
}

function boughtCups(household: PreparedHousehold, prepared: PreparedStrain, world: World): Cup[] {
  const { problem } = household;
  const { curves, strain, arrivalLossShare } = prepared;
  const cups: Cup[] = [];
  for (let t = problem.purchase.leadDays; t < problem.days; t++) {
    for (let n = 0; n < mostBoughtAtOnce && problem.purchase.deliveryDays[t]; n++) {
      for (const [kind, curve, age] of [
        ['p', curves.producing, strain.bought.producingAgeDays],
        ['y', curves.young, strain.bought.youngAgeDays],
      ] as const) {
        const drawDay = deliveryDrawDay(t, kind === 'y');
        const source = { curve, drawDay, born: t - age, from: t, n, factor: 1 - arrivalLossShare };
        cups.push({
          variable: `${kind}_${t}_${n}`,
          founders: 0,
          day: t,
          flies: fliesOf(prepared, world, source, problem.days),
        });
      }
    }
  }
  return cups;
}

interface Source {
  curve: number;
  drawDay: number;
  born: number;
  from: number;
  n: number;
  factor: number;
}

function fliesOf(
  prepared: PreparedStrain,
  world: World,
  source: Source,
  days: number,
): { day: number; amount: number }[] {
  const { curves, strain } = prepared;
  const block: BlockDraw = { yieldFactor: 1, pace: 1, failAge: 0, failShare: 1 };
  drawBlock(strain.uncertainty, world.household, world.key, source.drawDay, source.n, 1, block);
  const last = Math.min(curves.spentAge[source.curve] as number, Math.ceil(block.failAge) - 1);
  const flies: { day: number; amount: number }[] = [];
  const age = source.from - source.born;
  let before = cumulativeAt(curves, source.curve, Math.max(0, age - (age > 0 ? transitDays : 0)) * block.pace);
  for (let a = age; a <= last && source.born + a < days; a++) {
    const now = cumulativeAt(curves, source.curve, (a + 1) * block.pace);
    const amount = (now - before) * block.yieldFactor * source.factor;
    before = now;
    if (amount > 0.001) flies.push({ day: source.born + a, amount });
  }
  return flies;
}

function existingFlies(prepared: PreparedStrain, world: number, days: number): Float64Array {
  const { curves, strain } = prepared;
  const flies = new Float64Array(days);
  strain.existing.forEach((cup, k) => {
    const at = (values: Float64Array) => values[world % values.length] as number;
    const curve = curves.firstExisting + k;
    const pace = Math.exp(at(cup.draws.logPace));
    const factor = Math.exp(at(cup.draws.logYield));
    const last = Math.max(cup.ageDays, curves.spentAge[curve] as number);
    flies[0] = (flies[0] as number) + at(cup.draws.fliesNow);
    for (let a = cup.ageDays; a <= last && a < at(cup.draws.endAge) && a - cup.ageDays < days; a++) {
      const amount = cumulativeAt(curves, curve, (a + 1) * pace) - cumulativeAt(curves, curve, a * pace);
      flies[a - cup.ageDays] = (flies[a - cup.ageDays] as number) + amount * factor;
    }
  });
  return flies;
}
