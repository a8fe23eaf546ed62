/**
 * One message with its numbers and names filled in. Catalogues hold plain templates: `{name}` is
 * replaced, and a message with `one` and `other` picks its form by the parameter `count`.
 */
export type Message = string | { one: string; other: string };
export type MessageParams = Record<string, string | number>;

/** The text of `message` in `locale`; numbers are written the way of that locale. */
export function messageText(message: Message, params: MessageParams, locale: string): string {
  const template = typeof message === 'string' ? message : message[pluralForm(params, locale)];
  return template.replace(/\{(\w+)\}/g, (whole, name: string) => valueText(params[name], locale) ?? whole);
}

function pluralForm(params: MessageParams, locale: string): 'one' | 'other' {
  return new Intl.PluralRules(locale).select(Number(params['count'])) === 'one' ? 'one' : 'other';
}

function valueText(value: string | number | undefined, locale: string): string | undefined {
  return typeof value === 'number' ? value.toLocaleString(locale, { maximumFractionDigits: 1 }) : value;
}

/** The names in braces that a message wants, sorted; for the test that catalogues agree. */
export function placeholders(message: Message): string[] {
  const text = typeof message === 'string' ? message : `${message.one} ${message.other}`;
  return [...new Set([...text.matchAll(/\{(\w+)\}/g)].map((match) => match[1] as string))].sort();
}
