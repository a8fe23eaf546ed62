/** The plan as a calendar file. */
import { calendar, plan } from '../../app/index.ts';
import { writeDocument } from '../document.ts';
import { given } from '../given-options.ts';
import { householdCommand } from '../household-command.ts';
import { now } from '../shell.ts';

/** How long a job at a time of day is shown to take. */
const jobMinutes = 30;

export const command = householdCommand({
  usage: 'flylarder calendar [OPTIONS] > flylarder.ics',
  about: `The plan's jobs as an iCalendar file for a phone or a desk calendar. While the
server runs, a calendar on this computer can subscribe to /api/v1/calendar.ics.`,
  options: ['weeks', 'with-feeding', 'at', 'language', 'link', 'out'],
  run: async (facts, question, { options }) => {
    const { language, link: linkBase, at } = options;
    // The jobs are the plan's whatever it promises: one scenario is enough.
    const { jobs } = plan(facts, { ...question, scenarios: 1 });
    const text = calendar(facts, jobs, {
      on: question.on,
      madeAt: now(),
      withFeeding: options['with-feeding'] === true,
      ...given({ language, linkBase, at: at && { ...at, takesMinutes: jobMinutes } }),
    });
    return text.ok ? writeDocument(text.value, 'The calendar', options) : text;
  },
});
