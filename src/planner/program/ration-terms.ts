/**
 * Rations in the foresight model. Of a class that can wait w days, `b` flies are owed on the evening of a
 * day, at most what the last w days brought; `u` flies are missed for good. A class that can't wait has
 * no `b`. First in, first out: what is missed on day t belongs to the ration of day t - w.
 */
import { type PreparedStrain, rationIn } from '../forecast/prepared-household.ts';
import { tolerance } from '../plan/short-days.ts';

/** One class: its patience and its rations by day, less what may be missed without being called short. */
export interface RationClass {
  name: number;
  waitDays: number;
  need: Float64Array;
}

export function rationsOf(prepared: PreparedStrain, world: number, needFactor: number, days: number): RationClass[] {
  return prepared.classes.map((one, name) => ({
    name,
    waitDays: one.waitDays,
    need: Float64Array.from({ length: days }, (_, t) => Math.max(0, rationIn(one, world, needFactor, t) - tolerance)),
  }));
}

/** The terms of what is fed on day `t`: the need of the day, less what is missed, less the change of what is owed. */
export function rationTerms(rations: RationClass[], t: number): { taken: string; need: number } {
  const terms = rations.flatMap(({ name, waitDays }) => {
    const missed = `- u_${name}_${t}`;
    if (waitDays === 0) return [missed];
    const owedBefore = t > 0 ? ` + b_${name}_${t - 1}` : '';
    return [`${missed} - b_${name}_${t}${owedBefore}`];
  });
  return { taken: terms.join(' '), need: rations.reduce((sum, { need }) => sum + (need[t] as number), 0) };
}

/**
 * A short day costs at least the share that is missed of all rations that close on it, which is at most 1:
 * so the sum never exceeds the number of short days.
 */
export function rationPrices(rations: RationClass[], days: number, judgedFrom: number, price: number): string[] {
  return Array.from({ length: days }, (_, t) => t).flatMap((t) => {
    const closing = rations.reduce((sum, one) => sum + closingOn(one, t), 0);
    if (t < judgedFrom || closing <= 0) return [];
    return rations.filter((one) => closingOn(one, t) > 0).map(({ name }) => `${price / closing} u_${name}_${t}`);
  });
}

/** From `fedFrom` on nothing may be missed; everything may unless given. */
export function rationBounds(rations: RationClass[], days: number, fedFrom = days): string[] {
  return rations.flatMap((one) =>
    Array.from({ length: days }, (_, t) => t).flatMap((t) => {
      const most = t < fedFrom ? closingOn(one, t) : 0;
      const missed = ` 0 <= u_${one.name}_${t} <= ${most.toFixed(3)}`;
      if (one.waitDays === 0) return [missed];
      return [missed, ` 0 <= b_${one.name}_${t} <= ${owedAtMost(one, t).toFixed(3)}`];
    }),
  );
}

/** The ration whose patience ends on day `t`. */
function closingOn({ waitDays, need }: RationClass, t: number): number {
  return t >= waitDays ? (need[t - waitDays] as number) : 0;
}

/** Rations of the last days that can still wait on the evening of day `t`. */
function owedAtMost({ waitDays, need }: RationClass, t: number): number {
  let flies = 0;
  for (let day = Math.max(0, t - waitDays + 1); day <= t; day++) flies += need[day] as number;
  return flies;
}
