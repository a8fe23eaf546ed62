/** A look into a cup: what is there and what was looked for in vain. */
import { type Said, said } from '../../foundation/index.ts';
import { amountWords, type SeenStage, seenStages } from '../fold/facts.ts';
import { entryKind, nameOf } from './entry-kind.ts';
import { amountSaid, detailed, fliesSaid, listed, stageSaid } from './entry-words.ts';
import { flyCount, key, listOf, word, yesNo } from './field-checks.ts';

const stages = listOf(word(seenStages), 4).optional();

const moistures = ['wet', 'good', 'dry'] as const;
const moistureSaid: Record<(typeof moistures)[number], Said> = {
  wet: said`too wet`,
  good: said`moisture good`,
  dry: said`too dry`,
};

export const seen = entryKind(
  'seen',
  {
    culture: key,
    present: stages,
    absent: stages,
    amount: word(amountWords).optional().describe('Adults in the cup, in a word'),
    count: flyCount.optional().describe('Adults in the cup, counted'),
    moisture: word(moistures).optional(),
    mould: yesNo.optional(),
    mites: yesNo.optional(),
    winged: flyCount.optional().describe('Flies seen that can fly'),
  },
  (e, names) =>
    detailed(
      said`${nameOf(names, 'culture', e.culture)} looked at`,
      e.present?.length ? said`${stagesSaid(e.present)} there` : null,
      e.absent?.length ? said`no ${stagesSaid(e.absent)} yet` : null,
      e.amount && amountSaid[e.amount],
      e.count !== undefined && said`${fliesSaid(e.count)} counted`,
      e.moisture && moistureSaid[e.moisture],
      e.mould && said`mould`,
      e.mites && said`mites`,
      e.winged !== undefined && said`${e.winged} winged`,
    ),
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

function stagesSaid(stages: readonly SeenStage[]) {
  return listed(stages.map((stage) => stageSaid[stage])) ?? '';
}
