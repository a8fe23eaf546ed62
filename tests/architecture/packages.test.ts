import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { projectFolder, textOf } from './sources.ts';

interface LockedPackage {
  version: string;
  dev?: boolean;
  license?: string;
  resolved?: string;
}
const manifest = JSON.parse(textOf('package.json'));
const locked = Object.entries(JSON.parse(textOf('package-lock.json')).packages as Record<string, LockedPackage>);

describe('packages', () => {
  it('are named with exact versions', () => {
    const versions = Object.values({ ...manifest.dependencies, ...manifest.devDependencies });
    expect(versions.filter((version) => !/^\d+\.\d+\.\d+(-[\w.]+)?$/.test(String(version)))).toEqual([]);
  });

  it('are locked without the address they came from', () => {
    expect(locked.filter(([, entry]) => entry.resolved !== undefined)).toEqual([]);
  });

  it('of a running household are under permissive licences', () => {
    const permissive = /^\(?(MIT|ISC|BSD-[23]-Clause|Apache-2\.0|0BSD|BlueOak-1\.0\.0|Unlicense|CC0-1\.0)\b/;
    const running = locked.filter(([path, entry]) => path !== '' && !entry.dev);
    expect(running.length).toBeGreaterThan(3);
    expect(running.filter(([, entry]) => !permissive.test(entry.license ?? '')).map(([path]) => path)).toEqual([]);
  });

  it('need no newer Node than we ask of the keeper', () => {
    expect(manifest.engines.node).toBe('>=20.19');
    const named = Object.keys({ ...manifest.dependencies, ...manifest.devDependencies });
    const engine = (name: string) =>
      JSON.parse(readFileSync(join(projectFolder, 'node_modules', name, 'package.json'), 'utf8')).engines?.node as
        | string
        | undefined;
    expect(named.filter((name) => /^\s*>=?\s*2[2-9]/.test(engine(name) ?? ''))).toEqual([]);
  });
});
