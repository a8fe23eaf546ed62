/** The day's jobs and the shelf, as text. */
import type { CultureToday, Job, TodayAnswer } from '../../app/index.ts';
import { datedJobs } from './dated-jobs.ts';
import { bareDay, longDay } from './day-text.ts';
import { jobSentence, type LabelBook } from './job-text.ts';
import { bandText, table, wrapped } from './layout.ts';

export function todayText(answer: TodayAnswer, labels: LabelBook): string[] {
  return [
    `${longDay(answer.on)} - ${answer.household}`,
    '',
    ...alarms(answer),
    ...jobsToday(answer, labels),
    ...jobsSoon(answer, labels),
    ...shelf(answer, labels),
    ...answer.problems.flatMap((p) => wrapped(`${p.where}: found ${p.found}; expected ${p.expected}`, '! ')),
  ];
}

function alarms({ warnings }: TodayAnswer): string[] {
  return warnings.length > 0 ? [...warnings.flatMap((text) => wrapped(text, '! ')), ''] : [];
}

function jobsToday(answer: TodayAnswer, labels: LabelBook): string[] {
  if (answer.jobs.length === 0) return ['Nothing to do today.', ''];
  const jobs = answer.jobs.flatMap((job) => [
    ...wrapped(jobSentence(job, labels), '  * '),
    ...wrapped(job.why, '    '),
    ...commandFor(job),
  ]);
  return ['To do today', ...jobs, ''];
}

/** What writes a move or a parcel down, to be copied. */
function commandFor({ kind, cultures = [], place, date, ...job }: Job): string[] {
  if (kind === 'buy') return orderCommands(date, job);
  if (kind === 'receive') return parcelCommands(date, job);
  if (kind !== 'move' || place === undefined) return [];
  return cultures.map((cup) => `    flylarder record moved culture=${cup} place=${place} on=${date}`);
}

type Parcel = Pick<Job, 'strain' | 'cups' | 'boughtStage' | 'arrives' | 'purchase'>;

function orderCommands(date: string, { strain, cups, boughtStage, arrives }: Parcel): string[] {
  const what = `strain=${strain} cups=${cups} stage=${boughtStage} arrives=${arrives} on=${date}`;
  return [`    Ordered: flylarder record purchase purchase=${strain}-${boughtStage}-${arrives} ${what}`];
}

/** Two answers: it came, or it will not. */
function parcelCommands(date: string, { strain, arrives, purchase }: Parcel): string[] {
  if (purchase === undefined) return [];
  return [
    `    Came, for each cup: flylarder record bought culture=LABEL strain=${strain} ageDays=DAYS purchase=${purchase} on=${date}`,
    `    Cancelled: flylarder record purchase purchase=${purchase} strain=${strain} cups=0 arrives=${arrives}`,
  ];
}

/** Feeding goes on every day and would drown the rest. */
function jobsSoon(answer: TodayAnswer, labels: LabelBook): string[] {
  const jobs = answer.soon.filter((job) => job.kind !== 'feed');
  if (jobs.length === 0) return [];
  return ['Coming up, beside feeding', ...datedJobs(jobs, labels), ''];
}

function shelf(answer: TodayAnswer, labels: LabelBook): string[] {
  if (answer.cultures.length === 0) return [...noCups(answer), ''];
  const strains = [...new Set(answer.cultures.map((cup) => cup.strain))];
  return strains.flatMap((strain) => strainShelf(answer, strain, labels));
}

/** What is not written down yet: cups that run or came, what was ordered, and the animals where none are known. */
function noCups({ wantedFlies }: TodayAnswer): string[] {
  const animals = Object.keys(wantedFlies).length > 0 ? '' : ' Record your animals with `flylarder record group`.';
  return wrapped(
    'No cups yet. Record one that is running with `flylarder record started culture=M1 strain=melanogaster founders=50 ' +
      'on=DATE`, what you have ordered with `flylarder record purchase`, and each cup that came with `flylarder record ' +
      `bought\`.${animals} See \`flylarder plan\` for what to buy.`,
  );
}

function strainShelf(answer: TodayAnswer, strain: string, labels: LabelBook): string[] {
  const cups = answer.cultures.filter((cup) => cup.strain === strain);
  const head = ['cup', 'age', 'stage', 'flies (5-95 %)', 'next', 'throw out'];
  const rows = cups.map((cup) => [
    cup.label,
    `${cup.ageDays} d`,
    cup.stage,
    bandText(cup.onHandFlies),
    nextEvent(cup),
    bareDay(cup.spentOn),
  ]);
  const warnings = cups.flatMap((cup) => cup.warnings.flatMap((text) => wrapped(`${cup.label}: ${text}`, '! ')));
  return [...wrapped(strainLine(answer, strain, labels)), ...table(head, rows, [1]), ...warnings, ''];
}

function strainLine(answer: TodayAnswer, strain: string, labels: LabelBook): string {
  const onHand = answer.onHandFlies[strain];
  const wanted = Math.round(answer.wantedFlies[strain] ?? 0);
  return `${labels.strain(strain)}: ${wanted} flies wanted today, ${onHand ? bandText(onHand) : 'none'} on hand`;
}

function nextEvent(cup: CultureToday): string {
  const next = cup.nextEvents[0];
  return next ? `${next.event} ${bareDay(next.p50)}` : '';
}
