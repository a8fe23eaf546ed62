/** The animals' need, as text. */
import type { AnimalsAnswer } from '../../app/index.ts';
import { bandText, table, wrapped } from './layout.ts';

export function animalsText(answer: AnimalsAnswer): string[] {
  return [
    ...answer.cautions.flatMap((caution) => wrapped(caution, '! ')),
    ...(answer.cautions.length > 0 ? [''] : []),
    ...groupTable(answer),
    '',
    ...needTable(answer),
    '',
    ...feedingTable(answer),
    ...qualityLines(answer),
  ];
}

function groupTable({ groups }: AnimalsAnswer): string[] {
  const rows = groups.map(({ name, count, lastFedOn, slackDays, appetite, weight }) => [
    name,
    String(count),
    lastFedOn ?? '',
    count > 0 ? `${slackDays} d` : '',
    appetite ? bandText(appetite) : '',
    weight?.verdict ?? '',
  ]);
  return [...table(['animals', 'count', 'last fed', 'can wait', 'eats', 'weight'], rows, [1, 3]), ...arrivals(groups)];
}

function arrivals(groups: AnimalsAnswer['groups']): string[] {
  return groups.flatMap(({ name, arrival }) =>
    arrival
      ? wrapped(
          `${name}: ${arrival.countLow} to ${arrival.countHigh} expected from ${arrival.earliest} to ${arrival.latest}.`,
        )
      : [],
  );
}

function needTable({ strains, days }: AnimalsAnswer): string[] {
  const rows: string[][] = [];
  for (let from = 0; from < days; from += 7) {
    const sums = strains.map(({ wantedFliesByDay }) =>
      wantedFliesByDay.slice(from, from + 7).reduce((a, b) => a + b, 0),
    );
    rows.push([`week ${from / 7 + 1}`, ...sums.map((sum) => String(Math.round(sum)))]);
  }
  return table(
    ['flies wanted', ...strains.map(({ strain }) => strain)],
    rows,
    strains.map((_, i) => i + 1),
  );
}

function feedingTable({ week }: AnimalsAnswer): string[] {
  const rows = week.map(({ date, name, flies, strain, supplements }) => [
    date,
    name,
    String(Math.round(flies)),
    strain,
    supplements.join(', '),
  ]);
  return table(["this week's feedings", 'animals', 'flies', 'strain', 'dusted with'], rows, [2]);
}

function qualityLines({ quality }: AnimalsAnswer): string[] {
  if (!quality || quality.calciumToPhosphorus === null) return [];
  const sentence = `Calcium to phosphorus of the week: ${quality.calciumToPhosphorus.toFixed(2)} to 1; 1.5 to 1 takes ${quality.carbonateMgPer100Flies.toFixed(1)} mg of calcium carbonate on 100 flies.`;
  return ['', ...wrapped(sentence)];
}
