/** The kitchen's published figures, as media/ takes them. */
import type { KitchenTables } from '../../media/index.ts';
import { publishedDensities, publishedMeasures, publishedPreservatives } from '../../reference/index.ts';

export const kitchenTables: KitchenTables = {
  measures: publishedMeasures,
  densities: publishedDensities,
  preservatives: publishedPreservatives,
};
