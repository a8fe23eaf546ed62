/** What a feeding job says beside its number: milligrams, the flies' size, supplements, and care near a moult. */
import { type Range } from '../../animals/index.ts';
import { type Day, dayNumber, said, saidTogether } from '../../foundation/index.ts';
import type { Facts, GroupFacts, GroupPeriod } from '../../logbook/index.ts';
import { feedingNow } from '../animals/feeding-now.ts';
import { nearMoult } from '../animals/moult.ts';
import { rationReasons } from '../animals/ration-reasons.ts';
import { supplementsFor } from '../animals/week.ts';
import type { SaidJob } from './said-job.ts';

/** @param facts those of `feedingNow` for the day `on`. */
export function withFood(facts: Facts, group: GroupFacts, period: GroupPeriod, on: Day, job: SaidJob): SaidJob {
  const now = feedingNow(facts, on);
  const ration = now.rations.get(group.group);
  const size = now.sizes.get(period.strain);
  const supplements = supplementsFor(group, on, facts.household.dusting).get(dayNumber(job.date as Day)) ?? [];
  const moult = ration ? nearMoult(ration, on) : null;
  const soft = moult !== null && moult.from <= job.date && job.date <= moult.until;
  const reasons = ration?.written && sameAnimals(ration.written, period) ? rationReasons(ration.written, ration) : [];
  const dust = supplements.length > 0 ? [said`Dust with ${{ list: supplements }} just before.`] : [];
  const care = soft ? [said`Near a moult: feed only those that hunt, and take out every fly that is left.`] : [];
  return {
    ...job,
    ...(size && size.nowMg.low > 0 && sized(job.flies ?? 0, size.nowMg)),
    ...(supplements.length > 0 && { supplements }),
    why: saidTogether(job.why, ...reasons, ...dust, ...care),
  };
}

function sized(flies: number, { low, middle, high }: Range) {
  const fliesRange = { low: Math.round((flies * middle) / high), high: Math.round((flies * middle) / low) };
  return { wantedMg: flies * middle, fliesRange };
}

/** A stage to come has a ration of its own, with other reasons. */
function sameAnimals(written: GroupPeriod, period: GroupPeriod): boolean {
  return written.animal === period.animal && written.strain === period.strain;
}
