/** Lighthouse's marks for the first page, on its own simulated phone. */
import lighthouse from 'lighthouse';
import type { FileServer } from '../../tests/browser/file-server.ts';
import type { BenchRow } from '../bench-result.ts';
import { launched, verdict } from './with-browser.ts';

const categories = ['performance', 'accessibility', 'best-practices'] as const;
const port = 20_917;
const least = 95;

export async function lighthouseRows(server: FileServer): Promise<BenchRow[]> {
  const browser = await launched([`--remote-debugging-port=${port}`]);
  try {
    const ran = await lighthouse(server.address, { port, onlyCategories: [...categories], logLevel: 'error' });
    return categories.map((name) => markRow(name, 100 * (ran?.lhr.categories[name]?.score ?? Number.NaN)));
  } finally {
    await browser.close();
  }
}

function markRow(name: string, mark: number): BenchRow {
  return {
    what: `Lighthouse 12.2.3, ${name}`,
    figure: mark.toFixed(0),
    baseline: String(least),
    ratio: mark / least,
    target: verdict(`at least ${least}`, mark >= least),
  };
}
