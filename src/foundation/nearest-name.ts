/** The known name that a mistyped one most likely meant. */

/** In shorter names every letter is another name: M2 is no slip of M12, m2 is one of M2. */
const shortestSuggested = 4;

/** The name at the least edit distance from `given`, or null when none is near enough to suggest. */
export function nearestName(given: string, names: readonly string[]): string | null {
  let nearest: string | null = null;
  let least = given.length < shortestSuggested ? 1 : Math.max(1, Math.floor(given.length / 3)) + 1;
  for (const name of names) {
    const distance = editDistance(given.toLowerCase(), name.toLowerCase());
    if (distance < least) {
      least = distance;
      nearest = name;
    }
  }
  return nearest;
}

/** Insertions, deletions, substitutions and swaps of neighbours (optimal string alignment). */
export function editDistance(a: string, b: string): number {
  const rows: number[][] = [Array.from({ length: b.length + 1 }, (_, j) => j)];
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) row.push(nextDistance(a, b, i, j, rows, row));
    rows.push(row);
  }
  return rows[a.length]?.[b.length] as number;
}

function nextDistance(a: string, b: string, i: number, j: number, rows: number[][], row: number[]): number {
  const above = rows[i - 1] as number[];
  const same = a[i - 1] === b[j - 1] ? 0 : 1;
  const best = Math.min((above[j] as number) + 1, (row[j - 1] as number) + 1, (above[j - 1] as number) + same);
  const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
  return swapped ? Math.min(best, ((rows[i - 2] as number[])[j - 2] as number) + 1) : best;
}
