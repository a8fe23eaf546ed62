/** The ledger as text: one line a week, and what it comes to. */
import type { LedgerAnswer } from '../../app/index.ts';
import { table } from './layout.ts';

export function ledgerText(answer: LedgerAnswer): string[] {
  if (answer.weeks.length === 0) return ['No cup was started yet.'];
  const rows = answer.weeks.map((w) => [
    w.week,
    String(w.cups),
    String(Math.round(w.mediumMassG)),
    answer.hasPrices ? w.cost.toFixed(2) : '',
    String(Math.round(w.fliesTaken)),
    String(Math.round(w.fliesWasted)),
  ]);
  const head = [
    'week of',
    'cups',
    'medium g',
    answer.hasPrices ? `cost ${answer.currency}` : 'cost',
    'taken',
    'thrown out',
  ];
  return [...table(head, rows, [1, 2, 3, 4, 5]), '', ...totals(answer)];
}

function totals({ fliesPerEndedCup, mediumGPerFly, costPer100Flies, currency, hasPrices }: LedgerAnswer): string[] {
  if (fliesPerEndedCup === null) return ['No cup has ended yet: flies of a cup are not known.'];
  const flies = `A cup that has ended gave ${Math.round(fliesPerEndedCup)} counted flies`;
  const medium = mediumGPerFly === null ? '' : `, ${mediumGPerFly.toFixed(2)} g of medium a fly`;
  const cost = hasPrices && costPer100Flies !== null ? `, ${costPer100Flies.toFixed(2)} ${currency} for 100 flies` : '';
  return [`${flies}${medium}${cost}.`];
}
