/** Parcels that were ordered and are on their way: what to do when they come. */
import { addDays, type Day, dayFromNumber, said, saidTogether } from '../../foundation/index.ts';
import type { Facts } from '../../logbook/index.ts';
import { openPurchases } from '../awaited-cups.ts';
import type { SaidJob } from './said-job.ts';

export function receiveJobs(facts: Facts, today: number): SaidJob[] {
  const { quarantineDays } = facts.household.purchase;
  return openPurchases(facts, today).map(({ purchase, strain, cups, stage, arrives }) => {
    const now = dayFromNumber(today);
    const date: Day = arrives < now ? now : arrives;
    const late = arrives < now ? [said`It was expected on ${{ day: arrives }}: ask where it is.`] : [];
    const released = { day: addDays(date, quarantineDays) };
    return {
      id: `${date}:receive:${purchase}`,
      date,
      kind: 'receive',
      strain,
      cups,
      boughtStage: stage,
      arrives,
      why: saidTogether(
        ...late,
        said`Look for live flies or larvae, keep it apart from your own cups, and start none from it before ${released}.`,
      ),
      firmness: 'firm',
    };
  });
}
