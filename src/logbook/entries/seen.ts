/** A look into a cup: what is there and what was looked for in vain. */
import { amountWords, seenStages } from '../fold/facts.ts';
import { counted, details, entryKind, listed, nameOf } from './entry-kind.ts';
import { flyCount, key, listOf, word, yesNo } from './field-checks.ts';

const stages = listOf(word(seenStages), 4).optional();

export const seen = entryKind(
  'seen',
  {
    culture: key,
    present: stages,
    absent: stages,
    amount: word(amountWords).optional().describe('Adults in the cup, in a word'),
    count: flyCount.optional().describe('Adults in the cup, counted'),
    moisture: word(['wet', 'good', 'dry']).optional(),
    mould: yesNo.optional(),
    mites: yesNo.optional(),
    winged: flyCount.optional().describe('Flies seen that can fly'),
  },
  (e, names) =>
    `${nameOf(names, 'culture', e.culture)} looked at${details(
      e.present?.length ? `${listed(e.present)} there` : null,
      e.absent?.length ? `no ${listed(e.absent)} yet` : null,
      e.amount && `flies: ${e.amount}`,
      e.count !== undefined && `${counted(e.count, 'fly', 'flies')} counted`,
      e.moisture && (e.moisture === 'good' ? 'moisture good' : `too ${e.moisture}`),
      e.mould && 'mould',
      e.mites && 'mites',
      e.winged !== undefined && `${e.winged} winged`,
    )}.`,
  (e) => {
    const both = e.present?.filter((stage) => e.absent?.includes(stage)) ?? [];
    return both.length > 0
      ? [
          {
            field: 'absent',
            found: `${both.join(', ')} both present and absent`,
            expected: 'each stage in one of the two',
          },
        ]
      : [];
  },
);
