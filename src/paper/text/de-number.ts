/** A figure with a decimal comma. @example decimal(22.5) // => '22,5' */
export function decimal(value: string | number | undefined): string {
  return String(value).replace('.', ',');
}
