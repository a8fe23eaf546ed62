/** The kitchen's stock and recipes as text. */
import type { LarderAnswer, RecipeBookAnswer } from '../../app/index.ts';
import { counted, table, wrapped } from './layout.ts';

export function larderText(answer: LarderAnswer): string[] {
  if (answer.items.length === 0)
    return ['Nothing was counted yet: record a stock entry for each thing in the kitchen.'];
  const rows = answer.items.map(({ item, amount, unit, countedOn, cups }) => [
    words(item),
    `${Math.round(amount)}${unit === 'g' ? ' g' : ''}`,
    cups === null ? '' : String(Math.floor(cups)),
    countedOn,
  ]);
  return [
    ...table(['on hand', 'amount', 'cups', 'counted'], rows, [1, 2]),
    ...lastLines(answer),
    ...answer.batches.map(
      ({ batch, leftG, goodUntil, isPast }) =>
        `Batch ${batch}: ${Math.round(leftG)} g left${goodUntil ? `, good until ${goodUntil}` : ''}${isPast ? ': past' : ''}.`,
    ),
  ];
}

function lastLines({ lastsCups, limitedBy, uncounted, recipe, mediumMassG }: LarderAnswer): string[] {
  const lasts =
    lastsCups === null
      ? []
      : wrapped(
          `Enough for ${counted(lastsCups, 'cup')} of ${Math.round(mediumMassG)} g by ${words(recipe)}: ${words(limitedBy ?? '')} runs out first.`,
        );
  return [...lasts, ...(uncounted.length > 0 ? wrapped(`Never counted: ${uncounted.map(words).join(', ')}.`) : [])];
}

export function recipesText(recipes: RecipeBookAnswer): string[] {
  return recipes.flatMap(({ recipe, name, isOwn, method, ingredients, waterMl }) => [
    `${recipe}: ${name} (${isOwn ? 'yours' : 'to start with'}, ${method})`,
    ...table(
      ['', ''],
      [
        ...ingredients.map(({ ingredient, massG }) => [words(ingredient), `${Number(massG.toPrecision(3))} g`]),
        ['water', `${Math.round(waterMl)} ml`],
      ],
      [1],
    ).slice(1),
    '',
  ]);
}

function words(key: string): string {
  return key.replaceAll('-', ' ');
}
