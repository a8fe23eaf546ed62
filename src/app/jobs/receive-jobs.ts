/** Parcels that were ordered and are on their way: what to do when they come. */
import { addDays, type Day, dayFromNumber } from '../../foundation/index.ts';
import type { Facts } from '../../logbook/index.ts';
import type { Job } from '../answers.ts';
import { openPurchases } from '../awaited-cups.ts';
import { dayWords } from '../day-words.ts';

export function receiveJobs(facts: Facts, today: number): Job[] {
  const { quarantineDays } = facts.household.purchase;
  return openPurchases(facts, today).map(({ purchase, strain, cups, stage, arrives }) => {
    const now = dayFromNumber(today);
    const date: Day = arrives < now ? now : arrives;
    const late = arrives < now ? `It was expected on ${dayWords(arrives)}: ask where it is. ` : '';
    return {
      id: `${date}:receive:${purchase}`,
      date,
      kind: 'receive',
      strain,
      cups,
      boughtStage: stage,
      arrives,
      why: `${late}Look for live flies or larvae, keep it apart from your own cups, and start none from it before ${dayWords(addDays(date, quarantineDays))}.`,
      firmness: 'firm',
    };
  });
}
