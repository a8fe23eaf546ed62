import { expect, it } from 'vitest';
import { RecentlyUsed } from './recently-used.ts';

function shelf(most: number, open: (name: string) => Promise<string> = async (name) => name) {
  const [opened, left]: [string[], string[]] = [[], []];
  const used = new RecentlyUsed(
    most,
    (name) => {
      opened.push(name);
      return open(name);
    },
    async (name) => void left.push(name),
  );
  return { used, opened, left };
}

it('opens each once, and the one asked for longest ago makes room', async () => {
  const { used, opened, left } = shelf(2);
  for (const name of ['a', 'b', 'a', 'c', 'a']) expect(await used.get(name)).toBe(name);
  expect(opened).toEqual(['a', 'b', 'c']);
  expect(left).toEqual(['b']);
  await used.close();
  expect(left.sort()).toEqual(['a', 'b', 'c']);
});

it('tries again what could not be opened', async () => {
  let isAway = true;
  const { used, opened } = shelf(2, async (name) => (isAway ? Promise.reject(new Error('away')) : name));
  await expect(used.get('a')).rejects.toThrow('away');
  isAway = false;
  expect(await used.get('a')).toBe('a');
  expect(opened).toEqual(['a', 'a']);
});
