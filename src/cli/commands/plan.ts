import { plan } from '../../app/index.ts';
import { answerCommand } from '../answer-command.ts';
import { planText } from '../text/plan-text.ts';

export const command = answerCommand({
  usage: 'flylarder plan [OPTIONS]',
  about: `The dated jobs that keep the supply unbroken: what to start, from which cup, what
to buy, and how sure each day is then. Exit status 1: something has to be bought.`,
  options: ['weeks', 'scenarios'],
  answer: plan,
  text: planText,
  warns: ({ jobs }) => jobs.some((job) => job.kind === 'buy'),
});
