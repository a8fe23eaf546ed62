/**
 * The flies in one cup, day by day: stock(a) = survival x stock(a-1) + yield x emerged(a) - taken(a),
 * carried as a mean and a variance. Each note first weighs the cell (its likelihood), then corrects the
 * stock, so that a cup counted today is forecast from what was seen. Notes act on the log of
 * (stock + 1), where their errors are relative; moments are matched between the two scales.
 */
import type { KeeperSetting } from './keeper-settings.ts';
import { type Truncated, truncate } from './normal-quick.ts';
import { dailyStrayFactor, type FullPrior } from './priors.ts';
import type { StockEvent } from './stock-events.ts';

/** What lies between two events, for one pace: everything is linear in yield. */
export interface Gaps {
  /** Share of the stock that outlives each gap. */
  kept: Float64Array;
  /** Flies emerged in each gap and alive at its end, at yield 1; the last gap ends today. */
  arrived: Float64Array;
  /** The same for the squares, for the day-to-day stray. */
  arrivedSquares: Float64Array;
  /** Change of `arrived` with log pace; left out where timing is taken to be exact. */
  arrivedByPace?: Float64Array;
}

/** Log of (stock + 1): mean and variance. */
export interface StockState {
  z: number;
  w: number;
}

/** Variance that a wrong number has beyond a right one's, log. */
export const widerLogVariance = 1.5 ** 2;

/** How far the world strays from the curve, log sds: flies and timing. */
export interface Strays {
  yieldSd: number;
  paceSd: number;
}

/** What an event met: the flies, the log of (flies + 1) with its variance, and how far the event was believed. */
export interface MetStock extends StockState {
  metFlies: number;
  trust: number;
}

/** Gaps before each event and, last, from the last event to `untilAge`. */
export function gapsBetween(
  events: readonly StockEvent[],
  emerged: Float64Array,
  survival: number,
  untilAge: number,
): Gaps {
  const n = events.length + 1;
  const gaps = { kept: new Float64Array(n), arrived: new Float64Array(n), arrivedSquares: new Float64Array(n) };
  let age = -1;
  for (let i = 0; i < n; i++) {
    const until = events[i]?.age ?? untilAge;
    let kept = 1;
    let sum = 0;
    let squares = 0;
    for (; age < until; ) {
      age++;
      const e = emerged[age] as number;
      kept *= survival;
      sum = survival * sum + e;
      squares = survival * survival * squares + e * e;
    }
    gaps.kept[i] = kept;
    gaps.arrived[i] = sum;
    gaps.arrivedSquares[i] = squares;
  }
  return gaps;
}

/** Runs one cell's filter; one instance is reused for all cells and holds no result beyond the last. */
export class StockFilter {
  private mean = 0;
  private variance = 0;
  private trust = 1;
  private z = 0;
  private w = 0;
  private readonly cut: Truncated = { mass: 0, mean: 0, variance: 0 };
  private readonly countVariance: number;
  private readonly wordVariance: number;
  private readonly stray: number;

  /** @param strays structural misfit of yield and of timing, log sds; the prior's yield stray when left out. */
  constructor(
    private readonly prior: FullPrior,
    private readonly setting: KeeperSetting,
    private readonly strays: Strays = { yieldSd: prior.discrepancySd, paceSd: 0 },
  ) {
    this.countVariance = setting.countSd ** 2;
    this.wordVariance = prior.wordSd ** 2 + this.countVariance;
    this.stray = dailyStrayFactor * strays.yieldSd;
  }

  /** Log likelihood of the events at a yield factor; the stock at the end goes into `end`. */
  run(events: readonly StockEvent[], gaps: Gaps, yieldFactor: number, end: StockState): number {
    this.mean = 0;
    this.variance = 0;
    let logLikelihood = 0;
    for (let i = 0; i < events.length; i++) {
      this.pass(gaps, i, yieldFactor);
      logLikelihood += this.note(events[i] as StockEvent);
    }
    this.pass(gaps, events.length, yieldFactor);
    this.toLog();
    end.z = this.z;
    end.w = this.w;
    return logLikelihood;
  }

  /** The stock that each event met, and how far the event was believed (1 = fully), for one cell. */
  retrace(events: readonly StockEvent[], gaps: Gaps, yieldFactor: number): MetStock[] {
    this.mean = 0;
    this.variance = 0;
    return events.map((event, i) => {
      this.pass(gaps, i, yieldFactor);
      const metFlies = this.mean;
      this.toLog();
      const { z, w } = this;
      this.trust = 1;
      this.note(event);
      return { metFlies, z, w, trust: this.trust };
    });
  }

