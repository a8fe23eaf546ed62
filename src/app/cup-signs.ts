/** What was noted of a cup that may explain why it strays: its state, its founders, its warmth. */
import { expectedMeanC } from '../climate/index.ts';
import { dayNumber } from '../foundation/index.ts';
import type { CupSigns } from '../learning/index.ts';
import type { CultureFacts } from '../logbook/index.ts';
import { hourlyAlong, type HouseholdModel, placeTemperature, type StrainModel } from './household-model.ts';

/** Days with readings below which their mean says nothing of a cup's warmth. */
const leastMeasuredDays = 3;

/** @param lastDay the cup's last day up to today, as a day number. */
export function cupSigns(model: HouseholdModel, strain: StrainModel, culture: CultureFacts, lastDay: number): CupSigns {
  const seen = culture.seen.filter((s) => dayNumber(s.on) <= model.today);
  const start = dayNumber(culture.startedOn);
  return {
    moisture: seen.findLast((s) => s.moisture !== null)?.moisture ?? null,
    mould: seen.some((s) => s.mould),
    mites: seen.some((s) => s.mites),
    founderAgeDays: culture.founderAgeDays,
    usualFounders: model.facts.containers.find((c) => c.container === culture.container)?.founders ?? null,
    ...measuredWarmth(model, culture, start, lastDay),
    logPacePerC: logPacePerC(strain, meanC(model, culture, start, lastDay)),
  };
}

/** The cup's days at each place with a reading there, against what was expected of that day. */
function measuredWarmth(
  model: HouseholdModel,
  culture: CultureFacts,
  start: number,
  lastDay: number,
): Pick<CupSigns, 'warmerByC' | 'measuredShare'> {
  const differences = culture.places.flatMap((stay, i) => {
    const from = Math.max(start, dayNumber(stay.from));
    const next = culture.places[i + 1];
    const until = next ? dayNumber(next.from) - 1 : lastDay;
    const { expected, hemisphere, readings } = placeTemperature(model, stay.place);
    return readings
      .filter((r) => r.day >= from && r.day <= until)
      .map((r) => r.meanC - expectedMeanC(expected, hemisphere, r.day));
  });
  const measuredShare = Math.min(1, differences.length / Math.max(1, lastDay - start + 1));
  if (differences.length < leastMeasuredDays) return { warmerByC: null, measuredShare };
  return { warmerByC: differences.reduce((a, b) => a + b, 0) / differences.length, measuredShare };
}

/** Mean temperature that the curve took for the cup's days, C. */
function meanC(model: HouseholdModel, culture: CultureFacts, start: number, lastDay: number): number {
  const hours = hourlyAlong(model, culture.places).subarray(
    24 * (start - model.firstDay),
    24 * (Math.max(start, lastDay) + 1 - model.firstDay),
  );
  return hours.reduce((sum, c) => sum + c, 0) / Math.max(1, hours.length);
}

/** Change of log pace a degree about `meanC`; null where the strain does not develop. */
function logPacePerC(strain: StrainModel, meanC: number): number | null {
  const [cooler, warmer] = [strain.life.developmentRate(meanC - 0.5), strain.life.developmentRate(meanC + 0.5)];
  return cooler > 0 && warmer > 0 ? Math.log(warmer / cooler) : null;
}
