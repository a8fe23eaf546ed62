/**
 * HTTPS on the home network: a certificate authority of the household's own, made on first use, and a
 * certificate for this computer's names, made again when they change or it grows old. The phone gets
 * the authority's certificate by hand, once; its key never leaves the household's folder.
 */
import 'reflect-metadata';
import { webcrypto } from 'node:crypto';
import { join } from 'node:path';
import {
  AuthorityKeyIdentifierExtension,
  BasicConstraintsExtension,
  cryptoProvider,
  ExtendedKeyUsage,
  ExtendedKeyUsageExtension,
  Extension,
  KeyUsageFlags,
  KeyUsagesExtension,
  PemConverter,
  SubjectAlternativeNameExtension,
  SubjectKeyIdentifierExtension,
  X509Certificate,
  X509CertificateGenerator,
} from '@peculiar/x509';
import { homeNetworksOnly } from './name-constraints.ts';
import { readPrivateFile, writePrivateFile } from './private-file.ts';

export interface LocalCertificate {
  /** PEM: this computer's certificate, then the authority's. */
  chain: string;
  /** PEM of this computer's private key. */
  key: string;
  /** PEM of the authority's certificate, to be installed on the phone. */
  authority: string;
  /** SHA-256 of the authority's certificate, to be compared by eye. */
  fingerprint: string;
}

type Keys = { privateKey: webcrypto.CryptoKey; publicKey: webcrypto.CryptoKey };

const curve = { name: 'ECDSA', namedCurve: 'P-256', hash: 'SHA-256' };
const dayMs = 86_400_000;
const authorityDays = 3650;
/** Browsers refuse certificates of servers that are good for longer than 398 days. */
const serverDays = 397;
const renewBeforeDays = 30;
const nameConstraints = '2.5.29.30';

/**
 * The certificate for `names` (host names and IP addresses), kept in `certificate/` of the household's folder.
 * Names outside the home network (a public domain) are beyond the authority: browsers refuse them.
 */
export async function localCertificate(household: string, names: string[], nowMs: number): Promise<LocalCertificate> {
  cryptoProvider.set(webcrypto as Crypto);
  const folder = join(household, 'certificate');
  const authority = await keptAuthority(folder, nowMs);
  const files = { chain: join(folder, 'server.pem'), key: join(folder, 'server.key') };
  const kept = { chain: readPrivateFile(files.chain), key: readPrivateFile(files.key) };
  const good = kept.chain !== null && kept.key !== null && covers(kept.chain, authority.certificate, names, nowMs);
  const made = good ? (kept as { chain: string; key: string }) : await issue(authority, names, nowMs);
  if (!good) {
    writePrivateFile(files.key, made.key);
    writePrivateFile(files.chain, made.chain);
  }
  const print = Buffer.from(await authority.certificate.getThumbprint('SHA-256'));
  const fingerprint = (print.toString('hex').toUpperCase().match(/../g) as string[]).join(':');
  return { ...made, authority: authority.certificate.toString('pem'), fingerprint };
}

interface Authority {
  certificate: X509Certificate;
  privateKey: webcrypto.CryptoKey;
}

async function keptAuthority(folder: string, nowMs: number): Promise<Authority> {
  const files = { certificate: join(folder, 'authority.pem'), key: join(folder, 'authority.key') };
  const pem = readPrivateFile(files.certificate);
  const key = readPrivateFile(files.key);
  if (pem !== null && key !== null) {
    const certificate = new X509Certificate(pem);
    if (certificate.notAfter.getTime() - nowMs > serverDays * dayMs) {
      return { certificate, privateKey: await privateKeyOf(key) };
    }
  }
  const keys = await newKeys();
  const certificate = await X509CertificateGenerator.createSelfSigned({
    serialNumber: serialNumber(),
    name: 'CN=Flylarder of this household',
    notBefore: new Date(nowMs - dayMs),
    notAfter: new Date(nowMs + authorityDays * dayMs),
    signingAlgorithm: curve,
    keys,
    extensions: [
      new BasicConstraintsExtension(true, 0, true),
      new KeyUsagesExtension(KeyUsageFlags.keyCertSign | KeyUsageFlags.cRLSign, true),
      await SubjectKeyIdentifierExtension.create(keys.publicKey),
      new Extension(nameConstraints, true, homeNetworksOnly()),
    ],
  });
  writePrivateFile(files.key, await pemOf(keys.privateKey));
  writePrivateFile(files.certificate, certificate.toString('pem'));
  return { certificate, privateKey: keys.privateKey };
}

async function issue(authority: Authority, names: string[], nowMs: number): Promise<{ chain: string; key: string }> {
  const keys = await newKeys();
  const certificate = await X509CertificateGenerator.create({
    serialNumber: serialNumber(),
    subject: 'CN=Flylarder',
    issuer: authority.certificate.subject,
    notBefore: new Date(nowMs - dayMs),
    notAfter: new Date(nowMs + serverDays * dayMs),
    signingAlgorithm: curve,
    publicKey: keys.publicKey,
    signingKey: authority.privateKey,
    extensions: [
      new BasicConstraintsExtension(false, undefined, true),
      new KeyUsagesExtension(KeyUsageFlags.digitalSignature, true),
      new ExtendedKeyUsageExtension([ExtendedKeyUsage.serverAuth]),
      new SubjectAlternativeNameExtension(names.map(alternativeName)),
      await AuthorityKeyIdentifierExtension.create(authority.certificate.publicKey),
    ],
  });
  const chain = `${certificate.toString('pem')}\n${authority.certificate.toString('pem')}\n`;
  return { chain, key: await pemOf(keys.privateKey) };
}

/** Issued by this authority, for at least these names, and good for some while yet. */
function covers(chain: string, authority: X509Certificate, names: string[], nowMs: number): boolean {
  const [server, issuer] = PemConverter.decode(chain).map((raw) => new X509Certificate(raw));
  const known =
    server
      ?.getExtension(SubjectAlternativeNameExtension)
      ?.names.toJSON()
      .map(({ value }) => value) ?? [];
  return (
    server !== undefined &&
    issuer?.equal(authority) === true &&
    names.every((name) => known.includes(name)) &&
    server.notAfter.getTime() - nowMs > renewBeforeDays * dayMs
  );
}

function alternativeName(value: string): { type: 'ip' | 'dns'; value: string } {
  return { type: /^[\d.]+$|:/.test(value) ? 'ip' : 'dns', value };
}

function serialNumber(): string {
  const bytes = webcrypto.getRandomValues(new Uint8Array(16));
  // Positive and not zero in DER.
  bytes[0] = ((bytes[0] as number) & 0x7f) | 0x01;
  return Buffer.from(bytes).toString('hex');
}

function newKeys(): Promise<Keys> {
  return webcrypto.subtle.generateKey(curve, true, ['sign', 'verify']) as Promise<Keys>;
}

async function pemOf(key: webcrypto.CryptoKey): Promise<string> {
  return PemConverter.encode(await webcrypto.subtle.exportKey('pkcs8', key), 'PRIVATE KEY');
}

function privateKeyOf(pem: string): Promise<webcrypto.CryptoKey> {
  return webcrypto.subtle.importKey('pkcs8', PemConverter.decodeFirst(pem), curve, true, ['sign']);
}
