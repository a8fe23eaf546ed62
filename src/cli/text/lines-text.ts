/** Lines of cups and what threatens them, as text. */
import type { LinesAnswer, LineWarning } from '../../app/index.ts';
import { percent, table, wrapped } from './layout.ts';

export function linesText({ strains, warnings, quarantine }: LinesAnswer): string[] {
  return [
    ...warnings.flatMap(warningText),
    ...strains.flatMap(strainText),
    ...quarantine.flatMap(({ label, until, steps }) => [
      `${label} stays apart until ${until}:`,
      ...steps.flatMap(({ date, act }) => wrapped(act, `  ${date}  `)),
      '',
    ]),
  ];
}

export function warningText(warning: LineWarning): string[] {
  return [
    ...wrapped(`${warning.label}, ${warning.kind} (${warning.on}): ${warning.why}`, '! '),
    ...warning.outlooks.flatMap(outlookText),
    ...warning.todo.flatMap((act) => wrapped(act, '  - ')),
    ...(warning.lookAgainOn ? wrapped('look again at flies reared in the cool', `  ${warning.lookAgainOn}  `) : []),
    ...warning.steps.flatMap(({ date, act, why }) => wrapped(`${act} ${why}`, `  ${date}  `)),
    ...warning.contacts.map(
      ({ label, kinds, since }) => `  one contact away: ${label} (${kinds.join(', ')}, since ${since})`,
    ),
    '',
  ];
}

function outlookText({ assumption, wingedShare }: { assumption: string; wingedShare: number[] }): string[] {
  return wrapped(`${assumption}: ${wingedShare.map(percent).join(', ')} can fly in the next generations`, '    ');
}

function strainText({ strain, mutation, cups, advice, spread, joinCups }: LinesAnswer['strains'][number]): string[] {
  const living = cups.filter(({ ended }) => !ended);
  const rows = living.map(({ label, generation, effectiveFounders, lossShare }) => [
    label,
    String(generation),
    String(Math.round(effectiveFounders)),
    percent(lossShare),
  ]);
  return [
    `${strain} (mutation: ${mutation})`,
    ...table(['cup', 'generation', 'effective founders', 'variation lost'], rows, [1, 2, 3]),
    ...(advice ? wrapped(advice.why) : []),
    ...(spread.verdict === 'one mishap takes all' ? wrapped(spread.why) : []),
    ...(joinCups && advice?.verdict !== 'fine'
      ? wrapped(`Least related of the living cups: ${joinCups.join(' and ')}.`)
      : []),
    '',
  ];
}

interface Mixing {
  why: string;
  todo: string[];
  outlooks: { assumption: string; wingedShare: number[] }[];
}

export function mixingText({ why, todo, outlooks }: Mixing): string[] {
  return [...wrapped(why), ...outlooks.flatMap(outlookText), ...todo.flatMap((act) => wrapped(act, '- '))];
}
