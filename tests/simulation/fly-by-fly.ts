/**
 * A culture fly by fly: every egg, larva, pupa and adult is followed alone and chance decides for each.
 * The slow oracle of the fast engine: written from the model's description, it shares no code with the
 * engine; only the strain's values are the same.
 */
import type { CultureConditions, Curve, HarvestRule, StrainLife } from '../../src/biology/index.ts';
import { type RandomStream, randomStream } from '../../src/foundation/index.ts';

export interface FlyByFlyDay {
  emerged: number;
  harvested: number;
  eggsLaid: number;
  larvae: number;
  pupae: number;
  adults: number;
  massSumMg: number;
}

const enum Stage {
  egg,
  larva,
  pupa,
  gone,
}

interface Young {
  stage: Stage;
  /** Physiological age, 1 about the mean time to emergence. */
  clock: number;
  /** Clock at which the present stage began, and ends. */
  since: number;
  until: number;
  /** The individual's own quickness in each stage, standard normals. */
  quick: [number, number, number];
  met: number;
  /** Hazard that this one outlives, exponential: it dies when that much has been met. */
  fate: number;
}

interface Adult {
  female: boolean;
  /** Age in days at 25 C. */
  age: number;
}

export interface FlyByFlyOptions {
  /** Half an hour when not given: two hours put the mean day of emergence .08 days late. */
  stepHours?: number;
  /** Founders of a sex each by chance, or as many females as males. */
  founderSexes?: 'chance' | 'even';
}

/** One run of a culture at constant or hourly temperature, `days` days; steps of `stepHours` hours. */
export function flyByFly(
  strain: StrainLife,
  hourlyC: Float64Array,
  conditions: CultureConditions,
  harvest: HarvestRule,
  days: number,
  seed: number,
  { stepHours = 0.5, founderSexes = 'chance' }: FlyByFlyOptions = {},
): FlyByFlyDay[] {
  const world = newWorld(strain, conditions, randomStream(seed, 'fly by fly'), founderSexes);
  // Founders grew old as they would have on the cup's first day: their age is in days, a fly's clock in days at 25 C.
  const firstDay = Array.from({ length: 24 }, (_, hour) => adultPace(world, hourlyC[hour] as number) / 24);
  const aDay = firstDay.reduce((sum, part) => sum + part, 0);
  for (const founder of world.adults) founder.age *= aDay;
  const log: FlyByFlyDay[] = [];
  for (let day = 0; day < days; day += 1) {
    const today: FlyByFlyDay = { emerged: 0, harvested: 0, eggsLaid: 0, larvae: 0, pupae: 0, adults: 0, massSumMg: 0 };
    for (let hour = 0; hour < 24; hour += stepHours) {
      moveOn(world, hourlyC[Math.floor(day * 24 + hour)] as number, stepHours / 24, day * 24 + hour, today);
    }
    const from = harvest.fromAgeDays ?? Number.POSITIVE_INFINITY;
    if (day >= from && (day - from) % harvest.everyDays === 0) takeFlies(world, harvest.share, today);
    today.larvae = world.young.filter((y) => y.stage === Stage.larva).length;
    today.pupae = world.young.filter((y) => y.stage === Stage.pupa).length;
    today.adults = world.adults.length;
    log.push(today);
  }
  return log;
}

interface World {
  strain: StrainLife;
  chance: RandomStream;
  young: Young[];
  adults: Adult[];
  food: number;
  foodAtStart: number;
  capacity: number;
  halfAdults: number;
  mediumClock: number;
  pace: Map<number, number>;
}

function newWorld(
  strain: StrainLife,
  conditions: CultureConditions,
  chance: RandomStream,
  founderSexes: 'chance' | 'even',
): World {
  const depth = conditions.mediumMassG / 1.05 / conditions.surfaceCm2;
  const food = conditions.mediumMassG * strain.medium.fliesPerG;
  const adults = Array.from({ length: conditions.founders }, (_, i) => ({
    female: founderSexes === 'even' ? i % 2 === 0 : chance.uniform() >= strain.adult.maleShare,
    age: conditions.founderAgeDays,
  }));
  return {
    strain,
    chance,
    young: [],
    adults,
    food,
    foodAtStart: food,
    capacity:
      strain.crowding.larvaePerCm2 * conditions.surfaceCm2 * (1 - Math.exp(-depth / strain.crowding.feedingDepthCm)),
    halfAdults: strain.laying.halfAdultsPerCm2 * conditions.surfaceCm2,
    mediumClock: 0,
    pace: new Map(),
  };
}

