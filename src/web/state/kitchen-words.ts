/** Names and amounts of the kitchen, the same on each of its screens. */
import { locale, tMaybe } from '../text/text.svelte.ts';

/** The name of an ingredient or a thing; what the page has no word for is shown as it was written. */
export function itemName(item: string): string {
  return tMaybe(`item.${item}`) ?? item.replaceAll('-', ' ');
}

/** The name of a recipe to begin with in the page's language; an own one is called what its keeper called it. */
export function recipeName({ recipe, name }: { recipe: string; name: string }): string {
  return tMaybe(`recipe.${recipe}`) ?? (name || recipe);
}

export function grams(massG: number): string {
  const digits = massG < 10 ? 1 : 0;
  return massG >= 2000 ? `${decimal(massG / 1000, 2)} kg` : `${decimal(massG, digits)} g`;
}

export function amountOf(amount: number, unit: 'g' | 'piece'): string {
  return unit === 'g' ? grams(amount) : decimal(amount, 0);
}

export function decimal(value: number, digits: number): string {
  return value.toLocaleString(locale(), { maximumFractionDigits: digits });
}

export function money(sum: number, currency: string): string {
  return sum.toLocaleString(locale(), { style: 'currency', currency });
}
