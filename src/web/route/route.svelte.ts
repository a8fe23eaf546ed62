/**
 * Where the keeper is: `#/screen/key?word=value`. The address lives in the hash, so the page works from
 * any folder of any server and from none.
 */
export interface Place {
  screen: string;
  key: string | null;
  query: URLSearchParams;
}

export function placeOfHash(hash: string): Place {
  const [path = '', query = ''] = hash.replace(/^#\/?/, '').split('?');
  const [screen = '', key] = path.split('/');
  return { screen, key: key ? decodeURIComponent(key) : null, query: new URLSearchParams(query) };
}

const current = $state({ place: placeOfHash(location.hash) });

export function place(): Place {
  return current.place;
}

/** Follows the address for as long as the page lives; `arrived` runs after each change of screen. */
export function followAddress(arrived: () => void): void {
  addEventListener('hashchange', () => {
    current.place = placeOfHash(location.hash);
    arrived();
  });
}

export function hrefOf(screen: string, key?: string): string {
  return key === undefined ? `#/${screen}` : `#/${screen}/${encodeURIComponent(key)}`;
}

export function go(screen: string, key?: string): void {
  location.hash = hrefOf(screen, key);
}
