/**
 * Is `api-docs/evidence.md` true? Its example is read out of the page and checked by other code than the service's:
 * a plain serializer for this simple case (RFC 8785, section 3.2) and Node.js's own SHA-256 and ECDSA. Then the
 * service's own checks must find the same.
 */
import { createHash, createPublicKey, type JsonWebKey, verify } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { importJWK } from 'jose';
import { describe, expect, it } from 'vitest';
import { hashWithSalt } from '../../../src/cards/paper/hash-with-salt.ts';
import { canonicalText, evidenceTypes, readJws, signedPostingForm } from '../../../src/evidence/index.ts';
import { firstBreak, type SealedLine } from '../../../src/ledger/chain.ts';
import { type MadeOf, recompute, ruleFingerprint, rulingFingerprint } from '../../../src/results/offline.ts';

type Json = null | boolean | number | string | readonly Json[] | { readonly [name: string]: Json };
type Members = { readonly [name: string]: Json };

const page = readFileSync(new URL('../../../api-docs/evidence.md', import.meta.url), 'utf8');
const blocks = new Map(
  [...page.matchAll(/^```(?:json|text) (\S+)\n([\s\S]*?)\n```$/gm)].map(([, name = '', text = '']) => [
    name,
    text,
  ]),
);

function block(name: string): string {
  const text = blocks.get(name);
  if (text === undefined) throw new Error(`the page has no block ${name}`);
  return text;
}

const read = <Shape = Members>(name: string): Shape => JSON.parse(block(name));
/** Without the line breaks of the page. */
const joined = (name: string): string => block(name).replaceAll('\n', '');
/** `name value`, one to a line. */
const listed = (name: string) =>
  Object.fromEntries(
    block(name)
      .split('\n')
      .map((line) => line.split(' ')),
  );

/** RFC 8785, section 3.2, as far as the example needs it: whole numbers only. */
function plainly(value: Json): string {
  if (Array.isArray(value)) return `[${value.map(plainly).join(',')}]`;
  if (typeof value === 'object' && value !== null) {
    // Section 3.2.3: by UTF-16 code units, which is how JavaScript compares texts.
    const members = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
    return `{${members.map(([name, inner]) => `${JSON.stringify(name)}:${plainly(inner)}`).join(',')}}`;
  }
  if (typeof value === 'number' && !Number.isSafeInteger(value)) throw new Error('not for fractions');
  return JSON.stringify(value);
}

const sha256 = (text: string) => createHash('sha256').update(text, 'utf8');
const fingerprint = (value: Json): string => sha256(plainly(value)).digest('hex');
const decoded = (part: string): string => Buffer.from(part, 'base64url').toString('utf8');

const [serviceKey] = read<{ keys: [JsonWebKey & { kid: string }] }>('jwks').keys;
const phoneKey = read<JsonWebKey>('phone-key');
const thumbprints = listed('thumbprints');

interface Signed {
  readonly text: string;
  readonly typ: string;
  readonly by: 'service' | 'phone';
}

/** RFC 7515, section 5.2; ES256 is RFC 7518, section 3.4: the two numbers of the signature one behind the other. */
function expectSigned(jws: string, { text, typ, by }: Signed): void {
  const [header = '', payload = '', signature = ''] = jws.split('.');
  expect(JSON.parse(decoded(header))).toEqual({ alg: 'ES256', kid: thumbprints[by], typ });
  expect(decoded(payload)).toBe(text);
  const jwk = by === 'service' ? serviceKey : phoneKey;
  const key = { key: createPublicKey({ key: jwk, format: 'jwk' }), dsaEncoding: 'ieee-p1363' } as const;
  const holds = (signed: string) =>
    verify('sha256', Buffer.from(signed), key, Buffer.from(signature, 'base64url'));
  expect(holds(`${header}.${payload}`)).toBe(true);
  expect(holds(`${header}.${payload}A`)).toBe(false);
}

