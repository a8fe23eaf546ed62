/** A living cup as it stands today: its stage, what comes next and when, and what it holds. */
import { type Band, bandOf, dayFromNumber, quantileSorted, type Said, said } from '../foundation/index.ts';
import type { Beliefs, CupBelief } from '../learning/index.ts';
import type { CultureFacts } from '../logbook/index.ts';
import type { CultureToday } from './answers.ts';
import { offCourseFigures, offCourseSaid } from './off-course-said.ts';
import type { CupHistory } from './cup-history.ts';

/** A cup whose warnings are not in any language yet. */
export type SaidCulture = Omit<CultureToday, 'warnings' | 'offCourse'> & {
  warnings: Said[];
  offCourse: ReturnType<typeof offCourseFigures> | null;
};

const eventAges = [
  ['larvae', 'firstLarvae'],
  ['pupae', 'firstPupae'],
  ['first flies', 'firstAdults'],
  ['founders ready', 'founderFrom'],
  ['most flies', 'peak'],
  ['last founders', 'founderUntil'],
] as const;

export function cultureToday(cup: CupHistory, beliefs: Beliefs, today: number): SaidCulture {
  const belief = beliefs.cups.get(cup.culture.culture) as CupBelief;
  const ageDays = today - cup.start;
  return {
    id: cup.culture.culture,
    label: cup.culture.label,
    strain: cup.culture.strain,
    place: cup.culture.places.at(-1)?.place ?? null,
    ageDays,
    stage: stageOf(cup, belief, ageDays),
    nextEvents: nextEvents(cup, belief, today),
    onHandFlies: roundedBand(bandOf(belief.draws.fliesNow)),
    spentOn: dayFromNumber(cup.start + Math.floor(cup.nominal.dates.spent)),
    warnings: warnings(cup, belief, today),
    offCourse: belief.offCourse && offCourseFigures(belief.offCourse),
  };
}

export function roundedBand(band: Band): Band {
  return { p05: Math.round(band.p05), p50: Math.round(band.p50), p95: Math.round(band.p95) };
}

/** Age at the middle of this cup's believed pace, in the books' days. */
function bookAge(belief: CupBelief, ageDays: number): number {
  return ageDays * Math.exp(bandOf(belief.draws.logPace).p50);
}

function stageOf(cup: CupHistory, belief: CupBelief, ageDays: number): CultureToday['stage'] {
  const { dates } = cup.nominal;
  const age = bookAge(belief, ageDays);
  const adultsSeen = cup.culture.seen.some((s) => s.present.includes('adults')) || cup.culture.harvests.length > 0;
  if (ageDays >= Math.floor(dates.spent)) return 'spent';
  if (age < dates.firstAdults && !adultsSeen) {
    return age < dates.firstLarvae ? 'eggs' : age < dates.firstPupae ? 'larvae' : 'pupae';
  }
  if (age < Math.min(dates.founderFrom, dates.peak)) return 'emerging';
  return age <= dates.founderUntil && shareOut(cup, age) < mostlyOut ? 'peak' : 'declining';
}

/** A cup with no more than the rest to come is not at its best, though it may still give founders. */
const mostlyOut = 0.9;

/** Share of its flies that the books have out at an age. */
function shareOut({ nominal: { course, dates } }: CupHistory, age: number): number {
  const upTo = (day: number) => course.emerged.slice(0, Math.ceil(day)).reduce((sum, flies) => sum + flies, 0);
  return upTo(age) / Math.max(1e-9, upTo(dates.spent));
}

/**
 * Events still ahead, with the spread that the cup's pace gives them. The day on which the cup is thrown out is kept
 * whatever its pace, so what would come later does not come at all.
 */
function nextEvents(cup: CupHistory, belief: CupBelief, today: number): CultureToday['nextEvents'] {
  const paces = Float64Array.from(belief.draws.logPace).sort();
  const spentDay = cup.start + Math.floor(cup.nominal.dates.spent);
  const events = eventAges.flatMap(([event, key]) => {
    const dayAt = (p: number) => cup.start + Math.round(cup.nominal.dates[key] / Math.exp(quantileSorted(paces, p)));
    const middle = dayAt(0.5);
    if (middle < today || middle >= spentDay || alreadySeen(cup, event)) return [];
    const within = (day: number) => dayFromNumber(Math.min(spentDay, Math.max(today, day)));
    return [{ event, p05: within(dayAt(0.95)), p50: within(middle), p95: within(dayAt(0.05)) }];
  });
  const spent = dayFromNumber(spentDay);
  return [...events, { event: 'throw out', p05: spent, p50: spent, p95: spent }];
}

function alreadySeen(cup: CupHistory, event: string): boolean {
  const stage = ({ larvae: 'larvae', pupae: 'pupae', 'first flies': 'adults' } as const)[event];
  return stage !== undefined && cup.culture.seen.some((s) => s.present.includes(stage));
}

function warnings(cup: CupHistory, belief: CupBelief, today: number): Said[] {
  const { quarantinedUntil } = cup.culture;
  const found = troublesSeen(cup.culture);
  if (quarantinedUntil !== null && quarantinedUntil > dayFromNumber(today)) {
    found.push(said`In quarantine until ${{ day: quarantinedUntil }}: feed from it, start no cup from it.`);
  }
  if (belief.offCourse) found.push(offCourseSaid(belief.offCourse));
  return found;
}

/** What was seen of a cup that asks for something, the latest kind last. */
export function troublesSeen({ seen }: CultureFacts): Said[] {
  const found: Said[] = [];
  if (seen.some((s) => s.mites)) found.push(said`Mites were seen: keep it apart and do not start cups from it.`);
  if (seen.some((s) => s.mould)) found.push(said`Mould was seen: do not open it indoors or feed from it.`);
  if (seen.some((s) => (s.winged ?? 0) > 0)) found.push(said`Winged flies were seen: do not start cups from it.`);
  const moisture = seen.findLast((s) => s.moisture !== null)?.moisture;
  if (moisture === 'wet') found.push(said`Too wet when last looked at: add dry climbing material.`);
  if (moisture === 'dry') found.push(said`Too dry when last looked at: drip a little water on the medium.`);
  return found;
}

const eventsSaid: Record<string, Said> = {
  larvae: said`larvae`,
  pupae: said`pupae`,
  'first flies': said`first flies`,
};

/** An event that is worth a look, to stand in a sentence. */
export function saidEvent(event: string): Said {
  return eventsSaid[event] ?? { said: '{0}', values: [event] };
}
