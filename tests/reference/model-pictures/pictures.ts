/** The pictures of docs/models, drawn from the code beside the published points. */
import {
  adultSurvival,
  bestFounders,
  cultureCourse,
  degreeDay,
  eggsPerFemaleDay,
  failureCourse,
  type HarvestRule,
  type LogisticRate,
  logistic,
  paceTable,
  type StrainLife,
  taylor,
  type TaylorRate,
  type DegreeDayRate,
} from '../../../src/biology/index.ts';
import { hourlyTemperatureC, temperatureSdC } from '../../../src/climate/index.ts';
import { day, dayNumber } from '../../../src/foundation/index.ts';
import { publishedRows, rateSet, strainLife } from '../../../src/reference/index.ts';
import keptEmergence from '../linear-chain/emergence.csv?raw';
import { chainConditions, chainStrain, parameter } from '../linear-chain/chain-strain.ts';
import { emergenceSpread } from './emergence-spread.ts';
import { mites } from './mites.ts';
import { drawPlot, type Plot } from './plot.ts';
import { blue, constant, days, green, grey, line, range, red } from './series.ts';

const melanogaster = strainLife('melanogaster') as StrainLife;
const hydei = strainLife('hydei') as StrainLife;
const cup = { founders: 50, founderAgeDays: 4, mediumMassG: 180, surfaceCm2: 85 };
const daily: HarvestRule = { everyDays: 1, share: 0.5, fromAgeDays: null };
/** File name in docs/models, and the picture's SVG text. */
export function modelPictures(): Map<string, string> {
  return new Map(
    Object.entries({
      'development.svg': development(),
      'emergence-spread.svg': emergenceSpread(),
      'adult-survival.svg': survival(),
      'laying.svg': laying(),
      'culture-course.svg': course(),
      'linear-chain.svg': chain(),
      'founders.svg': founders(),
      'moisture.svg': moisture(),
      'failure.svg': failure(),
      'mites.svg': mites(),
      'fly-mass.svg': mass(),
      'temperature.svg': temperature(),
    }).map(([file, plot]) => [file, drawPlot(plot)]),
  );
}

function development(): Plot {
  const linear = rateSet('linear', 'jarosik-median').parameters as unknown as DegreeDayRate;
  const bell = rateSet('taylor', 'taylor-1').parameters as unknown as TaylorRate;
  const egg = rateSet('logistic', 'davidson-egg').parameters as unknown as LogisticRate;
  const pupa = rateSet('logistic', 'davidson-pupa').parameters as unknown as LogisticRate;
  const davidson = (t: number) => (1 / logistic(egg, t) / 24 + 1 / logistic(pupa, t)) / 0.564;
  const temperatures = range(14, 31, 0.25);
  const bonnier = publishedRows('bonnier-1926').map(
    (row) => [row.temperatureC, ((row.eggToPupaHours as number) + (row.pupaHours as number)) / 24] as [number, number],
  );
  const consensus = publishedRows('egg-to-adult-consensus').map(
    (row) => [row.temperatureC, row.days] as [number, number],
  );
  return {
    title: 'Egg to adult, D. melanogaster',
    x: { label: 'temperature, C', low: 14, high: 31, step: 2 },
    y: { label: 'days', low: 0, high: 45, step: 5 },
    series: [
      line('this model, Briere-2', blue, temperatures, (t) => 1 / melanogaster.developmentRate(t)),
      line('Davidson 1944, egg and pupa over .564', green, temperatures, davidson, 'dashed'),
      line('Taylor 1981', grey, temperatures, (t) => 1 / taylor(bell, t), 'dashed'),
      line('degree-days, median of 41 fits', red, temperatures, (t) => 1 / degreeDay(linear, t), 'dashed'),
      { name: 'consensus (fitted to)', colour: grey, kind: 'crosses', points: consensus },
      { name: 'Bonnier 1926, measured', colour: red, kind: 'dots', points: bonnier },
      line('hydei, value from memory', grey, temperatures, (t) => 1 / hydei.developmentRate(t)),
    ],
  };
}

