import pg from 'pg';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type PostgresServer, startPostgres } from '../../../../tests/postgres/postgres-server.ts';
import { numberedStarts } from '../../../store/conformance-entries.ts';
import { openPostgres, type PostgresLogbooks } from '../../../store/postgres/index.ts';
import { shell } from '../../application-under-test.ts';
import { type JobLine, startWorker } from './worker.ts';

let server: PostgresServer;
let url = '';
let logbooks: PostgresLogbooks;

beforeAll(async () => {
  server = await startPostgres();
  const client = new pg.Client({ connectionString: server.adminUrl });
  await client.connect();
  for (const sql of ["CREATE ROLE zoo LOGIN PASSWORD 'reed'", 'CREATE DATABASE zoo OWNER zoo']) await client.query(sql);
  await client.end();
  url = `postgres://zoo:reed@${new URL(server.adminUrl).host}/zoo`;
  logbooks = await openPostgres(url);
}, 120_000);
afterAll(async () => {
  await logbooks?.close();
  await server?.stop();
});

it('a worker does not look for what is due while it works out a household', async () => {
  const store = await logbooks.household('zoo');
  await store.append(numberedStarts().slice(0, 1));
  let isWorking = false;
  const looksMeanwhile: boolean[] = [];
  const { work } = logbooks;
  const [isDone, due] = [work.isDone.bind(work), work.due.bind(work)];
  work.isDone = async (...asked) => {
    isWorking = true;
    // Longer than the time between two looks.
    await new Promise((after) => setTimeout(after, 6000));
    isWorking = false;
    return isDone(...asked);
  };
  work.due = (...asked) => {
    looksMeanwhile.push(isWorking);
    return due(...asked);
  };
  const lines: JobLine[] = [];
  const worker = await startWorker({
    logbooks,
    databaseUrl: url,
    shell,
    version: '0',
    log: (line) => lines.push(line),
  });
  while (lines.length === 0) await new Promise((after) => setTimeout(after, 100));
  await worker.stop();
  expect(lines.map((line) => line.outcome)).toEqual(['done']);
  expect(looksMeanwhile).not.toContain(true);
}, 120_000);
