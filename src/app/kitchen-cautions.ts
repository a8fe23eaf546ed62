/** What can hurt in a fly kitchen, each said once. */
import { type CautionKey, type Language, texts } from '../paper/index.ts';

const inTheKitchen: readonly CautionKey[] = [
  'hot-medium',
  'boil-over',
  'children',
  'flammable-stock',
  'corrosive-acid',
  'dose-high',
  'allergy',
  'mould',
  'carbon-dioxide',
  'tight-lid',
  'treated-material',
];

export function kitchenCautions(language: Language = 'en'): string[] {
  const { cautions } = texts(language);
  return inTheKitchen.map((key) => cautions[key]);
}