function survival(): Plot {
  const ages = range(0, 130, 1);
  const points = (temperatureC: number) => {
    const row = publishedRows('adult-lifespan').find((r) => r.temperatureC === temperatureC && r.sex === 'both');
    return [7, 14, 21, 28, 42].map((age) => [age, row?.[`alive${age}`] as number] as [number, number]);
  };
  return {
    title: 'Adults alive: roomy at three temperatures, and in an ordinary cup',
    x: { label: 'age, days', low: 0, high: 120, step: 20 },
    y: { label: 'share alive', low: 0, high: 1, step: 0.2 },
    series: (
      [
        [18, blue],
        [25, green],
        [28, red],
      ] as const
    )
      .flatMap(([t, colour]) => [
        line(`${t} C`, colour, ages, (age) => adultSurvival(melanogaster, t, age, true)),
        { name: `counted, ${t} C`, colour, kind: 'dots' as const, points: points(t) },
      ])
      .concat([
        line(
          '25 C, crowded cup (common practice)',
          grey,
          ages,
          (age) => adultSurvival(melanogaster, 25, age, false),
          'dashed',
        ),
      ]),
  };
}

function laying(): Plot {
  const rows = publishedRows('eggs-by-age').filter((row) => row.source === 'king2020');
  const points = (diet: string) =>
    rows
      .filter((row) => row.diet === diet)
      .map(
        (row) => [((row.fromDay as number) + (row.toDay as number) + 1) / 2, row.eggsPerFemaleDay] as [number, number],
      );
  const fresh = { ...melanogaster.laying, cupShare: 1 };
  return {
    title: 'Eggs per female and day by age',
    x: { label: 'age, days', low: 0, high: 80, step: 10 },
    y: { label: 'eggs', low: 0, high: 60, step: 10 },
    series: [
      line('model, best food', blue, range(0, 80, 0.5), (age) => eggsPerFemaleDay(fresh, age)),
      line(
        'model, ordinary cup',
        blue,
        range(0, 80, 0.5),
        (age) => eggsPerFemaleDay(melanogaster.laying, age),
        'dashed',
      ),
      { name: 'counted, standard food', colour: green, kind: 'dots', points: points('standard') },
      { name: 'counted, low yeast', colour: grey, kind: 'crosses', points: points('low yeast') },
      { name: 'counted, high sugar', colour: red, kind: 'crosses', points: points('high sugar') },
    ],
  };
}

function course(): Plot {
  const pace = paceTable(melanogaster, constant(23, 60));
  const one = cultureCourse(melanogaster, pace, 0, cup, daily, 45);
  const tenth = (series: Float64Array) => series.map((value) => value / 10);
  return {
    title: 'One cup: melanogaster, 50 founders, 180 g, 23 C, half taken daily',
    x: { label: 'days from starting', low: 0, high: 40, step: 5 },
    y: { label: 'flies a day; stages in tens', low: 0, high: 160, step: 20 },
    series: [
      days('emerging a day', blue, one.emerged),
      days('flies in the cup', green, one.adults),
      days('larvae / 10', grey, tenth(one.larvae)),
      days('pupae / 10', red, tenth(one.pupae)),
    ],
  };
}

function chain(): Plot {
  const kept = (name: string) =>
    keptEmergence
      .split('\n')
      .filter((row) => row.startsWith(`${name},`))
      .map((row) => [Number(row.split(',')[1]), Number(row.split(',')[2])] as [number, number]);
  const engine = (name: string, crowded: boolean) => {
    const strain = chainStrain(crowded);
    const rule = { everyDays: 1, share: 1, fromAgeDays: parameter('layingUntilDay') - 1 };
    const pace = paceTable(strain, constant(24, 35));
    return days(
      `engine, ${name}`,
      crowded ? red : blue,
      cultureCourse(strain, pace, 0, chainConditions, rule, 35).emerged,
    );
  };
  return {
    title: 'Engine (daily steps) and deSolve, a chain of 200 stages, 24 C',
    x: { label: 'day', low: 6, high: 24, step: 2 },
    y: { label: 'flies emerging a day', low: 0, high: 700, step: 100 },
    series: [
      engine('not crowded', false),
      { name: 'deSolve, not crowded', colour: grey, kind: 'crosses', points: kept('constant') },
      engine('crowded', true),
      { name: 'deSolve, crowded', colour: grey, kind: 'dots', points: kept('crowded') },
    ],
  };
}

function founders(): Plot {
  const found = (strain: StrainLife, founderAgeDays: number) =>
    bestFounders(strain, paceTable(strain, constant(23, 80)), 0, { ...cup, founderAgeDays }, daily).tried.map(
      (tried) => [tried.founders, tried.netFlies] as [number, number],
    );
  return {
    title: 'Flies from a cup by its founders, less the founders, 180 g, 23 C',
    x: { label: 'founders', low: 0, high: 200, step: 25 },
    y: { label: 'flies over its life', low: 0, high: 1400, step: 200 },
    series: [
      { name: 'melanogaster', colour: blue, kind: 'line', points: found(melanogaster, 4) },
      { name: 'hydei', colour: red, kind: 'line', points: found(hydei, 12) },
    ],
  };
}

