/** What warmth or a move does to one cup: its dates as they are and as they would be, by how much, how surely. */
import type { CultureDates } from '../../biology/index.ts';
import { meanTemperatureSdC } from '../../climate/index.ts';
import { bandOf, dayFromNumber, type DayNumber } from '../../foundation/index.ts';
import type { CupBelief } from '../../learning/index.ts';
import type { CultureFacts } from '../../logbook/index.ts';
import { type HouseholdModel, placeTemperature, type StrainModel } from '../household-model.ts';
import { nominalCup } from '../nominal-cup.ts';
import type { CupHistory } from '../cup-history.ts';
import type { StandingCup } from './temperature.ts';
import type { TemperatureWhatIfAnswer } from './temperature-answers.ts';
import { logPaceByDegree } from './weather-draws.ts';

type ChangedCup = TemperatureWhatIfAnswer['cultures'][number];
type Dated = ChangedCup['next'];

const band90 = 1.6449;

/** @param now the household as it is; @param then the same, with the cup's place changed from today on. */
export function changedCup(now: HouseholdModel, then: HouseholdModel, standing: StandingCup): ChangedCup {
  const { cup, belief } = standing;
  const changed = then.facts.cultures.find((c) => c.culture === cup.culture.culture) as CultureFacts;
  const { dates } = cup.nominal;
  const strain = then.strains.get(cup.culture.strain) as StrainModel;
  const would = nominalCup(then, strain, changed).dates;
  const ageOf = ageIn(belief);
  const both = (what: Dated) => ({
    asIs: dayFromNumber(cup.start + Math.round(ageOf(dates, what))),
    changed: dayFromNumber(cup.start + Math.round(ageOf(would, what))),
  });
  const { next, laterDays } = nextShift(cup, belief, would, now.today);
  const quick = paceOfBelief(belief);
  return {
    id: cup.culture.culture,
    label: cup.culture.label,
    firstAdults: both('firstAdults'),
    peak: both('peak'),
    spent: both('spent'),
    firstAdultsLaterDays: tenth((would.firstAdults - dates.firstAdults) / quick),
    next,
    nextLaterDays: laterBand(now, then, standing, changed, laterDays, ageOf(dates, next)),
  };
}

/** The cup's next event, and how many days later than now expected it comes with other dates of the books. */
export function nextShift(
  cup: CupHistory,
  belief: CupBelief,
  would: CultureDates,
  today: DayNumber,
): { next: Dated; laterDays: number; on: DayNumber } {
  const { dates } = cup.nominal;
  const ageOf = ageIn(belief);
  const next = nextOf(cup, today - cup.start, (what) => ageOf(dates, what));
  const scale = next === 'spent' ? 1 : paceOfBelief(belief);
  return { next, laterDays: (would[next] - dates[next]) / scale, on: cup.start + Math.round(ageOf(would, next)) };
}

/** A cup is thrown out by the books' date, as in the day's own answer; the rest goes at its believed pace. */
function ageIn(belief: CupBelief): (dates: CultureDates, what: Dated) => number {
  const quick = paceOfBelief(belief);
  return (dates, what) => (what === 'spent' ? Math.floor(dates.spent) : dates[what] / quick);
}

function paceOfBelief(belief: CupBelief): number {
  return Math.exp(bandOf(belief.draws.logPace).p50);
}

function nextOf({ culture }: CupHistory, ageDays: number, ageOf: (what: Dated) => number): Dated {
  const haveCome = culture.harvests.length > 0 || culture.seen.some((s) => s.present.includes('adults'));
  if (!haveCome && ageOf('firstAdults') > ageDays) return 'firstAdults';
  return ageOf('peak') > ageDays ? 'peak' : 'spent';
}

/**
 * Unsure are the cup's own pace, and how warm the two places will be until then: by both a whole shift is
 * scaled, or moved. A place against itself, warmer, shares its weather, which falls out.
 */
function laterBand(
  now: HouseholdModel,
  then: HouseholdModel,
  { strain, cup, belief }: StandingCup,
  changed: CultureFacts,
  laterDays: number,
  age: number,
): ChangedCup['nextLaterDays'] {
  const paces = bandOf(belief.draws.logPace);
  const ofPace = (Math.abs(laterDays) * (paces.p95 - paces.p05)) / 2;
  const from = cup.culture.places.at(-1)?.place ?? '';
  const to = changed.places.at(-1)?.place ?? '';
  const left = Math.max(1, Math.round(age - (now.today - cup.start)));
  const carried = from !== to && now.places.has(to);
  const sdC = carried ? Math.hypot(outlookSdC(now, from, left), outlookSdC(then, to, left)) : 0;
  const ofPlaces = band90 * left * logPaceByDegree(now, strain, from, left) * sdC;
  const half = laterDays === 0 && !carried ? 0 : Math.hypot(ofPace, ofPlaces);
  return { p05: tenth(laterDays - half), p50: tenth(laterDays), p95: tenth(laterDays + half) };
}

function outlookSdC(model: HouseholdModel, place: string, days: number): number {
  return meanTemperatureSdC(placeTemperature(model, place), model.today + 1, days);
}

function tenth(value: number): number {
  // Never -0, which is shown as such.
  return Math.round(10 * value) / 10 + 0;
}
