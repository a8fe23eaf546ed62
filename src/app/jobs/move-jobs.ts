/** Cups to carry to a warmer or a cooler place today: what it changes, and what goes short without it. */
import { dayFromNumber, type Said, said, saidTogether } from '../../foundation/index.ts';
import { type ChosenMove, movesPricedDays } from '../../planner/index.ts';
import { type CarriedCup, carriedCup } from '../moves/carried-cup.ts';
import type { Situation } from '../planning-problem.ts';
import type { SaidJob } from './said-job.ts';

/** @param at the household as it stands, the cups not carried yet. */
export function moveJobs(at: Situation, moves: readonly ChosenMove[]): SaidJob[] {
  const date = dayFromNumber(at.model.today);
  return moves.flatMap((move) => {
    const cup = carriedCup(at, move.strain, move.cup, move.place);
    if (!cup) return [];
    const { cup: culture, place, strain } = move;
    const why = saidTogether(
      shiftSaid(at, move, cup),
      lackSaid(at, move, moves.filter((other) => other.strain === move.strain).length > 1),
      ...bought(move, Math.min(at.problem.days, movesPricedDays) / 7),
      ...cautions(cup),
    );
    const id = `${date}:move:${culture}`;
    return [{ id, date, kind: 'move', strain, cultures: [culture], place, why, firmness: 'firm' }];
  });
}

function shiftSaid({ model }: Situation, { place }: ChosenMove, { history, shift }: CarriedCup): Said {
  const { label } = history.culture;
  const there = model.places.get(place)?.name || place;
  const days = Math.round(10 * Math.abs(shift.laterDays)) / 10;
  const on = { day: dayFromNumber(shift.on) };
  if (shift.next === 'firstAdults') {
    return shift.laterDays < 0
      ? said`At ${there} the first flies of ${label} come ${days} days earlier, about ${on}.`
      : said`At ${there} the first flies of ${label} come ${days} days later, about ${on}: they are held back for when they are wanted.`;
  }
  return shift.laterDays < 0
    ? said`At ${there} most flies of ${label} come ${days} days earlier, about ${on}.`
    : said`At ${there} most flies of ${label} come ${days} days later, about ${on}: they are held back for when they are wanted.`;
}

/** The chance that the strain goes short were nothing bought. */
function lackSaid(
  { model }: Situation,
  { strain, shortDay, riskWithout, riskWith }: ChosenMove,
  together: boolean,
): Said {
  const name = model.strains.get(strain)?.facts.name || strain;
  const day = { day: dayFromNumber(model.today + shortDay) };
  const [before, after] = [chanceSaid(riskWithout), chanceSaid(riskWith)];
  return together
    ? said`Were nothing done, ${name} would be short on ${day} with a chance of ${before}; with the cups moved, of ${after} on the worst day.`
    : said`Were nothing done, ${name} would be short on ${day} with a chance of ${before}; with the cup moved, of ${after} on the worst day.`;
}

function bought({ boughtFewer }: ChosenMove, weeks: number): Said[] {
  const cups = Math.round(10 * boughtFewer) / 10;
  return cups < 0.3 ? [] : [said`Cups to buy in ${weeks} weeks: about ${cups} fewer.`];
}

function cautions({ shift }: CarriedCup): Said[] {
  return shift.laterDays < 0 ? [said`Warm cups dry sooner: look at the medium every other day.`] : [];
}

/** Of some hundred worlds nothing finer can be told. */
function chanceSaid(share: number): Said {
  const percent = Math.round(100 * share);
  return percent < 1 ? said`less than ${1} %` : said`${percent} %`;
}
