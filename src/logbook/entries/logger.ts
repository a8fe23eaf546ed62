/**
 * How the files of one logger are read: what the keeper said once of files with these headings, so that
 * the next one is not asked about again.
 */
import { z } from 'zod';
import { said } from '../../foundation/index.ts';
import { entryKind, nameOf } from './entry-kind.ts';
import { key, line, word } from './field-checks.ts';

const heading = line(200);

export const logger = entryKind(
  'logger',
  {
    logger: key.describe('Made from the headings of its files'),
    headings: z.array(heading).min(1).max(200),
    place: key.optional().describe('The place that it measures'),
    time: heading.optional().describe('Heading of the column of the moment or the day'),
    clock: heading.optional().describe('Heading of the column of the time of day, when it has one of its own'),
    temperature: heading.optional().describe('Heading of the column of degrees'),
    timeOrder: word(['ymd', 'dmy', 'mdy', 'unixSeconds', 'unixMilliseconds', 'spreadsheetDays']).optional(),
    unit: word(['C', 'F', 'K']).optional(),
    timeZone: line(64).optional().describe("The logger's clock: a name of the IANA database, or an offset"),
  },
  (e, names) => {
    const headings = { list: [...e.headings.slice(0, 4), ...(e.headings.length > 4 ? ['…'] : [])] };
    return e.place === undefined
      ? said`Files with the headings ${headings} are a logger's.`
      : said`Files with the headings ${headings} are a logger's, at ${nameOf(names, 'place', e.place)}.`;
  },
);
