/** What spoils a line, found in the facts: mixed strains, winged flies, mites and mould near other cups. */
import { type Day, dayFromNumber, dayNumber } from '../../foundation/index.ts';
import type { CultureFacts, SeenFact, StrainFacts } from '../../logbook/index.ts';
import { publishedMutations, publishedVirginWindows, publishedWingEffects } from '../../reference/index.ts';
import {
  type Competitor,
  contactsOf,
  contamination,
  mixingAdvice,
  rescueFromStranger,
  takeover,
  type TracedCup,
  virginWindowHours,
  wingCheck,
} from '../../strains/index.ts';
import type { HouseholdModel } from '../household-model.ts';
import { generationOf } from './generation-time.ts';
import type { LineWarning } from './line-answer.ts';

/** Things seen longer ago than this are over, for good or ill. */
const freshDays = 45;
const generationsShown = 6;
/** Flies looked at in each check of a rescue, and virgins taken. */
const usualRescue = { fliesLookedAt: 200, founders: { females: 20, males: 20 } };

/** The household with its cups by key, made once for all of them. */
export interface LineContext {
  model: HouseholdModel;
  byKey: ReadonlyMap<string, CultureFacts>;
}

/** Warnings of one cup, the gravest first. */
export function warningsOf(context: LineContext, culture: CultureFacts): LineWarning[] {
  const { model } = context;
  if (culture.ended && dayNumber(culture.ended.on) < model.today - freshDays) return [];
  const winged = latest(model, culture, (seen) => (seen.winged ?? 0) > 0);
  const mites = latest(model, culture, (seen) => seen.mites);
  const mould = latest(model, culture, (seen) => seen.mould);
  return [
    ...(culture.ended ? [] : mixedStrains(context, culture)),
    ...(winged && !culture.ended ? [wingedFlies(model, culture, winged.on)] : []),
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

const nothing = { outlooks: [], steps: [], contacts: [] };

/** One warning for each other strain that the cup's founders came from. */
function mixedStrains({ model, byKey }: LineContext, culture: CultureFacts): LineWarning[] {
  const { facts } = model;
  const parents = culture.fromCultures.flatMap((key) => byKey.get(key) ?? []);
  const others = [...new Set(parents.map(({ strain }) => strain))].filter((strain) => strain !== culture.strain);
  return others.flatMap((other) => {
    const [own, stranger] = [culture.strain, other].map((key) => facts.strains.find(({ strain }) => strain === key));
    return own && stranger ? [mixedWith(model, culture, own, stranger)] : [];
  });
}

function mixedWith(model: HouseholdModel, culture: CultureFacts, own: StrainFacts, other: StrainFacts): LineWarning {
  const place = { culture: culture.culture, label: culture.label, on: culture.on };
  const toMix = ({ strain, name, base, mutation }: StrainFacts) => ({
    strain: name || strain,
    species: base,
    locus: mutation,
  });
  const input = { first: toMix(own), second: toMix(other), generations: generationsShown, loci: publishedMutations };
  const advice = mixingAdvice(input);
  if (!advice.ok) {
    // A mutation that the tables do not have is answered as an unknown one.
    const unknown = mixingAdvice({
      ...input,
      first: { ...input.first, locus: 'unknown' },
      second: { ...input.second, locus: 'unknown' },
    });
    return { ...nothing, ...place, kind: 'mixed strains', ...(unknown.ok ? unknown.value : { why: '', todo: [] }) };
  }
  const { verdict, outlooks, why, todo } = advice.value;
  if (verdict !== 'two species') return { ...nothing, ...place, kind: 'mixed strains', why, todo, outlooks };
  const race = speciesRace(model, culture, own, other);
  return {
    ...nothing,
    ...place,
    kind: 'two species',
    why: race ? `${why} Here that is ${race.winner}.` : why,
    todo: race?.todo ?? todo,
  };
}

function speciesRace(model: HouseholdModel, culture: CultureFacts, own: StrainFacts, other: StrainFacts) {
  const competitor = (strain: StrainFacts): Competitor | null => {
    const days = generationOf(model, strain.strain, culture);
    if (days === null) return null;
    return {
      name: strain.name || strain.strain,
      founders: Math.max(1, culture.founders / 2),
      generationDays: days.generationDays,
      offspringPerFounder: offspringPerFounder,
      firstEmergenceDay: days.eggToAdultDays,
    };
  };
  const [first, second] = [competitor(own), competitor(other)];
  return first && second ? takeover(first, second, 60) : null;
}

/** Grown offspring of one founder in a good cup: some hundreds of flies from 50 (common practice). */
const offspringPerFounder = 10;

function wingedFlies(model: HouseholdModel, culture: CultureFacts, on: Day): LineWarning {
  const { facts } = model;
  const mutation = facts.strains.find(({ strain }) => strain === culture.strain)?.mutation ?? 'unknown';
  const { temperatureC, generationDays } = circumstances(model, culture);
  const seenOn = dayNumber(on);
  const check = wingCheck({
    symbol: mutation,
    rearedC: temperatureC,
    methylparabenPercent: null,
    onDay: seenOn,
    coolGenerationDays: generationDays,
    effects: publishedWingEffects,
  });
  const windows = publishedVirginWindows.filter(({ species }) => species === 'melanogaster');
  const rescue = rescueFromStranger({
    ...usualRescue,
    onDay: model.today,
    generationDays,
    virginWindowHours: virginWindowHours(windows, Math.min(29, Math.max(10, temperatureC))),
  });
  const waits = check.verdict === 'condition explains it';
  return {
    kind: 'winged flies',
    culture: culture.culture,
    label: culture.label,
    on,
    why: waits
      ? `It grew up at ${temperatureC.toFixed(0)} C, where this mutant's wings grow longer: ${check.effects.map(({ effect }) => effect).join('; ')}.`
      : 'A winged fly in a flightless line is most likely a stranger, and its wild form of the gene stays for ever unless it is taken out.',
    todo: waits
      ? check.todo
      : ['Throw the cup out if you have another of the line; else isolate it and follow the steps.', ...check.todo],
    outlooks: [
      { assumption: 'one wild male among the founders, nothing done', wingedShare: strangerOutlook(culture, mutation) },
    ],
    steps: waits
      ? []
      : rescue.steps.map(({ onDay, generation, act, why }) => ({ date: dayFromNumber(onDay), generation, act, why })),
    contacts: [],
  };
}

function circumstances(model: HouseholdModel, culture: CultureFacts) {
  const days = generationOf(model, culture.strain, culture);
  return days ?? { temperatureC: 23, generationDays: 14, eggToAdultDays: 11 };
}

/** Winged share by generation from one wild male, the mutation unknown being taken as a recessive. */
function strangerOutlook({ founders }: CultureFacts, mutation: string): number[] {
  const known = publishedMutations.find(({ symbol }) => symbol === mutation);
  const symbol = known && known.dominance === 'recessive' ? known.symbol : 'u1';
  const half = Math.max(1, Math.round(founders / 2));
  const result = contamination({
    line: { female: `${symbol}/${symbol}`, male: known?.chromosome === 'X' ? `${symbol}/Y` : `${symbol}/${symbol}` },
    founders: { females: half, males: half },
    stranger: { kind: 'male', female: '+/+', male: '+/+' },
    generations: generationsShown,
    loci: publishedMutations,
  });
  return result.ok ? result.value.generations.map(({ wingedShare }) => wingedShare) : [];
}

function nearby({ model, byKey }: LineContext, culture: CultureFacts, on: Day, kind: 'mites' | 'mould'): LineWarning {
  const { facts } = model;
  const contacts = contactsOf(facts.cultures.map(traced), culture.culture, dayNumber(on)).filter(
    ({ cup }) => byKey.get(cup)?.ended === null,
  );
  return {
    ...nothing,
    kind,
    culture: culture.culture,
    label: culture.label,
    on,
    why:
      kind === 'mites'
        ? 'Mites walk from cup to cup and ride on flies and tools.'
        : 'Mould spreads by spores and by flies that are carried over.',
    todo: [
      'Throw the cup out, closed, and take no founders from it.',
      'Look closely at the cups one contact away before they give founders; keep them apart until they are clean.',
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