  private pass(gaps: Gaps, i: number, yieldFactor: number): void {
    const kept = gaps.kept[i] as number;
    const arrived = yieldFactor * (gaps.arrived[i] as number);
    const stray = this.stray * yieldFactor;
    this.mean = kept * this.mean + arrived;
    const timing = this.strays.paceSd * yieldFactor * (gaps.arrivedByPace?.[i] ?? 0);
    this.variance =
      kept * kept * this.variance + stray * stray * (gaps.arrivedSquares[i] as number) + arrived + timing * timing;
  }

  private note(event: StockEvent): number {
    switch (event.kind) {
      case 'count':
        this.toLog();
        return this.fromLog(this.weighCount(event.logFlies, this.countVariance));
      case 'word':
        return this.word(event.low, event.high);
      case 'take':
        return this.take(event.flies, this.countVariance + event.logSd * event.logSd, event.emptied);
      case 'unknown':
        return this.unknown(event.emptied);
      case 'presumed':
        return this.presumed(event.flies, event.share ?? 1);
    }
  }

  private word(low: number, high: number): number {
    const offset = this.setting.wordOffset;
    this.toLog();
    const wrong = this.prior.wrongEntryShare / 5;
    return this.fromLog(this.weighRange(low + offset, high + offset, this.wordVariance, wrong));
  }

  /** As many flies as were taken must have been there; when emptied, they were all. */
  private take(flies: number, error: number, emptied: boolean): number {
    this.toLog();
    if (emptied) {
      const logLikelihood = this.weighCount(Math.log(flies + 1), error);
      this.leave(0, 1);
      return logLikelihood;
    }
    const logLikelihood = this.fromLog(
      this.weighRange(Math.log(flies + 1), Infinity, error, this.prior.wrongEntryShare),
    );
    const taken = Math.min(flies, this.mean);
    this.leave(this.mean - taken, this.variance + error * taken * taken);
    return logLikelihood;
  }

  /** Any share of the flies may have gone: uniform, so half of them, with variance 1/12. */
  private unknown(emptied: boolean): number {
    if (emptied) this.leave(0, 1);
    else this.leave(this.mean / 2, this.variance / 4 + (this.mean * this.mean) / 12);
    return 0;
  }

  private presumed(flies: number, share: number): number {
    const done = share * this.prior.presumedDone;
    const taken = Math.min(flies, this.mean);
    this.leave(this.mean - done * taken, this.variance + done * (1 - done) * taken * taken);
    return 0;
  }

  private leave(mean: number, variance: number): void {
    this.mean = Math.max(0, mean);
    this.variance = variance;
  }

  /** A number seen with a relative error; a share of numbers is wrong and says little. */
  private weighCount(seen: number, ownError: number): number {
    // Whole flies: the rounding's variance, 1/12, on the log scale.
    const error = ownError + Math.exp(-2 * this.z) / 12;
    const off = seen - this.z;
    const right = (1 - this.prior.wrongEntryShare) * density(off, this.w + error);
    const wrong = this.prior.wrongEntryShare * density(off, this.w + error + widerLogVariance);
    const gain = this.w / (this.w + error);
    this.correct(right / (right + wrong), gain * off, this.w * (1 - gain));
    return Math.log(right + wrong + 1e-30);
  }

  /** The stock as seen, with error, lies within limits; `wrongMass` is what a wrong note gives. */
  private weighRange(low: number, high: number, error: number, wrongMass: number): number {
    const seenVariance = this.w + error;
    const cut = truncate(this.z, Math.sqrt(seenVariance), low, high, this.cut);
    const right = (1 - this.prior.wrongEntryShare) * cut.mass;
    const gain = this.w / seenVariance;
    const variance = this.w * (1 - gain) + gain * gain * cut.variance;
    this.correct(right / (right + wrongMass + 1e-300), gain * (cut.mean - this.z), variance);
    return Math.log(right + wrongMass + 1e-30);
  }

  /** Mixes the corrected stock (a share `trust`) with the uncorrected one, matching two moments. */
  private correct(trust: number, shift: number, variance: number): void {
    this.trust = trust;
    this.z += trust * shift;
    this.w = trust * variance + (1 - trust) * this.w + trust * (1 - trust) * shift * shift;
  }

  private toLog(): void {
    const m = this.mean + 1;
    this.w = Math.log(1 + this.variance / (m * m));
    this.z = Math.log(m) - this.w / 2;
  }

  private fromLog(logLikelihood: number): number {
    const m = Math.exp(this.z + this.w / 2);
    this.leave(m - 1, m * m * (Math.exp(this.w) - 1));
    return logLikelihood;
  }
}

function density(off: number, variance: number): number {
  return Math.exp((-0.5 * off * off) / variance) / Math.sqrt(2 * Math.PI * variance);
}
