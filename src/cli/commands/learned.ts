import { type Learned, learned } from '../../app/index.ts';
import { answerCommand } from '../answer-command.ts';
import { learnedText } from '../text/learned-text.ts';

export const command = answerCommand<Learned[]>({
  usage: 'flylarder learned [OPTIONS]',
  about: `What your own logbook has taught: each strain's pace, yield and failures beside
the books, with their bands.`,
  answer: learned,
  text: learnedText,
  warns: () => false,
});
