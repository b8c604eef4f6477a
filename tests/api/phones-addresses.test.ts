import { describe, expect, it } from 'vitest';
import { ProofNonces } from '../../src/access/phones/proof-nonces.ts';
import { namesAddressOf, originOf } from '../../src/access/phones/request-address.ts';
import { readConfig } from '../../src/config.ts';

describe('the nonce of the service', () => {
  const tokenKey = new TextEncoder().encode('a secret for tests that is long enough for a key');
  const at = (time: string, key = tokenKey) =>
    new ProofNonces({ clock: { now: () => new Date(time) }, tokenKey: key });

  it('is good in its five minutes and the five after, and neither before nor later', () => {
    const nonce = at('2026-05-02T14:02:00Z').now();
    const good = ['14:00:00', '14:04:59', '14:05:00', '14:09:59'];
    const bad = ['13:59:59', '14:10:00', '23:02:00', '05:02:00'];
    expect(good.map((time) => at(`2026-05-02T${time}Z`).isGood(nonce))).toEqual([true, true, true, true]);
    expect(bad.map((time) => at(`2026-05-02T${time}Z`).isGood(nonce))).toEqual([false, false, false, false]);
    expect(at('2026-05-03T14:02:00Z').isGood(nonce)).toBe(false);
  });

  it('is the same in every process with the same secret, and unknown to any other', () => {
    const nonce = at('2026-05-02T14:02:00Z').now();
    expect(nonce).toMatch(/^[\w-]{22}$/);
    expect(at('2026-05-02T14:03:00Z').now()).toBe(nonce);
    const other = new TextEncoder().encode('another secret that is long enough for a key');
    expect(at('2026-05-02T14:02:00Z', other).isGood(nonce)).toBe(false);
  });
});

describe('the address that a proof names', () => {
  const request = { protocol: 'http', host: 'show.example:4070', url: '/v1/cards/1?x=1' };
  const open = readConfig({});
  const set = readConfig({ PUBLIC_ADDRESS: 'https://show.example' });

  it.each([
    ['http://show.example:4070/v1/cards/1', true],
    ['HTTP://SHOW.example:4070/v1/./cards/1', true],
    ['https://show.example:4070/v1/cards/1', true],
    ['http://show.example/v1/cards/1', false],
    ['http://elsewhere.example:4070/v1/cards/1', false],
    ['http://show.example:4070/v1/cards/2', false],
    ['http://show.example:4070/v1/cards/1/', false],
    ['http://show.example:4070/v1/cards/1?x=1', false],
    ['http://show.example:4070/v1/cards/1#x', false],
    ['http://a:b@show.example:4070/v1/cards/1', false],
    ['ftp://show.example:4070/v1/cards/1', false],
    ['/v1/cards/1', false],
    ['', false],
  ])('%j, where nothing is set: %s', (htu, isHere) => {
    expect(namesAddressOf(htu, open, request)).toBe(isHere);
  });

  it.each([
    ['https://show.example/v1/cards/1', true],
    ['https://show.example:443/v1/cards/1', true],
    ['http://show.example/v1/cards/1', false],
    ['http://show.example:4070/v1/cards/1', false],
  ])('%j, with PUBLIC_ADDRESS: %s, whatever the request says of itself', (htu, isHere) => {
    expect(namesAddressOf(htu, set, request)).toBe(isHere);
    expect(originOf(set, request)).toBe('https://show.example');
  });
});

describe('the setting PUBLIC_ADDRESS', () => {
  it.each(['HTTPS://Show.Example', 'https://show.example/', 'https://show.example:443'])(
    '%j is an origin',
    (set) => {
      expect(readConfig({ PUBLIC_ADDRESS: set }).publicAddress).toBe('https://show.example');
    },
  );

  it.each([
    'show.example',
    'ftp://show.example',
    'https://show.example/pair',
    'https://a:b@show.example',
    'https://',
  ])('%j is refused', (set) => {
    expect(() => readConfig({ PUBLIC_ADDRESS: set })).toThrow(/PUBLIC_ADDRESS: .*like https:/);
  });
});
