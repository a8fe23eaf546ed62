/** The degrees in a message: a number as text, or the value at a path of its JSON. */
import { failed, ok, type Result } from '../../foundation/index.ts';

/** @param path names and indices joined by points; empty for the whole message. */
export function messageValue(message: string, path: string): Result<number> {
  const value = path === '' ? message.trim() : valueAt(message, path);
  const number =
    typeof value === 'number' ? value : typeof value === 'string' && value !== '' ? Number(value) : Number.NaN;
  if (Number.isFinite(number)) return ok(number);
  const expected = path === '' ? 'a number such as 22.5' : `a number at ${path}`;
  return failed({ where: 'message', found: `"${message.slice(0, 60)}"`, expected });
}

function valueAt(message: string, path: string): unknown {
  let at: unknown;
  try {
    at = JSON.parse(message);
  } catch {
    return undefined;
  }
  for (const name of path.split('.')) {
    if (typeof at !== 'object' || at === null || !Object.hasOwn(at, name)) return undefined;
    at = (at as Record<string, unknown>)[name];
  }
  return at;
}

/** Does an MQTT filter with + and # cover this topic? */
export function topicFits(filter: string, topic: string): boolean {
  const wanted = filter.split('/');
  const levels = topic.split('/');
  for (const [i, part] of wanted.entries()) {
    if (part === '#') return true;
    if (i >= levels.length || (part !== '+' && part !== levels[i])) return false;
  }
  return wanted.length === levels.length;
}
