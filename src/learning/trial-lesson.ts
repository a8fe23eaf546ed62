/** Two recipes, places or strains compared: what is known, and the trial that would make it clear. */
import { type Said, said } from '../foundation/index.ts';
import type { ComparisonTopic, Lesson } from './lesson.ts';
import { cupsUntilClear, type Difference, leastUsefulDifference } from './trial.ts';

/** Log sd that the notes of one cup leave on its yield, beside what cups differ by. */
const notesSd = 0.15;
/** The same for its pace: it is read off each cup to a few per cent. */
const paceNotesSd = 0.03;

/** @param cupSd log sd between cups of one level. */
export function comparison(
  topic: ComparisonTopic,
  { first, second, cups }: { first: string | Said; second: string | Said; cups: number },
  d: Difference,
  cupSd: number,
): Lesson {
  const isPace = topic === 'place pace';
  const further = cupsUntilClear(d, Math.hypot(cupSd, isPace ? paceNotesSd : notesSd));
  const [winner, loser] = d.mean >= 0 ? [first, second] : [second, first];
  const size = Math.round(100 * (Math.exp(Math.abs(d.mean)) - 1));
  const chance = d.mean >= 0 ? d.chanceMore : 1 - d.chanceMore;
  const found = isPace ? paceFound(winner, loser, size) : yieldFound(winner, loser, size);
  const basis = size === 0 ? said`${cups} cups` : said`${percentSaid(chance)} sure, ${cups} cups`;
  return {
    topic,
    text: said`${found} (${basis}); ${trialSaid(further, d.mean)}.`,
    why: said`From cups of both, with session, founders and generation allowed for. Clear means 95 % sure; who looks again after every cup is sure too early now and then.`,
    value: Math.exp(d.mean),
    low: Math.exp(d.low),
    high: Math.exp(d.high),
    cups,
    comparison: { first, second, chanceMore: d.chanceMore, cupsUntilClear: further },
  };
}

/** Never wholly sure: scenarios are counted, and none against is not none. */
function percentSaid(chance: number): Said {
  return chance > 0.99 ? said`over 99 %` : said`${Math.round(100 * chance)} %`;
}

function yieldFound(winner: string | Said, loser: string | Said, size: number): Said {
  if (size === 0) return said`${winner} and ${loser} give alike`;
  return said`${winner} gives ${size} % more flies than ${loser}`;
}

function paceFound(winner: string | Said, loser: string | Said, size: number): Said {
  if (size === 0) return said`${winner} and ${loser} run alike`;
  return said`cups at ${winner} run ${size} % quicker than at ${loser}`;
}

function trialSaid(further: number | null, mean: number): Said {
  if (further === 0) return said`that is clear`;
  if (further === null) return said`no trial of a bearable size would settle it`;
  return Math.abs(mean) < leastUsefulDifference
    ? said`about ${further} more cups, half of each and started together, would show a difference of 10 %`
    : said`about ${further} more cups, half of each and started together, would settle it`;
}
