import { forecast } from '../../app/index.ts';
import { answerCommand } from '../answer-command.ts';
import { forecastText } from '../text/forecast-text.ts';

export const command = answerCommand({
  usage: 'flylarder forecast [OPTIONS]',
  about: `Flies wanted, emerging and on hand on each of the coming days, with the 5 to
95 % band, and how sure each day is. Exit status 1: some day is less sure than
you asked for. The plan's jobs are counted as done, and decided again as the
keeper will; --nothing-new shows what is there without them.`,
  options: ['weeks', 'scenarios', 'nothing-new', 'language', 'degrees'],
  answer: (facts, question, options) =>
    forecast(facts, { ...question, starts: options['nothing-new'] ? 'nothing' : 'policy' }),
  text: (answer, labels, options) => forecastText(answer, labels, options['nothing-new'] === true),
  warns: ({ firstRiskyDay }) => firstRiskyDay !== null,
});
