/** A cross's generations, as text. */
import type { CrossAnswer } from '../../app/index.ts';
import { table } from './layout.ts';

/** Rarer ones are summed: a long cross has hundreds. */
const mostShown = 6;

export function crossText(answer: CrossAnswer): string[] {
  const about = answer.exact ? 'Shares among endlessly many flies' : 'Mean shares over simulated lines';
  return [about, '', ...answer.generations.flatMap(generationText), ...spreadText(answer)];
}

function generationText(generation: CrossAnswer['generations'][number]): string[] {
  const shown = generation.phenotypes.slice(0, mostShown).map(({ phenotype, share }) => [phenotype, shareText(share)]);
  const rest = generation.phenotypes.slice(mostShown).reduce((sum, { share }) => sum + share, 0);
  const rows = rest > 0 ? [...shown, ['others', shareText(rest)]] : shown;
  return [
    `Generation ${generation.n}: ${shareText(generation.wingedShare)} can fly`,
    ...indented(table(['looks', 'share'], rows, [1])),
    '',
  ];
}

function spreadText({ spread }: CrossAnswer): string[] {
  if (!spread) return [];
  const rows = spread.map(({ n, wingedShare, allFlightlessShare, lostLinesShare }) => [
    String(n),
    `${shareText(wingedShare.band.p05)} to ${shareText(wingedShare.band.p95)}`,
    shareText(allFlightlessShare),
    shareText(lostLinesShare),
  ]);
  return table(['generation', 'can fly (5-95 % of lines)', 'none can fly', 'line lost'], rows, [0]);
}

function shareText(share: number): string {
  return `${(100 * share).toFixed(share > 0 && share < 0.01 ? 2 : 1)} %`;
}

function indented(lines: string[]): string[] {
  return lines.map((line) => `  ${line}`);
}
