/** A cup that strays, in a sentence: what was seen, what it does to the supply, why it may be, what to check. */
import { type Said, said, saidTogether } from '../foundation/index.ts';
import type { OffCourse } from '../learning/index.ts';

/** Causes that a sentence names; the rest stands in the answer. */
const namedCauses = 3;

export function offCourseSaid(off: OffCourse): Said {
  const causes = off.causes.slice(0, namedCauses).map(({ cause }) => cause);
  const [first] = off.causes;
  return saidTogether(
    said`Off course: ${off.what}.`,
    ...effectSaid(off),
    ...(first ? [said`Likely ${{ list: causes }}.`, first.check] : []),
  );
}

/** Days late, warmth that would explain it, flies lost; only what is worth saying. */
export function effectSaid({ daysLate, direction, suppliedFlies, asIfWarmerByC }: OffCourse): Said[] {
  const out: Said[] = [];
  const timed = direction === 'late' || direction === 'early';
  if (timed && daysLate.p50 >= 0.5) {
    out.push(said`Its flies come about ${daysLate.p50} days late (${daysLate.p05} to ${daysLate.p95}).`);
  }
  if (timed && daysLate.p50 <= -0.5) out.push(said`Its flies come about ${-daysLate.p50} days early.`);
  if (timed && asIfWarmerByC !== null && asIfWarmerByC <= -0.5) {
    out.push(said`It runs as a cup ${{ degreesApartC: -asIfWarmerByC }} cooler would.`);
  }
  if (timed && asIfWarmerByC !== null && asIfWarmerByC >= 0.5) {
    out.push(said`It runs as a cup ${{ degreesApartC: asIfWarmerByC }} warmer would.`);
  }
  const { p05, p50, p95 } = suppliedFlies;
  if (p50 <= -5) {
    const range = p95 > 0 ? said`from ${p95} more to ${-p05} fewer` : said`${-p95} to ${-p05}`;
    out.push(said`It gives about ${-p50} flies fewer in the coming fortnight (${range}).`);
  }
  if (p50 >= 5) out.push(said`It gives about ${p50} flies more in the coming fortnight.`);
  return out;
}

/** A straying cup as the doors show it, with its sentences in no language yet. */
export function offCourseFigures(off: OffCourse) {
  const { note: _, ...figures } = off;
  return { ...figures, effects: effectSaid(off) };
}
