/**
 * Days of the Gregorian calendar as whole numbers and back. Years are counted from 1 March, so that the
 * leap day comes last, in eras of 400 years, each 146,097 days (ISO 8601 calls the calendar proleptic
 * Gregorian). Small, because every page and worker carries it.
 */

const daysPerEra = 146_097;
/** From 1 March of the year 0 to 1970-01-01. */
const epochShift = 719_468;

/** Days from 1970-01-01 to `YYYY-MM-DD`; a day past the end of its month runs on into the next. */
export function dayCount(text: string): number {
  const [month, dayOfMonth] = [Number(text.slice(5, 7)), Number(text.slice(8, 10))];
  const year = Number(text.slice(0, 4)) - (month <= 2 ? 1 : 0);
  const era = Math.floor(year / 400);
  const yearOfEra = year - era * 400;
  const dayOfYear = Math.floor((153 * ((month + 9) % 12) + 2) / 5) + dayOfMonth - 1;
  const dayOfEra = yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return era * daysPerEra + dayOfEra - epochShift;
}

/** The inverse, for days of the years 0 to 9999. */
export function dayText(count: number): string {
  const shifted = count + epochShift;
  const era = Math.floor(shifted / daysPerEra);
  const dayOfEra = shifted - era * daysPerEra;
  const leapDays = Math.floor(dayOfEra / 1460) - Math.floor(dayOfEra / 36_524) + Math.floor(dayOfEra / 146_096);
  const yearOfEra = Math.floor((dayOfEra - leapDays) / 365);
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const monthFromMarch = Math.floor((5 * dayOfYear + 2) / 153);
  const dayOfMonth = dayOfYear - Math.floor((153 * monthFromMarch + 2) / 5) + 1;
  const month = monthFromMarch < 10 ? monthFromMarch + 3 : monthFromMarch - 9;
  const year = yearOfEra + era * 400 + (month <= 2 ? 1 : 0);
  return `${padded(year, 4)}-${padded(month, 2)}-${padded(dayOfMonth, 2)}`;
}

function padded(n: number, digits: number): string {
  return String(n).padStart(digits, '0');
}