function moveOn(world: World, temperatureC: number, dt: number, hour: number, today: FlyByFlyDay): void {
  const { strain } = world;
  const aging = adultPace(world, temperatureC) * dt;
  world.mediumClock += dt / line(strain.medium.lifeDays, temperatureC);
  const fed = feeding(world);
  const load = world.young.reduce((sum, y) => sum + appetite(y), 0);
  const crowding = load / (world.capacity * Math.max(0.01, fed));
  const settled = hour + 24 * dt > 24 * strain.founders.settlingDays;
  if (settled) layEggs(world, temperatureC, dt, fed, today);
  growYoung(world, temperatureC, dt, crowding, today);
  ageAdults(world, aging);
}

function feeding(world: World): number {
  const left = Math.max(0, world.food / world.foodAtStart);
  // Food at 40 % of the start feeds about half as well; an aged medium falls away with the sixth power.
  return ((1.4 * left) / (left + 0.4)) * Math.exp(-(world.mediumClock ** 6));
}

function appetite(y: Young): number {
  if (y.stage !== Stage.larva) return 0;
  const u = Math.min(1, Math.max(0, (y.clock - y.since) / (y.until - y.since)));
  return 3 * u * u;
}

function layEggs(world: World, temperatureC: number, dt: number, fed: number, today: FlyByFlyDay): void {
  const { strain, chance } = world;
  const { laying } = strain;
  const warmth = line(laying.byTemperature, temperatureC) * line(laying.maleFertility, temperatureC);
  const room = 1 + world.adults.length / world.halfAdults;
  let rate = 0;
  for (const fly of world.adults) {
    if (!fly.female || fly.age <= laying.firstEggsDays) continue;
    const rise = 1 - Math.exp(laying.firstEggsDays - fly.age);
    rate += rise / (1 + Math.exp((fly.age - laying.halfAgeDays) / laying.declineWidthDays));
  }
  const eggs = chance.poisson((rate * laying.cupShare * laying.peakEggsPerDay * warmth * fed * dt) / room);
  today.eggsLaid += eggs;
  // Laid at any time of the step: on average they grow for half of it.
  const late = -0.5 * strain.developmentRate(temperatureC) * dt;
  for (let i = 0; i < eggs; i += 1) world.young.push(newEgg(world, late));
}

function newEgg(world: World, clock: number): Young {
  const { strain, chance } = world;
  const quick: [number, number, number] = [chance.normal(), chance.normal(), chance.normal()];
  const until = stageLength(strain.stageShares.egg, strain.developmentCv, quick[0]);
  return { stage: Stage.egg, clock, since: 0, until, quick, met: 0, fate: -Math.log(1 - chance.uniform()) };
}

/** A gamma length of mean `share` on the clock (Wilson and Hilferty 1931), for a standard normal `z`. */
function stageLength(share: number, cv: number, z: number): number {
  const deviation = cv / (3 * Math.sqrt(share));
  const root = Math.max(0.05, 1 - deviation * deviation + z * deviation);
  return share * root * root * root;
}

/** Crowding met widens the spread between the strain's two CVs. */
function spread(strain: StrainLife, met: number): number {
  const { developmentCv: alone, crowdedCv: crowded } = strain;
  return Math.sqrt(alone ** 2 + (crowded ** 2 - alone ** 2) * (met / (1 + met)));
}

