/** What becomes of the cups when a place is warmed or cooled, or a cup is carried to another place. */
import { type Day, failed, ok, type Result, said, told } from '../../foundation/index.ts';
import type { CultureFacts, Facts, PlaceFacts } from '../../logbook/index.ts';
import { householdModel } from '../household-model.ts';
import type { Question } from '../question.ts';
import { wordsOf } from '../words/words.ts';
import { changedCup } from './changed-cup.ts';
import { standingCups } from './temperature.ts';
import type { TemperatureWhatIfAnswer } from './temperature-answers.ts';

/** One of the two: a place is made `byC` warmer from today on, or a cup is carried to a place today. */
export type TemperatureWhatIf = { place: string; byC: number } | { culture: string; to: string };

const seriesDays = 30;
const warmestC = 45;

const heatCautions = [
  said`A heat mat needs a thermostat with its probe among the cups, and stands under or beside them, never beneath a closed stack: cups overheat and mats can start fires.`,
  said`Warm cups dry sooner: look at the medium every other day.`,
];

export function temperatureWhatIf(
  facts: Facts,
  question: Question,
  asked: TemperatureWhatIf,
): Result<TemperatureWhatIfAnswer> {
  const changed = 'place' in asked ? warmed(facts, question.on, asked) : carried(facts, question.on, asked);
  if (!changed.ok) return changed;
  const now = householdModel(facts, question.on, seriesDays);
  const then = householdModel(changed.value.facts, question.on, seriesDays);
  const cultures = standingCups(now, question.seed)
    .filter(({ cup }) => changed.value.concerns(cup.culture))
    .map((standing) => changedCup(now, then, standing));
  const warms = 'place' in asked && asked.byC > 0;
  return ok({ on: question.on, cultures, cautions: warms ? told(heatCautions, wordsOf(question)) : [] });
}

interface Changed {
  facts: Facts;
  concerns(culture: CultureFacts): boolean;
}

/**
 * The place becomes another one, which its cups enter today. It keeps the old one's readings, all of them
 * as much warmer, so that what they taught of the room is kept too.
 */
function warmed(facts: Facts, on: Day, { place, byC }: { place: string; byC: number }): Result<Changed> {
  const known = facts.places.find((p) => p.place === place);
  if (!known) return failed(noPlace(facts, 'place', place));
  if (!(Math.abs(byC) <= 15)) return failed({ where: 'byC', found: String(byC), expected: 'from -15 to 15 degrees' });
  const key = `${place} ${byC > 0 ? 'warmer' : 'cooler'}`;
  const other: PlaceFacts = {
    ...known,
    place: key,
    expected: shifted(known.expected, byC),
    readings: known.readings.map((r) => ({
      on: r.on,
      meanC: Math.min(r.meanC + byC, warmestC),
      minC: r.minC === null ? null : Math.min(r.minC + byC, warmestC),
      maxC: r.maxC === null ? null : Math.min(r.maxC + byC, warmestC),
    })),
  };
  const isHere = (culture: CultureFacts) => culture.places.at(-1)?.place === place && !culture.ended;
  const cultures = facts.cultures.map((c) => (isHere(c) ? moved(c, on, key) : c));
  return ok({ facts: { ...facts, places: [...facts.places, other], cultures }, concerns: isHere });
}

function carried(facts: Facts, on: Day, { culture, to }: { culture: string; to: string }): Result<Changed> {
  const living = facts.cultures.filter((c) => !c.ended);
  const known = living.find((c) => c.culture === culture || c.label === culture);
  if (!known) {
    const expected = `a living cup: ${
      living
        .slice(0, 20)
        .map((c) => c.label)
        .join(', ') || 'there is none'
    }`;
    return failed({ where: 'culture', found: `"${culture.slice(0, 60)}"`, expected });
  }
  if (!facts.places.some((p) => p.place === to)) return failed(noPlace(facts, 'to', to));
  const cultures = facts.cultures.map((c) => (c === known ? moved(c, on, to) : c));
  return ok({ facts: { ...facts, cultures }, concerns: (c) => c.culture === known.culture });
}

function moved(culture: CultureFacts, on: Day, place: string): CultureFacts {
  return { ...culture, places: [...culture.places.filter((stay) => stay.from < on), { from: on, place }] };
}

function shifted(expected: PlaceFacts['expected'], byC: number): PlaceFacts['expected'] {
  if ('allYearC' in expected) return { allYearC: expected.allYearC + byC };
  const { winterC, springC, summerC, autumnC } = expected;
  return { winterC: winterC + byC, springC: springC + byC, summerC: summerC + byC, autumnC: autumnC + byC };
}

function noPlace(facts: Facts, where: string, found: string) {
  const expected = `one of ${facts.places.map((p) => p.place).join(', ')}`;
  return { where, found: `"${found.slice(0, 60)}"`, expected };
}
