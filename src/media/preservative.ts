/**
 * Preservative doses. A dose is reckoned on the volume of the finished medium: w/v grams in 100 ml,
 * v/v millilitres in 100 ml. A dose beyond the usual range is warned of and never blocked: the keeper
 * may know why.
 */
import { failed, ok, type Result } from '../foundation/index.ts';
import { amountOf, positiveAmount, problemsOf } from './amount.ts';
import type { KitchenTables, PreservativeRange } from './kitchen-tables.ts';
import { short } from './measures.ts';

export type DoseVerdict = 'below-usual' | 'usual' | 'high' | 'harmful';

export interface Dose {
  preservative: string;
  percent: number;
  basis: 'w/v' | 'v/v';
  /** Of the pure substance: g for w/v, ml for v/v. */
  amount: number;
  unit: 'g' | 'ml';
  /** Of a stock solution, where one is used. */
  stockMl: number | null;
  verdict: DoseVerdict;
  warnings: string[];
  /** The sum as a person would write it. */
  arithmetic: string;
  source: string;
}

export interface DoseRequest {
  preservative: string;
  finishedVolumeMl: number;
  /** Percent (same basis) of the stock solution measured from; leave out for the pure substance. */
  stockPercent?: number;
}

/** How much to add for a dose of `percent`. */
export function amountForDose(request: DoseRequest & { percent: number }, tables: KitchenTables): Result<Dose> {
  const asked = checked(request, 'percent', request.percent, tables);
  if (!asked.ok) return asked;
  const amount = (request.percent / 100) * request.finishedVolumeMl;
  const unit = unitOf(asked.value);
  const sum = `${short(request.percent)} % of ${short(request.finishedVolumeMl)} ml = ${short(amount)} ${unit}`;
  return ok(doseOf(request, asked.value, amount, request.percent, sum));
}

/** The dose that `amount` (g for w/v, ml for v/v; of the stock, when a stock is named) makes. */
export function doseOfAmount(request: DoseRequest & { amount: number }, tables: KitchenTables): Result<Dose> {
  const asked = checked(request, 'amount', request.amount, tables);
  if (!asked.ok) return asked;
  const stockShare = request.stockPercent === undefined ? 1 : request.stockPercent / 100;
  const amount = request.amount * stockShare;
  const percent = (amount / request.finishedVolumeMl) * 100;
  const unit = unitOf(asked.value);
  const fromStock = request.stockPercent === undefined ? '' : `${request.amount} ml x ${request.stockPercent} % = `;
  const sum = `${fromStock}${short(amount)} ${unit} / ${short(request.finishedVolumeMl)} ml = ${short(percent)} %`;
  return ok(doseOf(request, asked.value, amount, percent, sum));
}

/**
 * Share of a weak acid that is not dissociated, the part that keeps mould down (Henderson-Hasselbalch).
 * @example undissociatedShare(4.86, 4.86) // => 0.5
 */
export function undissociatedShare(pH: number, pKa: number): number {
  return 1 / (1 + 10 ** (pH - pKa));
}

function checked(request: DoseRequest, what: string, value: number, tables: KitchenTables): Result<PreservativeRange> {
  const range = tables.preservatives.find((p) => p.preservative === request.preservative);
  const checks = [amountOf(value, what), positiveAmount(request.finishedVolumeMl, 'finishedVolumeMl')];
  if (request.stockPercent !== undefined) checks.push(stockPercentCheck(request.stockPercent));
  const problems = problemsOf(...checks);
  if (!range) {
    const expected = `one of ${tables.preservatives.map((p) => p.preservative).join(', ')}`;
    problems.push({ where: 'preservative', found: `"${request.preservative}"`, expected });
  }
  return range && problems.length === 0 ? ok(range) : failed(...problems);
}

function stockPercentCheck(percent: number): Result<number> {
  const expected = 'a percentage above 0, at most 100';
  return percent > 0 && percent <= 100
    ? ok(percent)
    : failed({ where: 'stockPercent', found: String(percent), expected });
}

function doseOf(request: DoseRequest, range: PreservativeRange, amount: number, percent: number, sum: string): Dose {
  const stockMl = request.stockPercent === undefined ? null : (amount / request.stockPercent) * 100;
  const fromStock = stockMl === null ? '' : `; from a ${request.stockPercent} % stock: ${short(stockMl)} ml`;
  const verdict = verdictOf(percent, range);
  return {
    preservative: range.preservative,
    percent,
    basis: range.basis,
    amount,
    unit: unitOf(range),
    stockMl,
    verdict,
    warnings: warningsOf(percent, verdict, range),
    arithmetic: sum + fromStock,
    source: range.source,
  };
}

function unitOf(range: PreservativeRange): 'g' | 'ml' {
  return range.basis === 'w/v' ? 'g' : 'ml';
}

/** A hair of tolerance: a dose of exactly the limit is within it, whatever the rounding of the sum. */
function verdictOf(percent: number, range: PreservativeRange): DoseVerdict {
  const p = percent * (1 - 1e-9);
  if (range.harmPercent !== null && percent * (1 + 1e-9) >= range.harmPercent) return 'harmful';
  if (p > range.warnAbovePercent) return 'high';
  return percent * (1 + 1e-9) < range.usualLowPercent ? 'below-usual' : 'usual';
}

function warningsOf(percent: number, verdict: DoseVerdict, range: PreservativeRange): string[] {
  const dose = `${short(percent)} % ${range.basis} of ${range.name}`;
  const usual = `the usual range is ${range.usualLowPercent} to ${range.usualHighPercent} %`;
  if (verdict === 'below-usual') return [`${dose}: ${usual}; mould may come through`];
  if (verdict === 'high') return [`${dose} is above ${range.warnAbovePercent} %: ${usual}${harmNote(range)}`];
  if (verdict === 'harmful') return [`${dose} is a harmful dose: ${usual}${harmNote(range)}`];
  return [];
}

function harmNote(range: PreservativeRange): string {
  return range.harmPercent === null ? '' : `; at ${range.harmPercent} % ${range.harm}`;
}
