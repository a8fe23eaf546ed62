/** What spoils a line, found in the facts: mixed strains, winged flies, mites and mould near other cups. */
import { type Day, dayFromNumber, dayNumber, said } from '../../foundation/index.ts';
import type { CultureFacts, SeenFact } from '../../logbook/index.ts';
import { contactsOf, type TracedCup } from '../../strains/index.ts';
import type { HouseholdModel } from '../household-model.ts';
import type { SaidWarning } from './line-said.ts';
import type { LineContext } from './line-context.ts';
import { mixedStrains } from './mixed-warning.ts';
import { nothingMore } from './rescue-circumstances.ts';
import { wingedFlies } from './winged-warning.ts';

/** Things seen longer ago than this are over, for good or ill. */
const freshDays = 45;

/** Warnings of one cup, the gravest first. */
export function warningsOf(context: LineContext, culture: CultureFacts): SaidWarning[] {
  const { model } = context;
  if (culture.ended && dayNumber(culture.ended.on) < model.today - freshDays) return [];
  const winged = latest(model, culture, (seen) => (seen.winged ?? 0) > 0);
  const mites = latest(model, culture, (seen) => seen.mites);
  const mould = latest(model, culture, (seen) => seen.mould);
  return [
    ...(culture.ended ? [] : mixedStrains(context, culture)),
    ...(winged && !culture.ended ? [wingedFlies(context, culture, winged.on)] : []),
    ...(mites ? [nearby(context, culture, mites.on, 'mites')] : []),
    ...(mould ? [nearby(context, culture, mould.on, 'mould')] : []),
  ];
}

function latest(
  model: HouseholdModel,
  { seen }: CultureFacts,
  test: (seen: SeenFact) => boolean,
): SeenFact | undefined {
  return seen.findLast(
    (one) => test(one) && dayNumber(one.on) >= model.today - freshDays && dayNumber(one.on) <= model.today,
  );
}

/** Mites or mould seen in a cup on a day: the living cups one contact away. */
export function nearby(
  { model, byKey }: LineContext,
  culture: CultureFacts,
  on: Day,
  kind: 'mites' | 'mould',
): SaidWarning {
  const contacts = contactsOf(model.facts.cultures.map(traced), culture.culture, dayNumber(on)).filter(
    ({ cup }) => byKey.get(cup)?.ended === null,
  );
  return {
    ...nothingMore,
    kind,
    culture: culture.culture,
    label: culture.label,
    on,
    why:
      kind === 'mites'
        ? said`Mites walk from cup to cup and ride on flies and tools.`
        : said`Mould spreads by spores and by flies that are carried over.`,
    todo: [
      said`Throw the cup out, closed, and take no founders from it.`,
      said`Look closely at the cups one contact away before they give founders; keep them apart until they are clean.`,
    ],
    contacts: contacts.map(({ cup, kinds, sinceDay }) => ({
      culture: cup,
      label: byKey.get(cup)?.label ?? cup,
      kinds,
      since: dayFromNumber(sinceDay),
    })),
  };
}

function traced(culture: CultureFacts): TracedCup {
  return {
    cup: culture.culture,
    parents: culture.fromCultures,
    startedOn: dayNumber(culture.on),
    endedOn: culture.ended ? dayNumber(culture.ended.on) : null,
    places: culture.places.map(({ from, place }) => ({ from: dayNumber(from), place })),
    batch: culture.batch,
  };
}
