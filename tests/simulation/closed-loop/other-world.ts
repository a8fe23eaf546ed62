/**
 * A world to try the whole tool in: cups of flies by other equations and other numbers than those of
 * src/biology and data/. It shares no code with them, only the calendar. Development is the linear
 * degree-day law (T0 9.8 C, K 144: medians of 41 published fits, Jarosik et al. 2011, J. Econ. Entomol.
 * 104) for melanogaster, a slower one for hydei; the rest is chosen to be plausible and different: value from memory.
 */

/** Small deterministic generator (mulberry32, T. Ettinger, public domain). */
export function generator(seed: number): () => number {
  let a = seed >>> 0;
  return () => {
    a = (a + 0x6d2b79f5) >>> 0;
    let t = Math.imul(a ^ (a >>> 15), 1 | a);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** A standard normal draw (Box and Muller 1958). */
export function gauss(random: () => number): number {
  return Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}

/** A kind of fly in this world: ages in days of a cup on an ordinary shelf. */
export interface OtherFly {
  strain: 'melanogaster' | 'hydei';
  degreeDaysToAdult: number;
  eggsPerFemale: number;
  /** Young in a cup at which half of the new ones die. */
  crowdHalf: number;
  fliesPerCup: number;
  lossPerDay: number;
  /** Cups that give founders. */
  bestFrom: number;
  bestUntil: number;
  throwOutDays: number;
  boughtYoungDays: number;
  boughtProducingDays: number;
  /** The household has kept them for so long before the count begins. */
  runUpDays: number;
}

const flies: Record<OtherFly['strain'], OtherFly> = {
  melanogaster: {
    strain: 'melanogaster',
    degreeDaysToAdult: 144,
    eggsPerFemale: 14,
    crowdHalf: 260,
    fliesPerCup: 750,
    lossPerDay: 0.06,
    bestFrom: 13,
    bestUntil: 26,
    throwOutDays: 30,
    boughtYoungDays: 4,
    boughtProducingDays: 12,
    runUpDays: 42,
  },
  hydei: {
    strain: 'hydei',
    degreeDaysToAdult: 230,
    eggsPerFemale: 10,
    crowdHalf: 220,
    fliesPerCup: 500,
    lossPerDay: 0.045,
    bestFrom: 21,
    bestUntil: 38,
    throwOutDays: 47,
    boughtYoungDays: 6,
    boughtProducingDays: 20,
    runUpDays: 70,
  },
};

export interface OtherHousehold {
  seed: number;
  fly: OtherFly;
  /** Against this world's own mean. */
  yieldFactor: number;
  paceFactor: number;
  cupSd: number;
  failureChance: number;
  countSd: number;
  meanC: number;
  /** Seasonal swing of the room, C. */
  swingC: number;
  fliesADay: number;
  workWeekdays: number[];
  weeks: number;
}

interface Brood {
  day: number;
  /** Young that will live to emerge. */
  young: number;
  emerged: number;
  degreeDays: number;
}

export interface OtherCup {
  id: string;
  fly: OtherFly;
  start: number;
  founders: number;
  /** Flies in the cup, founders left out. */
  flies: number;
  parents: number;
  broods: Brood[];
  medium: number;
  luck: number;
  pace: number;
  diesOn: number | null;
  bought: boolean;
  /** Day on which it was spent; its last flies are then held out and fed for some days. */
  spentOn: number | null;
  thrownOut: boolean;
}

const thresholdC = 9.8;
/** Spread of a brood, as a share of its degree-days. */
const broodSpread = 0.085;
/** Last flies of a spent cup live in a holding cup for so long: common practice, no source. */
const heldOutDays = 7;

export function roomC(household: OtherHousehold, day: number, random: () => number): number {
  return household.meanC + household.swingC * Math.sin((2 * Math.PI * day) / 365) + 0.6 * gauss(random);
}

export function newCup(
  household: OtherHousehold,
  id: string,
  start: number,
  founders: number,
  random: () => number,
): OtherCup {
  const fails = random() < household.failureChance;
  return {
    id,
    fly: household.fly,
    start,
    founders,
    flies: 0,
    parents: founders,
    broods: [],
    medium: 1,
    luck: household.yieldFactor * Math.exp(household.cupSd * gauss(random)),
    pace: household.paceFactor * Math.exp(0.04 * gauss(random)),
    diesOn: fails ? start + 5 + Math.floor(20 * random()) : null,
    bought: false,
    spentOn: null,
    thrownOut: false,
  };
}

/** One day of a cup at `temperatureC`. */
export function liveADay(cup: OtherCup, day: number, temperatureC: number): void {
  if (cup.thrownOut || day < cup.start) return;
  const { degreeDaysToAdult, eggsPerFemale, crowdHalf, fliesPerCup, lossPerDay } = cup.fly;
  if (cup.spentOn !== null) {
    cup.flies *= 1 - lossPerDay;
    cup.thrownOut = day >= cup.spentOn + heldOutDays;
    return;
  }
  if (cup.diesOn !== null && day >= cup.diesOn) {
    cup.flies *= 0.7;
    return;
  }
  const warmth = Math.max(0, temperatureC - thresholdC) * cup.pace;
  let hatching = 0;
  let crowd = 0;
  for (const brood of cup.broods) {
    brood.degreeDays += warmth;
    const due = normalShare((brood.degreeDays / degreeDaysToAdult - 1) / broodSpread);
    const now = brood.young * due - brood.emerged;
    brood.emerged += now;
    hatching += now;
    crowd += brood.young - brood.emerged;
  }
  cup.medium = Math.max(0, cup.medium - hatching / (fliesPerCup * cup.luck));
  cup.flies = cup.flies * (1 - lossPerDay) + hatching;
  cup.parents *= 0.92;
  const layers = 0.5 * (cup.parents + 0.35 * cup.flies);
  const warm = Math.min(1, Math.max(0, (temperatureC - 14) / 10));
  const eggs = layers * eggsPerFemale * warm * Math.min(1, 2 * cup.medium);
  const surviving = (0.75 * eggs) / (1 + crowd / (crowdHalf * cup.luck));
  if (surviving > 0.01) cup.broods.push({ day, young: surviving, emerged: 0, degreeDays: 0 });
}

/** What a look through the side of the cup shows. */
export function visibleStages(cup: OtherCup): { larvae: boolean; pupae: boolean; adults: boolean } {
  const done = Math.max(0, ...cup.broods.map((b) => b.degreeDays / cup.fly.degreeDaysToAdult));
  const emerged = cup.broods.reduce((sum, b) => sum + b.emerged, 0);
  return { larvae: done > 0.2, pupae: done > 0.56, adults: emerged >= 3 };
}

/** Normal distribution function, by the logistic approximation of Bowling et al. 2009. */
function normalShare(z: number): number {
  return 1 / (1 + Math.exp(-(0.07056 * z ** 3 + 1.5976 * z)));
}

/** Feeds `wanted` flies from the oldest cups; returns what was given. */
export function feedFrom(cups: OtherCup[], wanted: number, taken?: (cup: OtherCup, flies: number) => void): number {
  let missing = wanted;
  for (const cup of cups) {
    if (cup.thrownOut || missing <= 0) continue;
    const flies = Math.min(missing, cup.flies);
    if (flies < 0.5) continue;
    cup.flies -= flies;
    missing -= flies;
    taken?.(cup, flies);
  }
  return wanted - missing;
}

/**
 * Households of this world by seed: small to middling, one strain each, every third of them hydei; rooms from
 * 20.5 to 25.5 C on the year's mean. The strain and the room have draws of their own.
 */
export function otherHousehold(seed: number, weeks: number): OtherHousehold {
  const random = generator(seed * 7919 + 13);
  const room = generator(seed * 104_729 + 7);
  const pick = <T>(values: T[]) => values[Math.floor(random() * values.length)] as T;
  return {
    seed,
    fly: flies[seed % 3 === 0 ? 'hydei' : 'melanogaster'],
    yieldFactor: Math.exp(0.22 * gauss(random)),
    paceFactor: Math.exp(0.06 * gauss(random)),
    cupSd: 0.25 + 0.1 * random(),
    failureChance: 0.04 + 0.1 * random(),
    countSd: 0.2 + 0.2 * random(),
    meanC: 20.5 + 5 * room(),
    swingC: 2.5 * room(),
    fliesADay: Math.round(100 + 350 * random()),
    workWeekdays: pick([
      [0, 3],
      [2, 5],
      [1, 5, 6],
      [0, 2, 5],
    ]),
    weeks,
  };
}
