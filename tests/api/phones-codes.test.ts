import { describe, expect, it } from 'vitest';
import { drawCode, hashOfCode, typedCode } from '../../src/access/phones/pairing-code.ts';
import { SlowGuesses } from '../../src/access/phones/slow-guesses.ts';
import { Problem, problem } from '../../src/platform/problems/index.ts';

const key = new TextEncoder().encode('a secret for tests that is long enough for a key');

describe('the code of an invitation', () => {
  it('is eight digits of Crockford base 32 in two groups, and every digit comes up in every place', () => {
    const seen = Array.from({ length: 8 }, () => new Set<string>());
    for (let drawn = 0; drawn < 3_000; drawn += 1) {
      const code = drawCode();
      expect(code).toMatch(/^[0-9A-HJKMNP-TV-Z]{4}-[0-9A-HJKMNP-TV-Z]{4}$/);
      [...code.replace('-', '')].forEach((digit, place) => {
        seen[place]?.add(digit);
      });
    }
    expect(seen.map(({ size }) => size)).toEqual(Array(8).fill(32));
  });

  it('does not come twice among two thousand', () => {
    // By the birthday bound 2,000^2 / (2 x 2^40): 2 in a million.
    expect(new Set(Array.from({ length: 2_000 }, drawCode)).size).toBe(2_000);
  });

  it.each([
    ['XK7P-4M2Q', 'XK7P-4M2Q'],
    ['xk7p4m2q', 'XK7P-4M2Q'],
    ['  xk7p - 4m2q ', 'XK7P-4M2Q'],
    ['XK 7P 4M 2Q', 'XK7P-4M2Q'],
    // Crockford, "Base 32": on decoding, O is 0, and I and L are 1 (https://www.crockford.com/base32.html).
    ['oOiI-lL11', '0011-1111'],
  ])('typed as %j is read as %s', (typed, read) => {
    expect(typedCode.parse(typed)).toBe(read);
  });

  it.each(['', 'XK7P-4M2', 'XK7P-4M2QQ', 'XK7P-4M2U', 'XK7P-4M2*', 'ＸＫ７Ｐ４Ｍ２Ｑ', '-'.repeat(41)])(
    'is not %j',
    (typed) => {
      expect(typedCode.safeParse(typed).success).toBe(false);
    },
  );

  it('is kept as something that cannot be computed without the secret of the service', () => {
    const other = new TextEncoder().encode('another secret for tests that is long enough');
    expect(hashOfCode(key, 'XK7P-4M2Q')).toMatch(/^[0-9a-f]{64}$/);
    expect(hashOfCode(key, 'XK7P-4M2Q')).toBe(hashOfCode(key, 'XK7P-4M2Q'));
    expect(hashOfCode(other, 'XK7P-4M2Q')).not.toBe(hashOfCode(key, 'XK7P-4M2Q'));
  });
});

describe('guessing codes', () => {
  const wrong = async () => {
    throw problem('pairing_code_unknown');
  };
  const right = async () => 'paired';

  it('is let through ten times a minute from one address, and then has to wait', async () => {
    const guesses = new SlowGuesses();
    for (let guess = 0; guess < 10; guess += 1) {
      await expect(guesses.count('203.0.113.7', wrong)).rejects.toThrow('There is no such code');
    }
    const slowed = await guesses.count('203.0.113.7', right).catch((error: unknown) => error);
    expect(slowed).toBeInstanceOf(Problem);
    const { code, details } = slowed as Problem;
    expect(code).toBe('pairing_slowed');
    const seconds = Number(details.headers?.['retry-after']);
    expect(seconds).toBeGreaterThan(50);
    expect(seconds).toBeLessThanOrEqual(60);
    expect(await guesses.count('203.0.113.8', right)).toBe('paired');
  });

  it('at the same moment does not slip through', async () => {
    const guesses = new SlowGuesses();
    const refused = await Promise.all(
      Array.from({ length: 50 }, () => guesses.count('203.0.113.7', wrong).catch((error: unknown) => error)),
    );
    expect(refused.filter((error) => (error as Problem).code === 'pairing_slowed')).toHaveLength(40);
  });

  it('with right codes is never slowed: a panel pairs over one address', async () => {
    const guesses = new SlowGuesses();
    for (let phone = 0; phone < 40; phone += 1)
      expect(await guesses.count('203.0.113.7', right)).toBe('paired');
  });

  it('is not what somebody does who has a code that was used: that does not count', async () => {
    const guesses = new SlowGuesses();
    const used = async () => {
      throw problem('pairing_code_used');
    };
    for (let phone = 0; phone < 40; phone += 1) {
      await expect(guesses.count('203.0.113.7', used)).rejects.toThrow('Another phone was paired');
    }
  });

  it('is counted over a whole /64 of IPv6, which one household has to itself', async () => {
    const guesses = new SlowGuesses();
    for (let guess = 0; guess < 10; guess += 1) {
      await expect(guesses.count(`2001:db8:1:2::${guess + 1}`, wrong)).rejects.toThrow(
        'There is no such code',
      );
    }
    await expect(guesses.count('2001:db8:1:2:ffff::1', right)).rejects.toThrow(/Wait \d+ seconds/);
    expect(await guesses.count('2001:db8:1:3::1', right)).toBe('paired');
  });
});
