/** Ways in which a cup's emergence can differ from any curve of the books. */
import type { RandomStream } from '../../src/foundation/index.ts';

type Emergence = Float64Array<ArrayBuffer>;

/** Every fly emerges on its own: individuals of 8 % spread around the day that the curve gives. */
export function individually(emerged: Emergence, random: RandomStream): Emergence {
  const out = new Float64Array(emerged.length);
  emerged.forEach((flies, age) => {
    for (let i = 0; i < flies; i++) {
      const day = Math.round(age * (1 + 0.08 * random.normal()));
      if (day >= 0 && day < out.length) out[day] = (out[day] as number) + 1;
    }
  });
  return out;
}

/** A second bloom nine days after the first, as when the cup's own young lay into it early. */
export function secondFlush(emerged: Emergence): Emergence {
  return emerged.map((flies, age) => Math.round(0.6 * flies + 0.6 * (emerged[age - 9] ?? 0)));
}
