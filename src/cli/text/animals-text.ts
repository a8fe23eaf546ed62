/** The animals' need, as text. */
import type { AnimalsAnswer } from '../../app/index.ts';
import { bandText, table, wrapped } from './layout.ts';

export function animalsText(answer: AnimalsAnswer): string[] {
  return [
    ...answer.cautions.flatMap((caution) => wrapped(caution, '! ')),
    ...(answer.cautions.length > 0 ? [''] : []),
    ...groupTable(answer),
    '',
    ...answer.groups.flatMap(groupLines),
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

/** A group's ration with its reasons, its stages, and its weight. */
function groupLines(group: AnimalsAnswer['groups'][number]): string[] {
  const { name, count, ration, stages, weight, moult, prey } = group;
  if (count === 0 || !ration) return [];
  const { flies, mg, why } = ration;
  const each = `${short(flies.middle)} flies each (${short(flies.low)}-${short(flies.high)}), ${short(mg.middle)} mg`;
  const next = stages.find(({ overdue }) => !overdue);
  const sentences: (string | null)[] = [
    ...why,
    next ? stageSentence(next) : null,
    moult ? `Near a moult from ${moult.from} to ${moult.until}: feed only those that hunt.` : null,
    prey
      ? `${short(prey.lengthMm)} mm long, prey up to ${short(prey.limitMm)} mm: ${prey.fly ?? 'no adult fly'}.`
      : null,
    weight && weight.verdict !== 'too few weighings' ? weight.why : null,
  ];
  const more = sentences.filter((one) => one !== null).join(' ');
  return [...wrapped(`${name}: ${each}.`), ...(more === '' ? [] : wrapped(more, '  ')), ''];
}

function stageSentence({
  name,
  begins,
  strain,
  planned,
  flyIsKept,
}: AnimalsAnswer['groups'][number]['stages'][number]) {
  const dates = `${begins.earliest} to ${begins.latest}`;
  if (planned === null) return `${name} from ${dates}.`;
  return `${name} from ${dates}: ${short(planned)} ${strain ?? ''} each${flyIsKept ? '' : ', for want of larger flies'}.`;
}

function short(value: number): string {
  return String(Number(value.toPrecision(value < 10 ? 2 : 3)));
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
  const rows = week.map(({ date, name, flies, mg, strain, supplements, nearMoult, fed }) => [
    date,
    name,
    String(Math.round(flies)),
    String(Math.round(mg)),
    strain,
    [...supplements, ...(nearMoult ? ['near a moult'] : []), ...(fed ? ['done'] : [])].join(', '),
  ]);
  return table(['feeding', 'animals', 'flies', 'mg', 'strain', 'dusted with'], rows, [2, 3]);
}

function qualityLines({ quality, qualityAsFed, dustStaysHours }: AnimalsAnswer): string[] {
  if (!quality || quality.calciumToPhosphorus === null) return [];
  const sentence = `Calcium to phosphorus of the week: ${quality.calciumToPhosphorus.toFixed(2)} to 1; 1.5 to 1 takes ${quality.carbonateMgPer100Flies.toFixed(1)} mg of calcium carbonate on 100 flies.`;
  const { low, high } = dustStaysHours;
  const late = `Dust is groomed off within ${low} to ${high} h${
    quality.lateCalciumToPhosphorus === null
      ? ''
      : `; flies eaten after ${quality.lateHours} h bring ${quality.lateCalciumToPhosphorus.toFixed(2)} to 1`
  }.`;
  const asFed = qualityAsFed?.calciumToPhosphorus;
  const fed = typeof asFed === 'number' ? [`As fed in the past week: ${asFed.toFixed(2)} to 1.`] : [];
  return ['', ...wrapped([sentence, late, ...fed].join(' '))];
}
