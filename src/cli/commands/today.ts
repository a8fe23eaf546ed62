import { today } from '../../app/index.ts';
import { answerCommand } from '../answer-command.ts';
import { todayText } from '../text/today-text.ts';

export const command = answerCommand({
  usage: 'flylarder today [OPTIONS]',
  about: `What to do today and why, what comes up, and the state of each living cup.
Exit status 1: something wants your eye (a warning on a cup, a contradiction in
the logbook, or something to buy).`,
  options: ['scenarios', 'language', 'degrees'],
  answer: today,
  text: todayText,
  warns: ({ problems, warnings, cultures, jobs }) =>
    problems.length > 0 ||
    warnings.length > 0 ||
    cultures.some((cup) => cup.warnings.length > 0) ||
    jobs.some((job) => job.kind === 'buy'),
});
