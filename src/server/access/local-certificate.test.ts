import { X509Certificate } from 'node:crypto';
import { once } from 'node:events';
import { mkdtempSync, rmSync, statSync } from 'node:fs';
import { createServer, request } from 'node:https';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { type LocalCertificate, localCertificate } from './local-certificate.ts';

const folder = mkdtempSync(join(tmpdir(), 'flylarder-certificate-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const now = Date.now();
const names = ['127.0.0.1', 'localhost', 'kitchen.local'];

/** What a client that trusts only this authority gets: Node's TLS is OpenSSL, which wrote none of this. */
async function answerOver(certificate: LocalCertificate, trusted: string, name: string): Promise<string> {
  const server = createServer({ cert: certificate.chain, key: certificate.key }, (_, reply) => reply.end('hello'));
  await once(server.listen(0, '127.0.0.1'), 'listening');
  const { port } = server.address() as AddressInfo;
  try {
    return await new Promise((resolve, reject) => {
      const asked = request({ host: '127.0.0.1', port, ca: trusted, servername: name, agent: false }, (reply) => {
        reply.setEncoding('utf8').once('data', resolve);
      });
      asked.once('error', reject).end();
    });
  } finally {
    server.close();
  }
}

describe("the household's own certificate", () => {
  it('is accepted by a client that trusts its authority, and by no other', async () => {
    const certificate = await localCertificate(folder, names, now);
    expect(await answerOver(certificate, certificate.authority, 'kitchen.local')).toBe('hello');
    await expect(answerOver(certificate, certificate.authority, 'other.local')).rejects.toThrow(/altnames/);
    const stranger = mkdtempSync(join(tmpdir(), 'flylarder-certificate-'));
    const other = await localCertificate(stranger, names, now);
    rmSync(stranger, { recursive: true });
    await expect(answerOver(certificate, other.authority, 'kitchen.local')).rejects.toThrow();
  });

  it('vouches for no site of the internet, even if its key were stolen', async () => {
    const certificate = await localCertificate(folder, ['bank.example'], now);
    await expect(answerOver(certificate, certificate.authority, 'bank.example')).rejects.toThrow(/permitted subtree/);
  });

  it('stays until its names change or it grows old; the authority stays for years', async () => {
    const first = await localCertificate(folder, names, now);
    expect(await localCertificate(folder, names.slice(1), now)).toEqual(first);
    const moved = await localCertificate(folder, [...names, '192.168.1.7'], now);
    expect(moved.chain).not.toBe(first.chain);
    const later = await localCertificate(folder, [...names, '192.168.1.7'], now + 380 * 86_400_000);
    expect(later.chain).not.toBe(moved.chain);
    expect(later.authority).toBe(first.authority);
    expect(first.fingerprint).toBe(new X509Certificate(first.authority).fingerprint256);
  });

  it('keeps its keys for this user alone', () => {
    for (const file of ['authority.key', 'server.key']) {
      expect(statSync(join(folder, 'certificate', file)).mode & 0o077).toBe(0);
    }
  });
});
