/**
 * The cups that are worth carrying to another place today. What is proposed is planned for as it will be once
 * it is written down: believed and tuned anew, so that the day's other jobs stay when the moves are ticked off.
 */
import { dayFromNumber, dayNumber } from '../../foundation/index.ts';
import {
  chooseMoves,
  type ChosenMove,
  lacksAhead,
  movesThatPay,
  type TunedPolicy,
  tunePolicy,
} from '../../planner/index.ts';
import type { StrainModel } from '../household-model.ts';
import { type Situation, situation } from '../planning-problem.ts';
import { carriedCup } from './carried-cup.ts';
import { placesToMove } from './places-to-move.ts';

/** In larger holdings a single cup changes nothing that could be seen. */
const mostCups = 40;
/** A shift of its next flies that is worth a keeper's hand, days. */
const leastShiftDays = 1;
/** Cups of a strain that are carried in so many days, at most. */
const mostMoves = 2;
const mostMovesDays = 3;

/** What is settled for a household on a day. */
export interface Moved extends Pick<TunedPolicy, 'parameters' | 'shortSpells'> {
  moves: ChosenMove[];
}

/** @param tuned the policy for the household as it stands; what is given back is tuned with the moves done. */
export function cupMoves(at: Situation, { parameters, shortSpells }: Omit<Moved, 'moves'>): Moved {
  const none = { moves: [], parameters, shortSpells };
  const movable = at.problem.strains.flatMap(({ strain }) => movableCups(at, strain));
  if (movable.length === 0) return none;
  const lacks = lacksAhead(at.problem, parameters).filter(({ strain }) => movable.some((m) => m.strain === strain));
  const carryings = movable
    .filter(({ strain }) => lacks.some((lack) => lack.strain === strain))
    .flatMap(({ strain, culture, place }) => carriedCup(at, strain, culture, place) ?? [])
    .filter(({ shift }) => shift.next !== 'spent' && Math.abs(shift.laterDays) >= leastShiftDays)
    .map(({ carrying }) => carrying);
  const most = (strain: string) => mostMoves - movedLately(at, strain);
  const chosen = carryings.length > 0 ? chooseMoves(at.problem, parameters, lacks, carryings, most) : [];
  if (chosen.length === 0) return none;
  const { problem } = withMoves(at, chosen);
  const tuned = tunePolicy(problem);
  const after = { problem, parameters: tuned.parameters };
  const moves = movesThatPay(chosen, { problem: at.problem, parameters }, after);
  return moves.length > 0 ? { moves, parameters: tuned.parameters, shortSpells: tuned.shortSpells } : none;
}

/** The household as it will be when the moves are done and written down. */
export function withMoves(at: Situation, moves: readonly ChosenMove[]): Situation {
  if (moves.length === 0) return at;
  const moved = new Map(
    moves.map(({ strain, cup, place }) => [cup, carriedCup(at, strain, cup, place)?.history.culture]),
  );
  const { facts, today } = at.model;
  const cultures = facts.cultures.map((culture) => moved.get(culture.culture) ?? culture);
  const on = dayFromNumber(today);
  const { seed, days } = at.problem;
  return situation({ ...facts, cultures }, { on, seed }, days / 7);
}

function movedLately({ model, histories }: Situation, strain: string): number {
  const stays = (histories.get(strain) ?? []).flatMap(({ culture }) => culture.places.slice(1));
  return stays.filter(({ from }) => dayNumber(from) > model.today - mostMovesDays).length;
}

function movableCups({ model, histories }: Situation, strain: string) {
  const living = (histories.get(strain) ?? []).filter((cup) => cup.end === null);
  const life = model.strains.get(strain) as StrainModel;
  if (model.places.size < 2 || living.length > mostCups) return [];
  return living.flatMap(({ culture }) =>
    placesToMove(model, life, culture).map(({ place }) => ({ strain, culture: culture.culture, place })),
  );
}
