/** Draws from the Gaussian conditionals of a linear model. */
import type { RandomStream } from '../foundation/index.ts';
import type { Design } from './design.ts';

/**
 * Coefficients given the cups' values, written into `into`: normal errors of sd `spread`, normal priors.
 * Rows where `used` is 0 are left out. The whole vector is drawn at once, by Cholesky, because the
 * household's mean and its recipes pull against each other.
 */
export function drawCoefficients(
  design: Design,
  values: Float64Array,
  used: Uint8Array,
  spread: number,
  random: RandomStream,
  into: Float64Array,
): void {
  const q = design.columns;
  const precision = new Float64Array(q * q);
  const pull = new Float64Array(q);
  const weight = 1 / (spread * spread);
  for (let c = 0; c < q; c++) precision[c * q + c] = 1 / (design.priorSd[c] as number) ** 2;
  for (let i = 0; i < values.length; i++) {
    if (used[i]) addRow(design, i, values[i] as number, weight, precision, pull);
  }
  cholesky(precision, q);
  forward(precision, q, pull);
  for (let c = 0; c < q; c++) into[c] = (pull[c] as number) + random.normal();
  backward(precision, q, into);
}

function addRow(d: Design, i: number, value: number, weight: number, precision: Float64Array, pull: Float64Array) {
  const q = d.columns;
  const at = i * q;
  for (let c = 0; c < q; c++) {
    const rc = d.rows[at + c] as number;
    if (rc === 0) continue;
    pull[c] = (pull[c] as number) + weight * rc * value;
    for (let e = 0; e <= c; e++) {
      precision[c * q + e] = (precision[c * q + e] as number) + weight * rc * (d.rows[at + e] as number);
    }
  }
}

/** Lower triangle of `a` becomes its Cholesky factor. */
function cholesky(a: Float64Array, q: number): void {
  for (let j = 0; j < q; j++) {
    for (let i = j; i < q; i++) {
      let sum = a[i * q + j] as number;
      for (let k = 0; k < j; k++) sum -= (a[i * q + k] as number) * (a[j * q + k] as number);
      a[i * q + j] = i === j ? Math.sqrt(sum) : sum / (a[j * q + j] as number);
    }
  }
}

/** Solves L u = b in place. */
function forward(l: Float64Array, q: number, b: Float64Array): void {
  for (let i = 0; i < q; i++) {
    let sum = b[i] as number;
    for (let k = 0; k < i; k++) sum -= (l[i * q + k] as number) * (b[k] as number);
    b[i] = sum / (l[i * q + i] as number);
  }
}

/** Solves L' u = b in place. */
function backward(l: Float64Array, q: number, b: Float64Array): void {
  for (let i = q - 1; i >= 0; i--) {
    let sum = b[i] as number;
    for (let k = i + 1; k < q; k++) sum -= (l[k * q + i] as number) * (b[k] as number);
    b[i] = sum / (l[i * q + i] as number);
  }
}