describe('the worked example of api-docs/evidence.md, by other code', () => {
  it('names each key by its thumbprint (RFC 7638, section 3)', () => {
    const thumbprint = ({ crv, kty, x, y }: JsonWebKey) =>
      sha256(`{"crv":"${crv}","kty":"${kty}","x":"${x}","y":"${y}"}`).digest('base64url');
    expect(thumbprints).toEqual({ service: thumbprint(serviceKey), phone: thumbprint(phoneKey) });
    expect(serviceKey.kid).toBe(thumbprints.service);
  });

  it('has a card in its canonical text, signed by the phone', () => {
    const card = read('card');
    expect(block('card-text')).toBe(plainly(card));
    expectSigned(joined('card-jws'), { text: plainly(card), typ: 'ringledger-card+jws', by: 'phone' });
    expect(listed('card-hashes')).toEqual({
      contentHash: fingerprint(card.content ?? null),
      jwsHash: sha256(joined('card-jws')).digest('hex'),
    });
  });

  it('names the score sheet by the fingerprint of its definition', () => {
    const definition = readFileSync(
      new URL('../../../seed/sheets/equitation-one-mark.json', import.meta.url),
      'utf8',
    );
    expect(read<{ sheet: Members }>('card').sheet.hash).toBe(fingerprint(JSON.parse(definition)));
  });

  it('hashes a paper card with its salt, and names a ruling by its fingerprint', () => {
    expect(listed('paper-hash').saltedHash).toBe(fingerprint(read('paper')));
    expect(listed('ruling-hash').rulingHash).toBe(fingerprint(read('ruling')));
  });

  it.each([1, 2])('hashes and seals line %i of the ledger', (sequence) => {
    const { hash, ...line } = read(`line-${sequence}`);
    expect(line.sequence).toBe(sequence);
    expect(hash).toBe(fingerprint(line));
    const [header = '', left, signature = ''] = joined(`seal-${sequence}`).split('.');
    expect(left).toBe('');
    // RFC 7515, appendix F: whoever checks puts the payload back.
    const jws = `${header}.${Buffer.from(plainly(line)).toString('base64url')}.${signature}`;
    expectSigned(jws, { text: plainly(line), typ: 'ringledger-line+jws', by: 'service' });
  });

  it('links card, lines and posting to one another', () => {
    const [first, second] = [read<Linked>('line-1'), read<Linked>('line-2')];
    const { contentHash, jwsHash } = listed('card-hashes');
    expect([first.previousHash, second.previousHash]).toEqual([null, first.hash]);
    expect(first.body.jwsHash).toBe(jwsHash);
    const { bodyHash, ruleHash, ledger, postedAt } = read('posting');
    const body = read<{ rule: Json; sheet: Json; cards: readonly Members[] }>('posting-body');
    expect(body.cards.map((card) => card.contentHash)).toEqual([contentHash]);
    expect(bodyHash).toBe(fingerprint(read('posting-body')));
    expect(ruleHash).toBe(fingerprint({ rule: body.rule, sheet: body.sheet }));
    expect(ledger).toEqual({ sequence: 1, hash: first.hash });
    expect(second.at).toBe(postedAt);
    expect(second.body).toMatchObject({ bodyHash, jwsHash: sha256(joined('posting-jws')).digest('hex') });
  });

  it('has posting and archive signed by the service', () => {
    const posting = plainly(read('posting'));
    expectSigned(joined('posting-jws'), { text: posting, typ: 'ringledger-posting+jws', by: 'service' });
    const archive = read('archive');
    expectSigned(joined('archive-jws'), {
      ...{ text: plainly(archive), typ: 'ringledger-archive+jws', by: 'service' },
    });
    expect(archive.archiveHash).toBe(fingerprint({ form: 'ringledger show archive 1', names: 'none' }));
    expect(archive.head).toEqual({ sequence: 2, hash: read<Linked>('line-2').hash });
  });
});

interface Linked {
  readonly at: string;
  readonly hash: string;
  readonly previousHash: string | null;
  readonly body: Members;
}

describe('the same example, by the code of the service', () => {
  const keyOf = async (jwk: JsonWebKey) => {
    const key = await importJWK({ ...jwk, kty: 'EC' }, 'ES256');
    if (key instanceof Uint8Array) throw new Error('not a key of P-256');
    return key;
  };

  it('each signature is read as what it is, and as nothing else', async () => {
    const [phone, service] = [await keyOf(phoneKey), await keyOf(serviceKey)];
    const card = { key: phone, kid: String(thumbprints.phone), typ: evidenceTypes.card };
    expect(await readJws(joined('card-jws'), card)).toEqual({ ok: true, payload: block('card-text') });
    const posting = { key: service, kid: String(thumbprints.service), typ: evidenceTypes.posting };
    expect(await readJws(joined('posting-jws'), posting)).toMatchObject({ ok: true });
    const asArchive = { ...posting, typ: evidenceTypes.archive };
    expect(await readJws(joined('archive-jws'), asArchive)).toMatchObject({ ok: true });
    expect(await readJws(joined('posting-jws'), asArchive)).toEqual({ ok: false, fault: 'not-of-this-form' });
  });

  it('the ledger holds, and breaks where one digit is another', async () => {
    const keys = new Map([[String(thumbprints.service), await keyOf(serviceKey)]]);
    const lines = [1, 2].map((at) => ({ ...read<SealedLine>(`line-${at}`), seal: joined(`seal-${at}`) }));
    expect(await firstBreak(lines, keys)).toBeUndefined();
    const changed = lines.map((line) => ({ ...line, at: line.at.replace('14:20', '14:21') }));
    expect(await firstBreak(changed, keys)).toEqual({ sequence: 2, fault: 'hash-wrong' });
  });

  it('the posting is computed anew from the card, byte for byte', () => {
    const body = read<Parameters<typeof recompute>[0]>('posting-body');
    const { content } = read<{ content: Members }>('card');
    const definition = JSON.parse(
      readFileSync(new URL('../../../seed/sheets/equitation-one-mark.json', import.meta.url), 'utf8'),
    );
    const contents = new Map([[String(body.cards[0]?.revisionId), content]]) as unknown as MadeOf['contents'];
    const again = recompute({ ...body, results: [] }, { sheet: { definition }, maneuvers: [], contents });
    expect(canonicalText(again)).toBe(plainly(read('posting-body')));
    expect(read('posting')).toMatchObject({ form: signedPostingForm, ruleHash: ruleFingerprint(body) });
  });

  it('paper card and ruling have the same hashes', () => {
    expect(hashWithSalt(read<Parameters<typeof hashWithSalt>[0]>('paper'))).toBe(
      listed('paper-hash').saltedHash,
    );
    const ruling = read<Parameters<typeof rulingFingerprint>[0]>('ruling');
    expect(rulingFingerprint(ruling)).toBe(listed('ruling-hash').rulingHash);
  });
});
