/** Medium for a number of cups, as text. */
import type { MixAnswer } from '../../app/index.ts';
import { counted, table, wrapped } from './layout.ts';

export function mixText(answer: MixAnswer): string[] {
  return [
    `${answer.name} for ${counted(answer.cups, 'cup')} of ${round(answer.mediumMassG)} g: ${round(answer.mixedMassG)} g to mix`,
    '',
    ...ingredientTable(answer),
    ...ratioLines(answer),
    '',
    ...doseLines(answer),
    ...answer.warnings.flatMap((warning) => wrapped(warning, '! ')),
    ...stockLines(answer),
    ...costLines(answer),
    'Step by step',
    ...answer.steps.flatMap(stepLines),
  ];
}

function ingredientTable({ ingredients, waterMl }: MixAnswer): string[] {
  const rows = ingredients.map(({ ingredient, weighedG, spoons }) => [
    ingredient.replaceAll('-', ' '),
    `${round(weighedG)} g`,
    spoons ? spoons.text : '',
  ]);
  return table(['ingredient', 'weigh', 'or by spoons'], [['water', `${round(waterMl)} ml`, ''], ...rows], [1]);
}

function ratioLines({ liquidToDryByMass: byMass, liquidToDryByVolume: byVolume }: MixAnswer): string[] {
  if (byMass === null) return [];
  const volume = byVolume === null ? '' : `, ${byVolume.toFixed(1)} to 1 by volume`;
  return ['', `Liquid to dry: ${byMass.toFixed(1)} to 1 by mass${volume}`];
}

function doseLines({ doses }: MixAnswer): string[] {
  if (doses.length === 0) return [];
  const lines = doses.flatMap(({ preservative, percent, basis, arithmetic, verdict }) =>
    wrapped(
      `${preservative.replaceAll('-', ' ')}: ${round(percent)} % ${basis}, ${verdict.replaceAll('-', ' ')} (${arithmetic})`,
      '  ',
    ),
  );
  return ['Preservative', ...lines, ''];
}

function stockLines({ onHand }: MixAnswer): string[] {
  if (!onHand) return [];
  const limit = onHand.limitedBy ? `, limited by ${onHand.limitedBy.replaceAll('-', ' ')}` : '';
  return [`The stock makes ${counted(Math.floor(onHand.cups), 'cup')}${limit}.`, ''];
}

function costLines({ cost }: MixAnswer): string[] {
  if (!cost) return [];
  const money = (sum: number) => `${sum.toFixed(2)} ${cost.currency}`;
  const flies = cost.per100Flies === null ? '' : `, ${money(cost.per100Flies)} for 100 flies`;
  const missing = cost.missingPrices.map((item) => item.replaceAll('-', ' ')).join(', ');
  const without = missing === '' ? '' : ` (without ${missing}: no price)`;
  return [...wrapped(`A cup costs ${money(cost.perCup)}${flies}${without}.`), ''];
}

function stepLines({ text, cautions }: MixAnswer['steps'][number], index: number): string[] {
  const number = `${String(index + 1).padStart(2)}. `;
  return [...wrapped(text, number), ...cautions.flatMap((caution) => wrapped(caution, '    ! '))];
}

function round(value: number): string {
  return String(Number(value.toPrecision(value >= 100 ? 4 : 3)));
}
