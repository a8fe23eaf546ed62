/** In place of a plan or a forecast for a household that has neither animals nor cups: it must not seem safe. */
import { wrapped } from './layout.ts';

export function nothingWanted(): string[] {
  return wrapped(
    'No animals and no cups are written down, so there is nothing to plan or to foretell: record your animals with ' +
      '`flylarder record group`.',
  );
}