function growYoung(world: World, temperatureC: number, dt: number, crowding: number, today: FlyByFlyDay): void {
  const { strain } = world;
  const { crowding: room, stageShares } = strain;
  const progress = strain.developmentRate(temperatureC) * dt;
  const slowed = progress / (1 + room.delay * Math.log(1 + crowding));
  const survival = Math.max(1e-6, line(strain.viability, temperatureC));
  const heat = -Math.log(survival) * progress + line(strain.heatDeathPerDay, temperatureC) * dt;
  const larvalDeath = ((room.baseDeaths + room.crowdedDeaths * crowding) * slowed) / stageShares.larva;
  const size = Math.max(room.massFloor, 1 / Math.sqrt(1 + crowding / room.massHalf));
  for (const y of world.young) {
    const larva = y.stage === Stage.larva;
    y.fate -= heat + (larva ? larvalDeath : 0);
    if (y.fate <= 0) {
      y.stage = Stage.gone;
      continue;
    }
    const before = appetite(y);
    y.clock += larva ? slowed : progress;
    if (larva) {
      y.met += (crowding * slowed) / stageShares.larva;
      y.until = y.since + stageLength(stageShares.larva, spread(strain, y.met), y.quick[1]);
      // In its last step a larva eats only until it pupates.
      const part = Math.max(0, Math.min(slowed, slowed - (y.clock - y.until)));
      world.food -= ((before + appetite(y)) / 2) * (part / stageShares.larva) * size;
    }
    if (y.clock >= y.until) endStage(world, y, temperatureC, today);
  }
  world.young = world.young.filter((y) => y.stage !== Stage.gone);
  world.food = Math.max(0, world.food);
}

function endStage(world: World, y: Young, temperatureC: number, today: FlyByFlyDay): void {
  const { strain, chance } = world;
  y.since = y.until;
  if (y.stage === Stage.egg) {
    y.stage = Stage.larva;
    y.until = y.since + stageLength(strain.stageShares.larva, strain.developmentCv, y.quick[1]);
  } else if (y.stage === Stage.larva) {
    y.stage = Stage.pupa;
    y.until = y.since + stageLength(strain.stageShares.pupa, spread(strain, y.met), y.quick[2]);
  } else {
    y.stage = Stage.gone;
    const female = chance.uniform() >= strain.adult.maleShare;
    world.adults.push({ female, age: 0 });
    const ratio = Math.max(strain.crowding.massFloor, 1 / Math.sqrt(1 + y.met / strain.crowding.massHalf));
    const full = (female ? strain.massMg.female : strain.massMg.male) * line(strain.massByTemperature, temperatureC);
    today.emerged += 1;
    today.massSumMg += full * ratio;
  }
}

function ageAdults(world: World, aging: number): void {
  const { strain, chance } = world;
  const { gompertz, cupDeathPerDay } = strain.adult;
  const at = gompertz.temperatureC.indexOf(25);
  const [a, b] = [gompertz.a[at] as number, gompertz.b[at] as number];
  world.adults = world.adults.filter((fly) => {
    const hazard = (a * Math.exp(b * (fly.age + aging / 2)) + cupDeathPerDay) * aging;
    fly.age += aging;
    return chance.uniform() < Math.exp(-hazard);
  });
}

function takeFlies(world: World, share: number, today: FlyByFlyDay): void {
  const before = world.adults.length;
  world.adults = world.adults.filter(() => world.chance.uniform() >= share);
  today.harvested += before - world.adults.length;
}

/** Days at 25 C in a day at a temperature: the ratio of mean lives, joined on a log scale. */
function adultPace(world: World, temperatureC: number): number {
  const known = world.pace.get(temperatureC);
  if (known !== undefined) return known;
  const { gompertz } = world.strain.adult;
  const logLives = gompertz.temperatureC.map((_, i) =>
    Math.log(meanLife(gompertz.a[i] as number, gompertz.b[i] as number)),
  );
  const curve = { at: gompertz.temperatureC, value: logLives };
  const pace = Math.exp(line(curve, 25) - line(curve, temperatureC));
  world.pace.set(temperatureC, pace);
  return pace;
}

function meanLife(a: number, b: number): number {
  let alive = 1;
  let sum = 0;
  for (let x = 0; x < 400 && alive > 1e-9; x += 0.01) {
    sum += 0.01 * alive;
    alive *= Math.exp(-a * Math.exp(b * x) * 0.01);
  }
  return sum;
}

/** Straight lines between a curve's points, flat beyond. */
function line(curve: Curve, x: number): number {
  const above = curve.at.findIndex((at) => at >= x);
  if (above === 0) return curve.value[0] as number;
  if (above < 0) return curve.value.at(-1) as number;
  const [x0, x1] = [curve.at[above - 1] as number, curve.at[above] as number];
  const [y0, y1] = [curve.value[above - 1] as number, curve.value[above] as number];
  return y0 + ((x - x0) / (x1 - x0)) * (y1 - y0);
}
