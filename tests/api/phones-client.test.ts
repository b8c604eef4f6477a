import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { makePhoneKey, PhoneClient, type PhoneKey } from '../../src/phone/index.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';
import { type Office, openOffice } from './office-client.ts';

let service: TestApp;
let office: Office;
let address: string;

beforeAll(async () => {
  service = await buildTestApp();
  address = service.app.listeningOrigin;
  office = await openOffice(service);
});
afterAll(() => service.close());

async function pairedClient(): Promise<{ client: PhoneClient; key: PhoneKey; phoneId: string }> {
  const { code } = await office.done('post', '/invitations', { role: 'gate' });
  const key = await makePhoneKey();
  const client = new PhoneClient(address, key);
  const answer = await client.pair(code);
  expect(answer.status).toBe(201);
  const { id } = (await answer.json()) as { id: string };
  return { client, key, phoneId: id };
}

const current = (client: PhoneClient) => client.request({ method: 'GET', path: '/v1/phones/current' });
const codeOf = async (answer: Response) => ((await answer.json()) as { code?: string }).code;
const later = (minutes: number) =>
  service.clock.set(new Date(service.clock.now().getTime() + minutes * 60_000).toISOString());

describe('the phone that comes with the service', () => {
  it('pairs over the network and asks what it is', async () => {
    const { client, phoneId } = await pairedClient();
    const answer = await current(client);
    expect(answer.status).toBe(200);
    expect(await answer.json()).toMatchObject({ id: phoneId, role: 'gate', show: { id: office.showId } });
  });

  it('has a key that cannot be read, not even by itself', async () => {
    const { key } = await pairedClient();
    expect(key.privateKey.extractable).toBe(false);
    await expect(crypto.subtle.exportKey('jwk', key.privateKey)).rejects.toThrow();
  });

  it('goes on after its nonce changed, and after its token ended while it slept', async () => {
    const { client } = await pairedClient();
    expect((await current(client)).status).toBe(200);
    later(11);
    expect((await current(client)).status).toBe(200);
    // By the phone's own count no time has passed.
    later(16);
    expect((await current(client)).status).toBe(200);
  });

  it('asks for one token where it has many requests at once', async () => {
    const { client } = await pairedClient();
    const answers = await Promise.all(Array.from({ length: 10 }, () => current(client)));
    expect(answers.map(({ status }) => status)).toEqual(Array(10).fill(200));
    later(16);
    const again = await Promise.all(Array.from({ length: 10 }, () => current(client)));
    expect(again.map(({ status }) => status)).toEqual(Array(10).fill(200));
  });

  it('hears that it was taken off the show, with every request', async () => {
    const { client, phoneId } = await pairedClient();
    await office.call('delete', `/phones/${phoneId}?why=lost`);
    const answers = await Promise.all([current(client), current(client)]);
    expect(await Promise.all(answers.map(codeOf))).toEqual(['phone_revoked', 'phone_revoked']);
  });

  it('hears of the network when it is gone', async () => {
    const nowhere = new PhoneClient('http://127.0.0.1:1', await makePhoneKey());
    await expect(nowhere.pair('XK7P-4M2Q')).rejects.toThrow();
    await expect(current(nowhere)).rejects.toThrow();
  });
});
