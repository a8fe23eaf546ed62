import { forecast } from '../../app/index.ts';
import { answerCommand } from '../answer-command.ts';
import { forecastText } from '../text/forecast-text.ts';

export const command = answerCommand({
  usage: 'flylarder forecast [OPTIONS]',
  about: `Flies wanted, emerging and on hand on each of the coming days, with the 5 to
95 % band, and how sure each day is. Exit status 1: some day is less sure than
you asked for.`,
  options: ['weeks', 'scenarios'],
  answer: forecast,
  text: forecastText,
  warns: ({ firstRiskyDay }) => firstRiskyDay !== null,
});
