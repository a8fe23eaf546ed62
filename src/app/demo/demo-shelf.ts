/**
 * The cups of the demo's household: when each was started and from which, as a keeper with two free
 * evenings a week does it. What they truly give is the books' course at this household's own pace and
 * yield, so that the log has something to teach.
 */
import { addDays, type Day, randomStream, weekdayOf } from '../../foundation/index.ts';
import type { CultureFacts, EntryDraft } from '../../logbook/index.ts';
import { fold } from '../../logbook/index.ts';
import { type HouseholdModel, householdModel } from '../household-model.ts';
import { type NominalCup, nominalCup } from '../nominal-cup.ts';
import { demoKeys, demoWorkWeekdays } from './demo-household.ts';

/** Slower and more generous than the books. */
const truePace = 0.95;
const trueYield = 1.1;
const seed = 20;

export interface DemoCup {
  culture: string;
  strain: string;
  start: Day;
  /** Day after its last, with the reason. */
  end: Day;
  reason: 'spent' | 'mould';
  founderFrom: Day;
  founderUntil: Day;
  yieldFactor: number;
  nominal: NominalCup;
  fromCultures: string[];
  place: string;
}

/** Cups started from `first` to `last`, oldest first. */
export function demoCups(settings: EntryDraft[], first: Day, last: Day): DemoCup[] {
  const model = householdModel(fold(withEnvelopes(settings)), last, 0, first);
  const cups: DemoCup[] = [];
  let evening = 0;
  for (let d = first; d <= last; d = addDays(d, 1)) {
    if (!demoWorkWeekdays.includes(weekdayOf(d))) continue;
    for (const strain of startsOf(evening++)) cups.push(demoCup(model, cups, strain, d));
  }
  return cups;
}

/** A stub-winged and a hydei cup on the first evening of the week, another stub-winged every other week. */
function startsOf(evening: number): string[] {
  const { stub, hydei } = demoKeys;
  if (evening % 2 === 0) return [stub, hydei];
  return evening % 4 === 1 ? [stub] : [];
}

function demoCup(model: HouseholdModel, earlier: DemoCup[], strain: string, start: Day): DemoCup {
  const number = earlier.filter((c) => c.strain === strain).length + 1;
  const culture = `${strain === demoKeys.stub ? 'S' : 'H'}${String(number).padStart(2, '0')}`;
  const place = number % 4 === 0 ? demoKeys.landing : demoKeys.pantry;
  const strainModel = model.strains.get(strain);
  if (!strainModel) throw new RangeError(`demoCup: strain ${strain} is not in the settings`);
  const nominal = nominalCup(model, strainModel, asFacts(culture, strain, start, place));
  const stream = randomStream(seed, 'demo', culture);
  const at = (age: number) => addDays(start, Math.round(age / truePace));
  // One cup goes mouldy early; it is the kind of thing that a log is for.
  const mouldy = culture === 'S13';
  return {
    culture,
    strain,
    start,
    end: mouldy ? at(9) : addDays(start, Math.floor(nominal.dates.spent)),
    reason: mouldy ? 'mould' : 'spent',
    founderFrom: at(nominal.dates.founderFrom),
    founderUntil: at(nominal.dates.founderUntil),
    yieldFactor: trueYield * Math.exp(0.25 * stream.normal()),
    nominal,
    fromCultures: givers(earlier, strain, start),
    place,
  };
}

/** The youngest cup at its best gives the founders. */
function givers(cups: DemoCup[], strain: string, on: Day): string[] {
  const ready = cups.filter((c) => c.strain === strain && c.founderFrom <= on && on <= c.founderUntil && on < c.end);
  const best = ready.at(-1);
  return best ? [best.culture] : [];
}

/** Flies that emerge in the cup on a day of its age, in this household. */
export function trulyEmerged(cup: DemoCup, ageDays: number): number {
  const upTo = (age: number) => {
    const warped = age * truePace;
    const whole = Math.floor(warped);
    let sum = 0;
    for (let a = 0; a < whole; a++) sum += cup.nominal.course.emerged[a] ?? 0;
    return sum + (warped - whole) * (cup.nominal.course.emerged[whole] ?? 0);
  };
  return cup.yieldFactor * (upTo(ageDays + 1) - upTo(ageDays));
}

/** First age, days, at which a stage is there to be seen in this household. */
export function trulyFirst(cup: DemoCup, stage: 'larvae' | 'pupae' | 'adults'): number {
  const { firstLarvae, firstPupae, firstAdults } = cup.nominal.dates;
  return { larvae: firstLarvae, pupae: firstPupae, adults: firstAdults }[stage] / truePace;
}

function asFacts(culture: string, strain: string, start: Day, place: string): CultureFacts {
  return {
    culture,
    label: culture,
    strain,
    origin: 'started',
    on: start,
    startedOn: start,
    places: [{ from: start, place }],
    container: 'tall',
    mediumMassG: 150,
    surfaceCm2: 82,
    batch: null,
    founders: 50,
    founderAgeDays: null,
    fromCultures: [],
    quarantinedUntil: null,
    seen: [],
    harvests: [],
    ended: null,
    notes: [],
  };
}

/** Settings are folded only for their places and strains, so any distinct ids will do. */
function withEnvelopes(drafts: EntryDraft[]) {
  return drafts.map((draft, i) => ({
    ...draft,
    id: `00000000-0000-7000-8000-${String(i).padStart(12, '0')}`,
    recordedAt: `${draft.on}T20:00:00Z`,
    by: 'demo',
  })) as Parameters<typeof fold>[0];
}
