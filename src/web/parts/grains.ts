/**
 * Flies as grains above the medium: more flies, more grains, by the root of their number up to 40. The
 * places follow a low-discrepancy sequence, so equal cups look equal and a growing one only gains grains.
 */
export function grains(flies: number, mediumTop: number): { x: number; y: number }[] {
  const count = flies < 0.5 ? 0 : Math.min(40, Math.max(1, Math.round(1.35 * Math.sqrt(flies))));
  const top = 12.5;
  const room = Math.max(4, mediumTop - top - 2.5);
  return Array.from({ length: count }, (_, i) => ({
    x: 9.6 + 20.8 * fraction((i + 1) * 0.754877666),
    y: top + room * fraction((i + 1) * 0.569840296),
  }));
}

function fraction(value: number): number {
  return value - Math.floor(value);
}
