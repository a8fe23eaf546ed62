/** What is in stock: an ingredient, empty cups, lids. */
import { said } from '../../foundation/index.ts';
import { entryKind } from './entry-kind.ts';
import { between, line, name } from './field-checks.ts';

export const stock = entryKind(
  'stock',
  {
    item: name,
    amount: between(0, 100_000_000),
    unit: line(20),
    pricePerUnit: between(0, 1_000_000).optional().describe('What one unit costs'),
  },
  (e) => said`In stock: ${e.amount} ${e.unit} of ${e.item}.`,
);
