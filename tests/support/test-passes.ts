/** Senders for tests: sessions of the office and paired phones, made by the service's own code. */
import { createHash, createHmac } from 'node:crypto';
import type request from 'supertest';
import { type Duty, openSession } from '../../src/access/index.ts';
import { makeInvitation } from '../../src/access/phones/invitations.ts';
import { pairPhone } from '../../src/access/phones/pair-phone.ts';
import { ProofNonces } from '../../src/access/phones/proof-nonces.ts';
import { inSqlTransaction } from '../../src/platform/database.ts';
import type { TestApp } from './test-app.ts';
import { makeTestPhone, type TestPhone } from './test-phone.ts';

/** Given to a request by `.use(pass)`: sends what this sender sends with it. */
export interface Pass {
  (test: request.Test): void;
  /** The same for a request that is not made by supertest. */
  readonly headers: (method: string, url: string) => Record<string, string>;
}

export interface PhonePass extends Pass {
  readonly phoneId: string;
  readonly phone: TestPhone;
}

export interface OfficePass extends Pass {
  readonly accountId: string;
  readonly sessionId: string;
  readonly token: string;
}

interface WantedOffice {
  readonly role: 'office' | Duty;
  /** Left out: the whole service. */
  readonly showId?: string;
}

interface WantedPhone {
  readonly role: 'judge' | 'scribe' | 'gate';
  readonly showId: string;
  /** Of a judge: one of her seats. */
  readonly seatId?: string;
}

export type Wanted = WantedOffice | WantedPhone | { readonly role: 'public'; readonly showId?: string };

/** Sends nothing. */
export const noPass: Pass = Object.assign(() => undefined, { headers: () => ({}) });

export function passFor(service: TestApp, wanted: WantedOffice): Promise<OfficePass>;
export function passFor(service: TestApp, wanted: WantedPhone): Promise<PhonePass>;
export function passFor(service: TestApp, wanted: Wanted): Promise<Pass>;
export async function passFor(service: TestApp, wanted: Wanted): Promise<Pass> {
  switch (wanted.role) {
    case 'public':
      return noPass;
    case 'judge':
    case 'scribe':
    case 'gate':
      return phonePass(service, wanted as WantedPhone);
    default:
      return officePass(service, wanted as WantedOffice);
  }
}

function passOf(headers: Pass['headers']): Pass {
  const use = (test: request.Test) => void test.set(headers(test.method, test.url));
  return Object.assign(use, { headers });
}

/** A new account each time. `office`: a show secretary, or a manager where she is for the whole service. */
async function officePass({ parts }: TestApp, { role, showId }: WantedOffice): Promise<OfficePass> {
  const accountId = parts.ids.next();
  const duty = role !== 'office' ? role : showId === undefined ? 'manager' : 'secretary';
  await parts.db.prisma.account.create({
    data: {
      ...{ id: accountId, name: `Office ${accountId}`, signIn: accountId, duty },
      ...{ wholeService: showId === undefined, createdAt: parts.clock.now() },
      ...(showId === undefined ? {} : { shows: { create: { showId } } }),
    },
  });
  const { id: sessionId, token } = await inSqlTransaction(parts.db, (tx) =>
    openSession(parts, tx, accountId),
  );
  const pass = passOf(() => ({ authorization: `Bearer ${token}` }));
  return Object.assign(pass, { accountId, sessionId, token });
}

/** A new phone each time. */
async function phonePass(service: TestApp, { role, showId, seatId }: WantedPhone): Promise<PhonePass> {
  const { parts } = service;
  const createdBy = parts.ids.next();
  const asked = { ...(await whose(service, { role, seatId })), minutes: 30 };
  const origin = 'http://127.0.0.1';
  const { code } = await makeInvitation(parts, { showId, createdBy, origin, asked });
  const phone = makeTestPhone();
  const { publicKey, thumbprint } = phone;
  const proof = { publicKey, thumbprint, hash: createHash('sha256').update(code).digest('hex') };
  const { id: phoneId } = await pairPhone(parts, { code, proof });
  return Object.assign(passOf(phoneHeaders(service, { phone, phoneId })), { phone, phoneId });
}

async function whose(
  { parts }: TestApp,
  { role, seatId }: { readonly role: WantedPhone['role']; readonly seatId: string | undefined },
) {
  if (role === 'gate') return { role };
  const seat = await parts.db.prisma.panelSeat.findUniqueOrThrow({ where: { id: seatId ?? '' } });
  return { role, personId: seat.personId };
}

/** A token that is good now, and a proof for just this request. */
function phoneHeaders(
  { parts }: TestApp,
  { phone, phoneId }: Pick<PhonePass, 'phone' | 'phoneId'>,
): Pass['headers'] {
  const nonces = new ProofNonces(parts);
  return (method, url) => {
    const iat = Math.floor(parts.clock.now().getTime() / 1_000);
    const cnf = { jkt: phone.thumbprint };
    const claims = { cnf, iss: 'ringledger', aud: 'ringledger phones', sub: phoneId, iat, exp: iat + 900 };
    const token = tokenOf(parts.tokenKey, { ...claims, jti: parts.ids.next() });
    const { origin, pathname } = new URL(url);
    const ath = createHash('sha256').update(token).digest('base64url');
    const proof = {
      htm: method,
      htu: origin + pathname,
      iat,
      jti: parts.ids.next(),
      nonce: nonces.now(),
      ath,
    };
    return { authorization: `DPoP ${token}`, dpop: phone.prove(proof) };
  };
}

/** JWT of RFC 7519 with HS256, made here once more, so that a request needs no waiting. */
function tokenOf(key: Uint8Array, claims: object): string {
  const part = (value: object) => Buffer.from(JSON.stringify(value)).toString('base64url');
  const signed = `${part({ alg: 'HS256', typ: 'at+jwt' })}.${part(claims)}`;
  return `${signed}.${createHmac('sha256', key).update(signed).digest('base64url')}`;
}
