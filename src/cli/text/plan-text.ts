/** The plan, day by day, as text. */
import type { Job, PlanAnswer } from '../../app/index.ts';
import { datedJobs, datedJobsWithReasons } from './dated-jobs.ts';
import { longDay } from './day-text.ts';
import type { LabelBook } from './job-text.ts';
import { counted, chance, percent, wrapped } from './layout.ts';
import { nothingWanted } from './nothing-wanted.ts';

/** Feeding and its cups are in `today`; here they would drown the rest. */
export function planText(answer: PlanAnswer, labels: LabelBook): string[] {
  const jobs = answer.jobs.filter((job) => job.kind !== 'feed');
  const expected = jobs.filter((job) => job.firmness === 'expected');
  const head = [`Plan from ${longDay(answer.on)}, ${counted(answer.weeks, 'week')}, seed ${answer.seed}`, ''];
  if (Object.keys(answer.homeGrownFrom).length === 0) return [...head, ...nothingWanted()];
  return [
    ...head,
    ...section('Firm', firmLines(jobs, labels)),
    ...section('Expected, to be decided again', datedJobs(expected, labels)),
    ...summary(answer, labels),
    'Feeding jobs are in `flylarder today`; --json has all.',
  ];
}

function firmLines(jobs: readonly Job[], labels: LabelBook): string[] {
  return datedJobsWithReasons(
    jobs.filter((job) => job.firmness === 'firm'),
    labels,
  );
}

function section(title: string, lines: string[]): string[] {
  return lines.length === 0 ? [] : [title, ...lines, ''];
}

function summary(answer: PlanAnswer, labels: LabelBook): string[] {
  const about = (n: number, what: string) => counted(Math.round(n), what);
  const bought = answer.boughtCultures >= 0.5 ? ` and ${about(answer.boughtCultures, 'bought cup')}` : '';
  const worst = answer.worstDay ? ` on ${longDay(answer.worstDay)}` : '';
  const first = Object.entries(answer.homeGrownFrom).flatMap(([strain, date]) =>
    date ? [`Cups started from now on give ${labels.strain(strain)} from ${longDay(date)}.`] : [],
  );
  return [
    ...answer.warnings.flatMap((warning) => wrapped(warning)),
    ...wrapped(
      `About ${about(answer.culturesPlanned, 'cup')}${bought} in ${about(answer.sessionsPlanned, 'session')}; ` +
        gapText(answer),
    ),
    ...wrapped(
      `The worst day is ${chance(answer.worstDayServiceLevel, answer.scenarios)} safe${worst}; ` +
        `${answer.expectedShortfallDays.toFixed(2)} short days expected. ${shortfallText(answer)}`,
    ),
    ...answer.groups.flatMap((group) => wrapped(groupText(group, labels.strain(group.strain), answer.scenarios), '  ')),
    ...first.flatMap((text) => wrapped(text)),
  ];
}

/** The chance of no shortfall by span, and what one is like. */
function shortfallText({ noShortfall, shortfall, scenarios }: PlanAnswer): string {
  const chances = noShortfall.map(
    ({ weeks, chance: share }) => `${chance(share, scenarios)} over ${counted(weeks, 'week')}`,
  );
  const { meanMissingShare, runDays } = shortfall;
  const size =
    runDays.mean > 0
      ? ` One takes ${percent(meanMissingShare)} of a day's flies and lasts ${runDays.mean.toFixed(1)} days, mean.`
      : '';
  return `Chance of no shortfall at all: ${chances.join(', ')}.${size}`;
}

function groupText(group: PlanAnswer['groups'][number], strain: string, scenarios: number): string {
  const patience = group.canWaitDays === 0 ? "can't wait" : `can wait ${counted(group.canWaitDays, 'day')}`;
  const worst = group.worstDay
    ? `worst ${longDay(group.worstDay)}, ${chance(group.worstDayServiceLevel, scenarios)} safe`
    : 'never short';
  return `${group.name} (${strain}, ${patience}): ${worst}; ${group.expectedShortfallDays.toFixed(2)} rations missed in all.`;
}

/** Where the cups beyond the bound go: what is not known, and what no plan can avoid or this one did not find. */
function gapText({ lowerBoundCultures, culturesUnderCertainty, culturesPlanned, boughtCultures }: PlanAnswer): string {
  const bound = `no plan can do with fewer than ${counted(Math.ceil(lowerBoundCultures), 'cup')}, a bound that knows neither deaths nor whole cups.`;
  if (culturesUnderCertainty === null) return bound;
  const certain = Math.round(culturesUnderCertainty);
  const price = Math.round(culturesPlanned + boughtCultures - culturesUnderCertainty);
  const known = `Were nothing uncertain, the same rules would need ${certain}`;
  return price > 0 ? `${bound} ${known}: not knowing costs about ${price}.` : `${bound} ${known}.`;
}
