/** The stages that a group will pass through by the books: when to change the fly, and when flies are outgrown. */
import { type Stage, stagePlan } from '../../animals/index.ts';
import { type Day, dayFromNumber, dayNumber } from '../../foundation/index.ts';
import type { GroupFacts } from '../../logbook/index.ts';
import { type PublishedRation, publishedRations } from '../../reference/index.ts';
import type { AnimalsAnswer } from './animal-answers.ts';

type StageAhead = AnimalsAnswer['groups'][number]['stages'][number];

/** Empty for a kind that the books do not know or that has no later stage, and for a group that is gone. */
export function stagesAhead({ animal, periods }: GroupFacts, on: Day): StageAhead[] {
  const now = publishedRations.find((row) => row.animal === animal);
  const first = periods.find(({ count, arrival, from }) => count > 0 && !arrival && from <= on);
  const living = periods.findLast(({ from }) => from <= on)?.count ?? 0;
  if (!now || !first || living === 0 || now.next === '') return [];
  const chain = chainFrom(now);
  const plan = stagePlan({
    stages: chain.map(stageOf),
    onDay: dayNumber(first.from),
    daysInStage: 0,
    count: living,
    degreesWarmer: 0,
    q10: 2,
    moultPause: null,
  });
  return plan.slice(1).map(({ begins }, i) => {
    const row = chain[i + 1] as Link;
    return {
      animal: row.animal,
      name: row.name,
      begins: {
        earliest: dayFromNumber(begins.earliest),
        middle: dayFromNumber(begins.middle),
        latest: dayFromNumber(begins.latest),
      },
      fly: row.ration?.fly ?? null,
      fliesPerFeeding: row.ration && { low: row.ration.fliesLow, high: row.ration.fliesHigh },
    };
  });
}

interface Link {
  animal: string;
  name: string;
  /** Null for larger prey. */
  ration: PublishedRation | null;
}

/** The stage and those after it; one without a known length is the last. */
function chainFrom(first: PublishedRation): Link[] {
  const chain: Link[] = [];
  let row: PublishedRation | undefined = first;
  while (row) {
    chain.push({ animal: row.animal, name: row.name, ration: row });
    const { next, stageDaysLow }: PublishedRation = row;
    if (next === '' || stageDaysLow === null) break;
    if (next === 'larger-prey') chain.push({ animal: next, name: 'Larger prey', ration: null });
    row = publishedRations.find(({ animal }) => animal === next);
  }
  return chain;
}

function stageOf({ animal, ration }: Link): Stage {
  return {
    stage: animal,
    daysLow: ration?.stageDaysLow ?? null,
    daysHigh: ration?.stageDaysHigh ?? null,
    survival: 1,
    fliesPerFeeding: ration?.fliesHigh ?? 0,
    strain: ration?.fly ?? '',
    feedingWeekdays: [],
  };
}
