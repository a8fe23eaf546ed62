/**
 * One culture from founders to its end: what goes in and what comes out, in plain terms. The engine
 * that joins them is in life/; yield/ reads dates and numbers off the course.
 */
import type { Curve } from './curve.ts';

/** How one strain lives: everything the engine needs. Values come from data/ through reference/. */
export interface StrainLife {
  /** Key such as `melanogaster` or `hydei`. */
  key: string;
  name: string;
  species: string;
  /** Rate of development, egg to adult, per day at `temperatureC`; see rates/. */
  developmentRate: (temperatureC: number) => number;
  /** Temperatures below and above which development stands still, C. */
  developmentLimitsC: { lower: number; upper: number };
  /** Shares of the egg-to-adult time, summing to 1. */
  stageShares: { egg: number; larva: number; pupa: number };
  /** Coefficient of variation of an individual's egg-to-adult time, uncrowded. */
  developmentCv: number;
  /** The same in a badly crowded cup. */
  crowdedCv: number;
  /** A male's egg-to-adult time over a female's, by temperature. */
  maleTimeRatio: Curve;
  /** Share of uncrowded eggs that reach adulthood at a constant temperature, by temperature. */
  viability: Curve;
  /** Further deaths per day of immature stages by temperature: heat that kills outright. */
  heatDeathPerDay: Curve;
  laying: LayingLife;
  adult: AdultLife;
  crowding: CrowdingLife;
  medium: MediumLife;
  /** Fresh mass of an uncrowded fly reared at 25 C, mg. */
  massMg: { female: number; male: number };
  /** Mass against 25 C by rearing temperature. */
  massByTemperature: Curve;
  founders: FounderLife;
  mites: MiteLife;
}

/** Eggs per female and day = share x peak x byTemperature x rise and decline with age. */
export interface LayingLife {
  /** Plateau on the best food and at 25 C, eggs per female and day. */
  peakEggsPerDay: number;
  /** Age of the first eggs, days at 25 C. */
  firstEggsDays: number;
  /** Age at which laying has fallen to half, and the logistic width of that fall, days at 25 C. */
  halfAgeDays: number;
  declineWidthDays: number;
  /** Share of the plateau that is realised in an ordinary cup. */
  cupShare: number;
  byTemperature: Curve;
  /** Share of males that are fertile when kept at that temperature. */
  maleFertility: Curve;
  /** Adults per cm2 of surface at which laying is halved. */
  halfAdultsPerCm2: number;
}

export interface AdultLife {
  /** Gompertz hazard a exp(b x) per day, x in days, at each of `temperatureC`. */
  gompertz: { temperatureC: number[]; a: number[]; b: number[] };
  /** Further deaths per day at 25 C in an ordinary, crowded cup: drowning, sticking, hunger. */
  cupDeathPerDay: number;
  /** Share of emerging flies that are male. */
  maleShare: number;
}

export interface CrowdingLife {
  /** Grown larvae that 1 cm2 of deep medium feeds at once before crowding counts. */
  larvaePerCm2: number;
  /** Depth of medium that larvae work in, cm. */
  feedingDepthCm: number;
  /** Larval deaths per stage, uncrowded, and added for each multiple of the capacity. */
  baseDeaths: number;
  crowdedDeaths: number;
  /** Slowing: time x (1 + delay ln(1 + crowding)). */
  delay: number;
  /** Size: mass x (1 + crowding / massHalf) ^ -1/2, not below massFloor. */
  massHalf: number;
  massFloor: number;
}

export interface MediumLife {
  /** Full-sized flies that 1 g of fresh medium can feed up. */
  fliesPerG: number;
  /** Days at which an old medium feeds 1/e of what it did, by temperature: dried and fouled. */
  lifeDays: Curve;
}

export interface FounderLife {
  /** Days (0 to 2) after the move into a new cup before founders lay, shock and medium getting ready. */
  settlingDays: number;
  /** Days from emergence until a fly (the later sex) is a good founder, at 25 C. */
  readyDays: number;
  /** Days after that during which a cup is a good source of founders, by temperature. */
  windowDays: Curve;
  /** Age at which a cup is thrown out whatever it still gives, days by temperature. */
  throwOutDays: Curve;
}

export interface MiteLife {
  /** Growth per day of a mite population by temperature, in moist medium. */
  growthPerDay: Curve;
  /** Growth, as a natural logarithm, from the first mites to a cup that must go. */
  logGrowthToTrouble: number;
}

/** What a culture is given at the start. */
export interface CultureConditions {
  founders: number;
  /** Mean age of the founders in days since they emerged. */
  founderAgeDays: number;
  mediumMassG: number;
  surfaceCm2: number;
  /** Live yeast on the medium: 'good' when not given. */
  liveYeast?: 'none' | 'good' | 'excess';
  /** Relative humidity of the room, per cent, when it is measured. */
  humidityPercent?: number;
  /** Days of age on which the medium was too wet or too dry, both included. */
  moistureSpells?: MoistureSpell[];
}

export interface MoistureSpell {
  fromAgeDays: number;
  untilAgeDays: number;
  state: 'wet' | 'dry';
}

/** When flies are taken out: every `everyDays` days from the first emergence on, that share of them. */
export interface HarvestRule {
  everyDays: number;
  share: number;
  /** First day of age on which flies are taken; null = two days after the first emerge. */
  fromAgeDays: number | null;
}

/** The course of one culture by whole days of age; index 0 is the starting day. */
export interface CultureCourse {
  days: number;
  eggsLaid: Float64Array;
  /** Eggs, larvae and pupae alive at the day's end. */
  eggs: Float64Array;
  larvae: Float64Array;
  pupae: Float64Array;
  /** Adults in the cup at the end of the day, founders included. */
  adults: Float64Array;
  foundersAlive: Float64Array;
  emerged: Float64Array;
  harvested: Float64Array;
  /** Medium left, share of what it began with. */
  mediumLeft: Float64Array;
  /** Mean fresh mass of the flies that emerged that day, mg; NaN on a day without any. */
  emergedMassMg: Float64Array;
}

/** Ages in days (fractional) read off a course. */
export interface CultureDates {
  firstLarvae: number;
  firstPupae: number;
  firstAdults: number;
  peak: number;
  founderFrom: number;
  founderUntil: number;
  spent: number;
}
