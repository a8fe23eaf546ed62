/** Labels for cups, as a page that prints. */
import { labels } from '../../app/index.ts';
import { ok } from '../../foundation/index.ts';
import { writeDocument } from '../document.ts';
import { exitStatus } from '../exit-status.ts';
import { given } from '../given-options.ts';
import { householdCommand } from '../household-command.ts';
import { counted } from '../text/layout.ts';
import { printJson } from '../text/print.ts';

export const command = householdCommand({
  usage: 'flylarder labels [CUP ...] [OPTIONS] > labels.html',
  about: `Labels for the cups named, or for all living ones, as an HTML page that prints:
name, dates and a QR code that opens the cup.`,
  options: ['sheet', 'skip', 'link', 'language', 'out', 'json'],
  mostWords: 1000,
  run: async (facts, question, { words, options }) => {
    const { sheet, skip, link: linkBase, language } = options;
    const cultures = words.length > 0 ? words : undefined;
    const answer = labels(facts, { ...question, ...given({ cultures, sheet, skip, linkBase, language }) });
    if (!answer.ok) return answer;
    if (!options.json) return writeDocument(answer.value.html, counted(answer.value.labels.length, 'label'), options);
    printJson(answer.value);
    return ok(exitStatus.done);
  },
});
