/** The kitchen's jobs and the shopping list as text. */
import type { ShoppingAnswer } from '../../app/index.ts';
import { longDay } from './day-text.ts';
import { counted, table, wrapped } from './layout.ts';

export function shoppingText(answer: ShoppingAnswer): string[] {
  return [
    `Kitchen from ${longDay(answer.on)} to ${longDay(answer.until)}, recipe ${words(answer.recipe)}`,
    '',
    ...answer.mix.map(
      (m) => `${longDay(m.on)}: mix ${Math.round(m.massG)} g for ${counted(Math.round(m.forCups), 'cup')}`,
    ),
    ...answer.wash.map((w) => `${longDay(w.on)}: wash ${counted(Math.round(w.cups), 'cup')}`),
    ...answer.shop.map((s) => `${longDay(s.on)}: shop for ${s.items.map((i) => words(i.item)).join(', ')}`),
    ...listLines(answer),
    ...uncountedLines(answer),
  ];
}

function listLines({ shoppingList, price, currency }: ShoppingAnswer): string[] {
  if (shoppingList.length === 0) return ['', 'Nothing that was counted runs out.'];
  const rows = shoppingList.map((line) => [
    words(line.item),
    `${Math.ceil(line.amount)}${line.unit === 'g' ? ' g' : ''}`,
    longDay(line.neededOn),
    line.price === null ? '' : line.price.toFixed(2),
  ]);
  const sum = price > 0 ? [`Together ${price.toFixed(2)} ${currency}, as far as prices are known.`] : [];
  return ['', ...table(['to buy', 'amount', 'needed on', 'price'], rows, [1, 3]), ...sum];
}

function uncountedLines({ uncounted }: ShoppingAnswer): string[] {
  if (uncounted.length === 0) return [];
  return ['', ...wrapped(`Never counted, so not on the list: ${uncounted.map(words).join(', ')}.`)];
}

function words(key: string): string {
  return key.replaceAll('-', ' ');
}
