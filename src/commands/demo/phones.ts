/** The phones of the demo's judges, scribe and gate: paired like any other, by a code of the office. */
import { calculateJwkThumbprint, exportJWK, generateKeyPair, importJWK } from 'jose';
import { PhoneClient, type PhoneKey } from '../../phone/index.ts';
import { type Api, Refused, type Sends } from './api.ts';
import type { KeptFiles, KeptPhoneKey } from './kept-files.ts';

export interface DemoPhone {
  readonly key: PhoneKey;
  readonly sends: Sends;
}

export interface WantedPhone {
  /** judge-1, scribe-2, gate: by this name the demo's commands call it. */
  readonly called: string;
  readonly role: 'judge' | 'scribe' | 'gate';
  /** The judge, or the judge that the scribe writes for. */
  readonly personId?: string;
}

export interface PhonesOfShow {
  readonly api: Api;
  readonly files: KeptFiles;
  readonly showId: string;
  readonly secretary: Sends;
}

/** Those that were paired at an earlier start are found again; the others are paired now. */
export async function readyPhones(
  at: PhonesOfShow,
  wanted: readonly WantedPhone[],
): Promise<ReadonlyMap<string, DemoPhone>> {
  const kept = at.files.phones();
  const before = kept?.showId === at.showId ? kept.keys : {};
  const keys: Record<string, KeptPhoneKey> = { ...before };
  const phones = new Map<string, DemoPhone>();
  for (const one of wanted) {
    const known = before[one.called];
    const phone = known === undefined ? undefined : await pairedBefore(at.api, known);
    if (phone !== undefined) {
      phones.set(one.called, phone);
      continue;
    }
    const key = await newKey();
    phones.set(one.called, await pair(at, one, key));
    keys[one.called] = key;
    at.files.keepPhones({ showId: at.showId, keys });
  }
  return phones;
}

/** `undefined`: the service does not know it any more. */
async function pairedBefore(api: Api, key: KeptPhoneKey): Promise<DemoPhone | undefined> {
  const phone = await phoneWith(api.address, key);
  try {
    await api.ask({ method: 'GET', path: '/phones/current', as: phone.sends });
    return phone;
  } catch (error) {
    if (error instanceof Refused) return undefined;
    throw error;
  }
}

async function pair(
  { api, showId, secretary }: PhonesOfShow,
  { called, role, personId }: WantedPhone,
  key: KeptPhoneKey,
): Promise<DemoPhone> {
  const { body: invitation } = await api.ask<{ code: string }>({
    ...{ method: 'POST', path: `/shows/${showId}/invitations`, as: secretary },
    body: { role, label: called, ...(personId === undefined ? {} : { personId }) },
  });
  const phone = await phoneWith(api.address, key);
  const client = new PhoneClient(api.address, phone.key);
  const paired = { method: 'POST', path: '/pairings', as: () => client.pair(invitation.code) } as const;
  await api.ask(paired);
  return phone;
}

/** Unlike that of a real phone it can be read: the demo's commands sign with it after the demo has stopped. */
async function newKey(): Promise<KeptPhoneKey> {
  const { privateKey } = await generateKeyPair('ES256', { extractable: true });
  const { x, y, d } = await exportJWK(privateKey);
  if (x === undefined || y === undefined || d === undefined) throw new Error('a key without its parts');
  return { kty: 'EC', crv: 'P-256', x, y, d };
}

export async function phoneWith(address: string, kept: KeptPhoneKey): Promise<DemoPhone> {
  const { d: _private, ...publicKey } = kept;
  const privateKey = await importJWK({ ...kept }, 'ES256');
  if (privateKey instanceof Uint8Array) throw new Error('a key of P-256 that is none');
  const key = { privateKey, publicKey, thumbprint: await calculateJwkThumbprint({ ...publicKey }) };
  const client = new PhoneClient(address, key);
  return { key, sends: (request) => client.request(request) };
}
