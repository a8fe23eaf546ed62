/** Seeds of the households a bench is run on: 1 to `usual`, or `FLYLARDER_HOUSEHOLDS=6-10` for some of them. */
export function askedSeeds(usual: number): number[] {
  const asked = (process.env.FLYLARDER_HOUSEHOLDS ?? '').split('-').filter(Boolean).map(Number);
  const [first = 1, last = asked.length > 0 ? first : usual] = asked;
  return Array.from({ length: last - first + 1 }, (_, i) => first + i);
}
