/** Costs and yield over time, from the household's own log. */
import { ledger } from '../../app/index.ts';
import { answerCommand } from '../answer-command.ts';
import { ledgerText } from '../text/ledger-text.ts';

export const command = answerCommand({
  usage: 'flylarder ledger [OPTIONS]',
  about: `Costs and yield week by week: cups begun, medium, money, flies taken, flies thrown
out. Money comes from the prices in stock entries.`,
  answer: ledger,
  text: ledgerText,
  warns: () => false,
});
