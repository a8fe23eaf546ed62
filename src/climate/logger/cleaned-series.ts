/** Takes out of a series what no room did: the same moment twice, spikes, a sensor that is stuck. */

export interface Series {
  /** Instants, ms. */
  timesMs: Float64Array;
  valuesC: Float64Array;
}

export interface CleanedSeries extends Series {
  duplicates: number;
  /** Instants of readings left out, oldest first. */
  spikesMs: number[];
  stuckMs: number[];
}

const hourMs = 3_600_000;
/** A spike stands this far, C, and this many robust deviations off the readings around it: chosen, no source. */
const spikeC = 5;
const spikeDeviations = 6;
/** Within this a reading is no spike, whatever is around it, C. */
const quietC = 3;
const neighbourMs = 2 * hourMs;
/** The same digits for so long, from a sensor that has finer ones, are no measurement: chosen, no source. */
const stuckHours = 36;
const finestStuckStepC = 0.25;

export function cleanedSeries(raw: Series): CleanedSeries {
  const { series, duplicates } = withoutDuplicates(inOrder(raw));
  const spikes = spikesOf(series);
  const calm = without(series, spikes);
  const stuck = stuckOf(calm);
  return {
    ...without(calm, stuck),
    duplicates,
    spikesMs: pick(series.timesMs, spikes),
    stuckMs: pick(calm.timesMs, stuck),
  };
}

function inOrder(series: Series): Series {
  const { timesMs, valuesC } = series;
  if (timesMs.every((t, i) => i === 0 || t >= (timesMs[i - 1] as number))) return series;
  const order = Uint32Array.from(timesMs, (_, i) => i).sort(
    (a, b) => (timesMs[a] as number) - (timesMs[b] as number) || a - b,
  );
  return {
    timesMs: Float64Array.from(order, (i) => timesMs[i] as number),
    valuesC: Float64Array.from(order, (i) => valuesC[i] as number),
  };
}

/** Of readings at one instant the first is kept. */
function withoutDuplicates(series: Series): { series: Series; duplicates: number } {
  const { timesMs } = series;
  const drop = new Uint8Array(timesMs.length);
  let duplicates = 0;
  for (let i = 1; i < timesMs.length; i += 1) {
    if (timesMs[i] !== timesMs[i - 1]) continue;
    drop[i] = 1;
    duplicates += 1;
  }
  return { series: duplicates === 0 ? series : without(series, drop), duplicates };
}

function without(series: Series, drop: Uint8Array): Series {
  if (!drop.includes(1)) return series;
  return {
    timesMs: series.timesMs.filter((_, i) => drop[i] === 0),
    valuesC: series.valuesC.filter((_, i) => drop[i] === 0),
  };
}

function pick(values: Float64Array, chosen: Uint8Array): number[] {
  return chosen.includes(1) ? Array.from(values.filter((_, i) => chosen[i] === 1)) : [];
}

function spikesOf({ timesMs, valuesC }: Series): Uint8Array {
  const spikes = new Uint8Array(valuesC.length);
  let quiet = valuesC.length > 0 ? medianOf(Array.from(valuesC.subarray(0, 5))) : 0;
  for (let i = 0; i < valuesC.length; i += 1) {
    const value = valuesC[i] as number;
    if (Math.abs(value - quiet) >= quietC && isSpike(timesMs, valuesC, i)) spikes[i] = 1;
    else quiet = value;
  }
  return spikes;
}

/** Against the median of the three readings on either side: a step to a new level is none. */
function isSpike(timesMs: Float64Array, valuesC: Float64Array, i: number): boolean {
  const around: number[] = [];
  for (let k = Math.max(0, i - 3); k <= Math.min(valuesC.length - 1, i + 3); k += 1) {
    const near = Math.abs((timesMs[k] as number) - (timesMs[i] as number)) <= neighbourMs;
    if (k !== i && near) around.push(valuesC[k] as number);
  }
  if (around.length < 3) return false;
  const middle = medianOf(around);
  const spread = 1.4826 * medianOf(around.map((v) => Math.abs(v - middle)));
  return Math.abs((valuesC[i] as number) - middle) > Math.max(spikeC, spikeDeviations * spread);
}

function medianOf(values: number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const half = sorted.length >> 1;
  return sorted.length % 2 === 1
    ? (sorted[half] as number)
    : ((sorted[half - 1] as number) + (sorted[half] as number)) / 2;
}

function stuckOf({ timesMs, valuesC }: Series): Uint8Array {
  const stuck = new Uint8Array(valuesC.length);
  if (finestStepC(valuesC) > finestStuckStepC) return stuck;
  let from = 0;
  for (let i = 1; i <= valuesC.length; i += 1) {
    if (i < valuesC.length && valuesC[i] === valuesC[from]) continue;
    const hours = ((timesMs[i - 1] as number) - (timesMs[from] as number)) / hourMs;
    if (hours >= stuckHours && i - from >= stuckHours) stuck.fill(1, from, i);
    from = i;
  }
  return stuck;
}

/** The smallest change from one reading to the next, C; endless when nothing ever changes. */
function finestStepC(valuesC: Float64Array): number {
  let finest = Number.POSITIVE_INFINITY;
  for (let i = 1; i < valuesC.length; i += 1) {
    const step = Math.abs((valuesC[i] as number) - (valuesC[i - 1] as number));
    if (step > 1e-9 && step < finest) finest = step;
  }
  return finest;
}
