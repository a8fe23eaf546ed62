/** The recipes to choose from. */
import { recipeBook } from '../../app/index.ts';
import { answerCommand } from '../answer-command.ts';
import { recipesText } from '../text/larder-text.ts';

export const command = answerCommand({
  usage: 'flylarder recipes [OPTIONS]',
  about: `Your own recipes and those to start with, by weight. Your own are recorded as
recipe entries.`,
  worksWithout: true,
  answer: (facts) => recipeBook(facts),
  text: recipesText,
  warns: () => false,
});
