/** Parcels that were ordered and are on their way, or should have come: what to do about them. */
import { addDays, type Day, dayFromNumber, type Said, said, saidTogether } from '../../foundation/index.ts';
import type { Facts, PurchaseFact } from '../../logbook/index.ts';
import { openPurchases, unansweredPurchases } from '../awaited-cups.ts';
import type { SaidJob } from './said-job.ts';

export function receiveJobs(facts: Facts, today: number): SaidJob[] {
  const now = dayFromNumber(today);
  return [
    ...unansweredPurchases(facts, today).map((purchase) => receiveJob(purchase, now, askedSaid(purchase))),
    ...openPurchases(facts, today).map((purchase) => {
      const date: Day = purchase.arrives < now ? now : purchase.arrives;
      const late =
        purchase.arrives < now ? [said`It was expected on ${{ day: purchase.arrives }}: ask where it is.`] : [];
      return receiveJob(purchase, date, saidTogether(...late, unpackingSaid(facts, date)));
    }),
  ];
}

function receiveJob({ purchase, strain, cups, stage, arrives }: PurchaseFact, date: Day, why: Said): SaidJob {
  return {
    id: `${date}:receive:${purchase}`,
    date,
    kind: 'receive',
    strain,
    cups,
    boughtStage: stage,
    arrives,
    purchase,
    why,
    firmness: 'firm',
  };
}

/** What is never answered would drop off the list without a word. */
function askedSaid({ purchase, arrives }: PurchaseFact): Said {
  return said`Did it come, or was it cancelled? It was expected on ${{ day: arrives }} and is no longer counted on. If it came, write its cups down as bought (purchase ${purchase}); if it will not come, write the purchase down again with 0 cups.`;
}

function unpackingSaid({ household, cultures }: Facts, date: Day): Said {
  const released = { day: addDays(date, household.purchase.quarantineDays) };
  const hasOwn = cultures.some(({ origin, ended }) => origin === 'started' && ended === null);
  return hasOwn
    ? said`Look for live flies or larvae, keep it apart from your own cups, and start none from it before ${released}.`
    : said`Look for live flies or larvae, and for mites at lid and rim. While you have no cup of your own they may found others at once; once you have, keep them apart and start none from them before ${released}.`;
}
