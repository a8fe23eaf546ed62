import pg from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type PostgresServer, startPostgres } from '../postgres/postgres-server.ts';
import { emptyFolder, flylarder } from './command-line.ts';
import { end, serve } from './serving.ts';

let server: PostgresServer;
let url = '';

beforeAll(async () => {
  server = await startPostgres();
  const client = new pg.Client({ connectionString: server.adminUrl });
  await client.connect();
  await client.query("CREATE ROLE keeper LOGIN PASSWORD 'reed'");
  await client.query('CREATE DATABASE logbooks OWNER keeper');
  await client.end();
  url = `postgres://keeper:reed@${new URL(server.adminUrl).host}/logbooks`;
}, 120_000);
afterAll(() => server?.stop());

describe('a household in PostgreSQL', () => {
  it('is recorded, exported and served as one in a folder is; households are apart', async () => {
    const folder = emptyFolder();
    const here = ['--database', url];
    const notes = ['one', 'two'].map((text) => `{"kind":"note","on":"2026-10-01","text":"${text}"}\n`).join('');
    expect(flylarder(folder, ['record', '-', ...here], notes)).toMatchObject({ status: 0, err: '' });
    expect(flylarder(folder, ['record', 'note', 'text=other', ...here, '--household', 'annex']).status).toBe(0);
    const exported = flylarder(folder, ['export', ...here]).out;
    expect(
      exported
        .trim()
        .split('\n')
        .map((line) => JSON.parse(line).text),
    ).toEqual(['one', 'two']);
    expect(flylarder(folder, ['record', '-', '--data', 'copy'], exported).status).toBe(0);
    expect(flylarder(folder, ['export', '--data', 'copy']).out).toBe(exported);
    const serving = await serve(folder, [...here, '--port', '0']);
    expect(await (await fetch(`${serving.address}api/v1/entries`)).text()).toBe(exported);
    expect(await end(serving, 'SIGTERM')).toBe(0);
  });

  it('never repeats a password', () => {
    const wrong = url.replace('keeper:reed', 'stranger:wrong-secret');
    const refused = flylarder(emptyFolder(), ['export', '--database', wrong]);
    expect(refused.status).toBe(3);
    expect(refused.err).not.toMatch(/wrong-secret|reed/);
    const mistyped = flylarder(emptyFolder(), ['export', '--database', 'keeper:wrong-secret@host']);
    expect(mistyped.status).toBe(2);
    expect(mistyped.err).not.toContain('wrong-secret');
  });
});
