/** The household's strains side by side. */
import { strainBook } from '../../app/index.ts';
import { answerCommand } from '../answer-command.ts';
import { strainsText } from '../text/strains-text.ts';

export const command = answerCommand({
  usage: 'flylarder strains [OPTIONS]',
  about: `The strains that you keep: dates and yield of a cup started now where they stand,
the mass of a fly, and the mutation that keeps them from flying.`,
  answer: strainBook,
  text: strainsText,
  warns: () => false,
});
