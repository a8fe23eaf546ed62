/** Malformed requests made from the API's own description, for tests: none may be a fault or a write. */
import * as fc from 'fast-check';

interface Described {
  paths: Record<string, Record<string, { parameters?: { name: string; in: string }[] }>>;
}

export interface MalformedRequest {
  path: string;
  init: RequestInit;
}

const contentType = fc.constantFrom(
  'application/json',
  'application/x-ndjson',
  'application/json; charset=utf-8',
  'a/b',
  '',
);
const kind = fc.constantFrom('note', 'harvested', 'household', 'amended', 'started', 'zzz', '__proto__');
const entry = fc.record(
  { kind, on: fc.anything(), id: fc.anything(), culture: fc.anything(), flies: fc.anything() },
  { requiredKeys: [] },
);
const list = fc.array(fc.oneof(entry, fc.anything()), { maxLength: 5 });
const body = fc.oneof(
  fc.string(),
  fc.json(),
  list.map((entries) => JSON.stringify({ entries })),
  list.map((ids) => JSON.stringify({ ids, epoch: ids[0], after: ids[1], limit: ids[2] })),
  list.map((lines) => lines.map((line) => JSON.stringify(line)).join('\n')),
);

/** Every route that the description names, with queries and bodies that do not fit it. */
export function malformedRequests(description: unknown): fc.Arbitrary<MalformedRequest> {
  const { paths } = description as Described;
  const routes = Object.entries(paths).flatMap(([path, methods]) =>
    Object.entries(methods).map(([method, { parameters = [] }]) => ({ path, method, parameters })),
  );
  return fc.constantFrom(...routes).chain(({ path, method, parameters }) =>
    method === 'get'
      ? badQuery(
          path,
          parameters.map(({ name }) => name),
        )
      : badBody(path, method),
  );
}

/** At least one name that is not in the description, among values that may or may not fit. */
function badQuery(path: string, names: string[]): fc.Arbitrary<MalformedRequest> {
  const value = fc.oneof(fc.string(), fc.integer().map(String), fc.constantFrom('2026-02-30', '', 'NaN', '1e9', '-1'));
  const known = names.length > 0 ? fc.dictionary(fc.constantFrom(...names), value) : fc.constant({});
  return fc.tuple(known, fc.stringMatching(/^[a-z]{3,9}$/), value).map(([query, other, text]) => {
    const unknown = names.includes(other) ? `${other}x` : other;
    return { path: `/api/v1${path}?${new URLSearchParams({ ...query, [unknown]: text })}`, init: {} };
  });
}

function badBody(path: string, method: string): fc.Arbitrary<MalformedRequest> {
  return fc.tuple(body, contentType).map(([text, type]) => ({
    path: `/api/v1${path}`,
    init: { method: method.toUpperCase(), body: text, headers: { 'content-type': type } },
  }));
}
