/**
 * Each note's place in its own forecast, as a normal score: a standard normal value when the world is as
 * the model says. A note of flies is forecast from the cup's earlier notes at one joint draw of the
 * posterior; the first sight of a stage is drawn within its bracket. At a draw of the posterior such
 * scores have the distribution that they have at the truth (V. E. Johnson 2004, Ann. Stat. 32:2361).
 */
import { normalQuantile, type RandomStream } from '../foundation/index.ts';
import type { ChainSnapshot } from './chain-snapshot.ts';
import type { TableContext } from './cup-table.ts';
import type { CupEvidence } from './evidence.ts';
import type { KeeperSetting } from './keeper-settings.ts';
import { timedGaps } from './learned-strays.ts';
import { quickCdf } from './normal-quick.ts';
import { sightingSdDays, wordBeginsAtFlies } from './priors.ts';
import { type Sighting, type Stage, sightingsOf, sightingWrongChance } from './sightings.ts';
import { type StockEvent, stockEvents } from './stock-events.ts';
import { type MetStock, StockFilter, type Strays, widerLogVariance } from './stock-filter.ts';

export interface NoteScore {
  score: number;
  /** Age over that of the first flies, at this cup's pace. */
  relativeAge: number;
}

export interface StageScore {
  stage: Stage;
  score: number;
}

/** Scores of one cup's notes of flies, in the order of age. */
export function noteScores(
  cup: CupEvidence,
  index: number,
  context: TableContext,
  snapshot: ChainSnapshot,
  strays: Strays,
  random: RandomStream,
): NoteScore[] {
  const events = stockEvents(cup, context.taps);
  const logPace = snapshot.cupPace[index] as number;
  const setting = context.settings[snapshot.setting] as KeeperSetting;
  const gaps = timedGaps(cup, events, logPace, context.survival);
  const filter = new StockFilter(context.prior, setting, strays);
  const met = filter.retrace(events, gaps, Math.exp(snapshot.cupYield[index] as number));
  return events.flatMap((event, i) => {
    const range = rankRange(event, met[i] as MetStock, context, setting);
    if (range === null) return [];
    const rank = range[0] + random.uniform() * (range[1] - range[0]);
    const relativeAge = (event.age * Math.exp(logPace)) / cup.firstSeenAge.adults;
    return [{ score: scoreOf(rank), relativeAge }];
  });
}

/** Finite for a rank of 0 or 1. */
function scoreOf(rank: number): number {
  return normalQuantile(Math.min(1 - 1e-7, Math.max(1e-7, rank)));
}

/** Chances of less than the note and of at most the note; null for what is no observation of all flies. */
function rankRange(
  event: StockEvent,
  met: MetStock,
  context: TableContext,
  setting: KeeperSetting,
): [number, number] | null {
  const wrong = context.prior.wrongEntryShare;
  if (event.kind === 'word') return wordRange(event, met, context, setting);
  if (event.kind !== 'count' && !(event.kind === 'take' && event.emptied)) return null;
  const own = event.kind === 'take' ? event.logSd ** 2 : 0;
  const variance = met.w + setting.countSd ** 2 + own;
  const below = (flies: number) =>
    flies <= 0
      ? 0
      : (1 - wrong) * quickCdf((Math.log(flies) - met.z) / Math.sqrt(variance)) +
        wrong * quickCdf((Math.log(flies) - met.z) / Math.sqrt(variance + widerLogVariance));
  const counted = Math.round(event.flies);
  return [counted === 0 ? 0 : below(counted + 0.5), below(counted + 1.5)];
}

function wordRange(
  event: Extract<StockEvent, { kind: 'word' }>,
  met: MetStock,
  { prior }: TableContext,
  setting: KeeperSetting,
): [number, number] {
  const sd = Math.sqrt(met.w + setting.countSd ** 2 + prior.wordSd ** 2);
  const words = Object.keys(wordBeginsAtFlies);
  const place = words.indexOf(event.word);
  const upTo = (log: number, share: number) =>
    (1 - prior.wrongEntryShare) * quickCdf((log + setting.wordOffset - met.z) / sd) + prior.wrongEntryShare * share;
  return [upTo(event.low, place / words.length), upTo(event.high, (place + 1) / words.length)];
}

/** Scores of the first sights of stages; a bracket that is likelier wrong than right may be left out. */
export function stageScores(cup: CupEvidence, logPace: number, wrongShare: number, random: RandomStream): StageScore[] {
  return sightingsOf(cup).flatMap((sighting) => {
    const isWrong = random.uniform() < sightingWrongChance(sighting, logPace, wrongShare);
    const [low, high] = bracketRanks(sighting, logPace);
    const rank = low + random.uniform() * (high - low);
    return isWrong ? [] : [{ stage: sighting.stage, score: scoreOf(rank) }];
  });
}

function bracketRanks({ stage, nominalAge, notYetAge, seenAge }: Sighting, logPace: number): [number, number] {
  const rank = (age: number) => quickCdf((age - nominalAge * Math.exp(-logPace)) / sightingSdDays[stage]);
  return [rank(notYetAge), rank(seenAge)];
}
