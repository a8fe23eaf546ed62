/**
 * What moisture, the room's humidity and live yeast do to a culture, day by day. No published figures
 * for cups exist; the sizes are common practice put into numbers and say so in docs/models/moisture.md.
 */
import type { CultureConditions } from '../culture.ts';

/** Factors on adult deaths, laying and larval speed, and larval deaths per day, by day of age. */
export interface DailyCare {
  adultDeaths: Float64Array;
  laying: Float64Array;
  larvalSpeed: Float64Array;
  larvalDeaths: Float64Array;
}

/** Effects of a spell, for as long as it lasts; a rescued cup goes on as before, less the dead. */
export const wetMedium = { adultDeaths: 4, laying: 0.6, larvalSpeed: 0.9, larvalDeaths: 0.08 };
export const dryMedium = { adultDeaths: 1.5, laying: 0.3, larvalSpeed: 0.4, larvalDeaths: 0.12 };
/** Laying without live yeast, and an excess that slimes the surface in its first days. */
export const withoutYeastLaying = 0.5;
export const excessYeast = { days: 8, adultDeaths: 2, larvalDeaths: 0.05 };
/** Below this relative humidity the surface dries between lookings; per cent. */
export const dryAirPercent = 40;
export const dampAirPercent = 85;

const ordinary = new Map<number, DailyCare>();

/** The factors for each day of age of a culture under `conditions`. */
export function dailyCare(conditions: CultureConditions, days: number): DailyCare {
  const yeast = conditions.liveYeast ?? 'good';
  const humidity = conditions.humidityPercent;
  if (yeast === 'good' && humidity === undefined && !conditions.moistureSpells?.length) return ordinaryCare(days);
  const care = emptyCare(days);
  if (yeast === 'none') care.laying.fill(withoutYeastLaying);
  if (yeast === 'excess') applyYeast(care, days);
  if (humidity !== undefined) applyHumidity(care, humidity);
  for (const spell of conditions.moistureSpells ?? []) {
    applySpell(care, spell.fromAgeDays, spell.untilAgeDays, spell.state === 'wet' ? wetMedium : dryMedium);
  }
  return care;
}

function ordinaryCare(days: number): DailyCare {
  const known = ordinary.get(days);
  if (known) return known;
  if (ordinary.size > 32) ordinary.clear();
  const made = emptyCare(days);
  ordinary.set(days, made);
  return made;
}

function emptyCare(days: number): DailyCare {
  return {
    adultDeaths: new Float64Array(days).fill(1),
    laying: new Float64Array(days).fill(1),
    larvalSpeed: new Float64Array(days).fill(1),
    larvalDeaths: new Float64Array(days),
  };
}

function applyYeast(care: DailyCare, days: number): void {
  for (let day = 0; day < Math.min(days, excessYeast.days); day += 1) {
    care.adultDeaths[day] = (care.adultDeaths[day] as number) * excessYeast.adultDeaths;
    care.larvalDeaths[day] = (care.larvalDeaths[day] as number) + excessYeast.larvalDeaths;
  }
}

/** Dry air takes up to half of a dry spell's effect, at 20 % and below; damp air a fifth of a wet one's. */
function applyHumidity(care: DailyCare, percent: number): void {
  const dry = Math.max(0, Math.min(1, (dryAirPercent - percent) / 20)) * 0.5;
  const damp = Math.max(0, Math.min(1, (percent - dampAirPercent) / 15)) * 0.2;
  blend(care, 0, care.laying.length - 1, dryMedium, dry);
  blend(care, 0, care.laying.length - 1, wetMedium, damp);
}

type Spell = { adultDeaths: number; laying: number; larvalSpeed: number; larvalDeaths: number };

function applySpell(care: DailyCare, from: number, until: number, effect: Spell): void {
  blend(care, from, until, effect, 1);
}

function blend(care: DailyCare, from: number, until: number, effect: Spell, share: number): void {
  if (share <= 0) return;
  const last = Math.min(care.laying.length - 1, Math.floor(until));
  for (let day = Math.max(0, Math.floor(from)); day <= last; day += 1) {
    care.adultDeaths[day] = (care.adultDeaths[day] as number) * (1 + share * (effect.adultDeaths - 1));
    care.laying[day] = (care.laying[day] as number) * (1 + share * (effect.laying - 1));
    care.larvalSpeed[day] = (care.larvalSpeed[day] as number) * (1 + share * (effect.larvalSpeed - 1));
    care.larvalDeaths[day] = (care.larvalDeaths[day] as number) + share * effect.larvalDeaths;
  }
}
