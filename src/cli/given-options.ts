/** Options as fields of a question: what was not given is left out. */

type Given<T extends object> = { [Field in keyof T]?: Exclude<T[Field], undefined> };

/** @example given({ cups: 3, recipe: undefined }) // => { cups: 3 } */
export function given<T extends object>(fields: T): Given<T> {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as Given<T>;
}
