/** The household's strains side by side: pace, size, yield and dates at their usual place, and their mutation. */
import { ordinaryFounderAge } from '../biology/index.ts';
import { type Day, dayFromNumber } from '../foundation/index.ts';
import type { Facts } from '../logbook/index.ts';
import { publishedMutations, strainKeys, strainLife } from '../reference/index.ts';
import { flySizeNow } from './animals/fly-size.ts';
import {
  hourlyAt,
  householdModel,
  type HouseholdModel,
  type StrainModel,
  usualContainer,
  usualPlace,
} from './household-model.ts';
import type { StrainBook } from './lines/strain-book-answer.ts';
import { mutationOf } from './lines/strain-genetics.ts';
import { nominalAt } from './nominal-cup.ts';

const horizonDays = 1;
const hoursOfMonth = 24 * 30;

/** Ages are those of a cup started on `on` with the usual founders and medium, by the books and the keeper's corrections. */
export function strainBook(facts: Facts, { on }: { on: Day }): StrainBook {
  const model = householdModel(facts, on, horizonDays);
  return {
    on,
    strains: facts.strains.flatMap(({ strain }) => {
      const known = model.strains.get(strain);
      return known ? [entryOf(model, known)] : [];
    }),
    bases: strainKeys().flatMap((base) => {
      const life = strainLife(base);
      return life ? [{ base, name: life.name, species: life.species }] : [];
    }),
    mutations: publishedMutations
      .filter(({ effect }) => effect === 'flightless')
      .map(({ symbol, name, chromosome, position, dominance, lethalHomozygous, source, status }) => ({
        symbol,
        name,
        chromosome,
        position,
        dominance,
        lethalHomozygous,
        source,
        status,
      })),
  };
}

function entryOf(model: HouseholdModel, known: StrainModel): StrainBook['strains'][number] {
  const { facts, life } = known;
  const place = usualPlace(model, facts.strain);
  const container = usualContainer(model.facts, facts.strain);
  const conditions = {
    founders: container.founders,
    founderAgeDays: ordinaryFounderAge(life),
    mediumMassG: container.mediumMassG,
    surfaceCm2: container.surfaceCm2,
  };
  const on = dayFromNumber(model.today);
  const { course, dates } = nominalAt(model, known, [{ from: on, place }], model.today, conditions);
  const temperatureC = meanAheadC(model, place);
  const emerged = course.emerged.subarray(0, Math.floor(dates.spent));
  const mass = flySizeNow(model.facts, facts.strain, on, temperatureC)?.nowMg ?? null;
  return {
    strain: facts.strain,
    name: facts.name,
    base: facts.base,
    mutation: mutationOf(facts),
    paceFactor: facts.paceFactor,
    yieldFactor: facts.yieldFactor,
    massFactor: facts.massFactor,
    livingCups: model.facts.cultures.filter((c) => c.strain === facts.strain && c.ended === null).length,
    place,
    temperatureC,
    firstFliesDays: dates.firstAdults,
    foundersFromDays: dates.founderFrom,
    foundersUntilDays: dates.founderUntil,
    spentDays: dates.spent,
    fliesPerCup: emerged.reduce((sum, flies) => sum + flies, 0),
    flyMassMg: mass,
  };
}

/** Mean of the coming month at a place, C. */
function meanAheadC(model: HouseholdModel, place: string): number {
  const from = 24 * (model.today - model.firstDay);
  const month = hourlyAt(model, place).subarray(from, from + hoursOfMonth);
  return month.reduce((sum, c) => sum + c, 0) / month.length;
}