function moisture(): Plot {
  const pace = paceTable(melanogaster, constant(23, 60));
  const emerging = (state: 'wet' | 'dry' | null, untilAgeDays: number) => {
    const moistureSpells = state ? [{ fromAgeDays: 4, untilAgeDays, state }] : [];
    return cultureCourse(melanogaster, pace, 0, { ...cup, moistureSpells }, daily, 40).emerged;
  };
  return {
    title: 'Flies emerging a day: medium good, too dry, too wet from day 4',
    x: { label: 'days from starting', low: 0, high: 40, step: 5 },
    y: { label: 'flies a day', low: 0, high: 140, step: 20 },
    series: [
      days('good', blue, emerging(null, 0)),
      days('dry, watered on day 9', green, emerging('dry', 8)),
      days('dry, left alone', red, emerging('dry', 40)),
      days('wet, rescued on day 9', grey, emerging('wet', 8)),
    ],
  };
}

function failure(): Plot {
  const courseAt = (temperatureC: number) =>
    failureCourse(melanogaster, paceTable(melanogaster, constant(temperatureC, 60)), 0, cup, 45);
  const share = (values: Float64Array) => values.map((value) => 100 * value);
  const warm = courseAt(25);
  return {
    title: 'Chance of failing on each day of age, 25 C, and of mites at 20 C',
    x: { label: 'days from starting', low: 0, high: 45, step: 5 },
    y: { label: 'per cent a day', low: 0, high: 1.2, step: 0.2 },
    series: [
      days('mould, 25 C', green, share(warm.mould)),
      days('mites, 25 C', red, share(warm.mites)),
      days('mites, 20 C', grey, share(courseAt(20).mites)),
      days('other', blue, share(warm.other)),
    ],
  };
}

function mass(): Plot {
  const pace = paceTable(melanogaster, constant(25, 60));
  const of = (founders: number) => {
    const one = cultureCourse(melanogaster, pace, 0, { ...cup, founders }, daily, 26);
    return Array.from(one.emergedMassMg, (mg, day) => [day, mg] as [number, number]).filter(
      ([day]) => (one.emerged[day] as number) > 2,
    );
  };
  const uncrowded = publishedRows('fly-mass').filter((row) => row.source === 'leiva2019' && row.condition === '25 C');
  const mean = uncrowded.reduce((sum, row) => sum + (row.massMg as number), 0) / uncrowded.length;
  return {
    title: 'Mean fresh mass of the flies emerging, melanogaster, 25 C, 180 g',
    x: { label: 'days from starting', low: 8, high: 26, step: 2 },
    y: { label: 'mg a fly', low: 0, high: 1.6, step: 0.2 },
    series: [
      { name: '20 founders', colour: green, kind: 'line', points: of(20) },
      { name: '50 founders', colour: blue, kind: 'line', points: of(50) },
      { name: '200 founders', colour: red, kind: 'line', points: of(200) },
      {
        name: 'uncrowded, mean of both sexes as measured',
        colour: grey,
        kind: 'dashed',
        points: [
          [8, mean],
          [26, mean],
        ],
      },
    ],
  };
}

function temperature(): Plot {
  const fromDay = dayNumber(day('2026-01-01'));
  const readings = range(60, 100, 4).map((at) => ({
    day: fromDay + at,
    meanC: 22.4 + Math.sin(at / 6),
    minC: null,
    maxC: null,
  }));
  const place = {
    fromDay,
    days: 365,
    expected: { winterC: 19, springC: 21, summerC: 25, autumnC: 22 },
    hemisphere: 'north' as const,
    readings,
    cupOffsetC: 0,
    dailyRangeC: 0,
  };
  const hourly = hourlyTemperatureC(place);
  const sd = temperatureSdC(place);
  const at = range(0, 364, 2);
  const mean = (i: number) => hourly[24 * i + 12] as number;
  const edge = (sign: number) => at.map((i) => [i, mean(i) + sign * 1.645 * (sd[i] as number)] as [number, number]);
  return {
    title: 'A room through the year: seasons, readings, what is expected',
    x: { label: 'day of the year', low: 0, high: 365, step: 30 },
    y: { label: 'C', low: 16, high: 28, step: 2 },
    series: [
      { name: '5 to 95 %', colour: blue, kind: 'band', points: [...edge(1), ...edge(-1).reverse()] },
      line('expected', blue, at, mean),
      { name: 'readings', colour: red, kind: 'dots', points: readings.map((r) => [r.day - fromDay, r.meanC]) },
    ],
  };
}
