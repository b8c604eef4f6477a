import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { GuessesOfStrangers } from '../../src/access/accounts/guesses-of-strangers.ts';
import { codeAt, newSecret, secretUri, stepOfCode } from '../../src/access/accounts/one-time-code.ts';
import { hashPassword, isPassword } from '../../src/access/accounts/password-hash.ts';
import { isCommonPassword } from '../../src/access/accounts/password-strength.ts';
import { seal, unseal } from '../../src/access/accounts/sealed-secret.ts';
import { drawSetupCode, hashOfSetupCode, typedSetupCode } from '../../src/access/accounts/setup-code.ts';
import { afterFailure, secondsToWait, waitAfter } from '../../src/access/accounts/slowed-guessing.ts';

const atSecond = (second: number) => new Date(second * 1_000);

describe('codes of the second factor', () => {
  // RFC 6238, appendix B, the rows of SHA-1: key "12345678901234567890". The table has eight digits; the last six are
  // the six-digit code, since both are one number modulo a power of ten (RFC 4226, 5.3).
  const secret = 'GEZDGNBVGY3TQOJQGEZDGNBVGY3TQOJQ';
  const table: ReadonlyArray<readonly [second: number, code: string, step: number]> = [
    [59, '94287082', 0x1],
    [1111111109, '07081804', 0x23523ec],
    [1111111111, '14050471', 0x23523ed],
    [1234567890, '89005924', 0x273ef07],
    [2000000000, '69279037', 0x3f940aa],
    [20000000000, '65353130', 0x27bc86aa],
  ];

  it('are those of RFC 6238, appendix B', () => {
    for (const [second, code, step] of table) {
      const at = atSecond(second);
      expect(codeAt(secret, at)).toBe(code.slice(-6));
      expect(stepOfCode({ secret, code: code.slice(-6), at, lastStep: null })).toBe(step);
    }
  });

  it('are taken one step early or late, and not two', () => {
    const code = codeAt(secret, atSecond(3_000_000));
    const step = 100_000;
    const taken = [-60, -30, 0, 29, 30, 59, 60].map((apart) =>
      stepOfCode({ secret, code, at: atSecond(3_000_000 + apart), lastStep: null }),
    );
    expect(taken).toEqual([undefined, step, step, step, step, step, undefined]);
  });

  it('are taken once, and none of an earlier step after that', () => {
    const at = atSecond(3_000_000);
    const code = codeAt(secret, at);
    const before = codeAt(secret, atSecond(3_000_000 - 30));
    expect(stepOfCode({ secret, code, at, lastStep: 99_999 })).toBe(100_000);
    expect(stepOfCode({ secret, code, at, lastStep: 100_000 })).toBeUndefined();
    expect(stepOfCode({ secret, code: before, at, lastStep: 100_000 })).toBeUndefined();
  });

  it('of another secret, of other lengths, or of no digits are refused', () => {
    const at = atSecond(59);
    for (const code of ['94287082', '28708', '', '000000', 'abcdef', ' 287082']) {
      expect(stepOfCode({ secret, code, at, lastStep: null })).toBeUndefined();
    }
    expect(stepOfCode({ secret: newSecret(), code: '287082', at, lastStep: null })).toBeUndefined();
  });

  it('come from a secret of 160 bits that an app reads off an address', () => {
    const made = newSecret();
    expect(made).toMatch(/^[A-Z2-7]{32}$/);
    expect(newSecret()).not.toBe(made);
    // The key URI format that authenticator apps share (from memory).
    const uri = new URL(secretUri(made, 'ada@example.org'));
    expect(uri.href).toMatch(/^otpauth:\/\/totp\/Ringledger:ada(%40|@)example\.org\?/);
    expect(Object.fromEntries(uri.searchParams)).toEqual({
      ...{ issuer: 'Ringledger', secret: made, algorithm: 'SHA1', digits: '6', period: '30' },
    });
  });
});

describe('the secret of a second factor', () => {
  const tokenKey = new TextEncoder().encode('a secret for tests that is long enough for a key');
  const accountId = '0199d7a8-5f10-7c3e-8d6b-2f4a1c9e7b30';

  it('is sealed anew each time and opens for its own account', () => {
    const secret = newSecret();
    const sealed = seal(secret, { tokenKey, accountId });
    expect(sealed).not.toContain(secret);
    expect(seal(secret, { tokenKey, accountId })).not.toBe(sealed);
    expect(unseal(sealed, { tokenKey, accountId })).toBe(secret);
  });

  it('does not open for another account, under another key, or altered', () => {
    const sealed = seal(newSecret(), { tokenKey, accountId });
    const otherKey = new TextEncoder().encode('another secret for tests that is long enough');
    const bytes = Buffer.from(sealed, 'base64url');
    bytes.writeUInt8(bytes.readUInt8(40) ^ 1, 40);
    expect(unseal(sealed, { tokenKey, accountId: accountId.replace('30', '31') })).toBeUndefined();
    expect(unseal(sealed, { tokenKey: otherKey, accountId })).toBeUndefined();
    expect(unseal(bytes.toString('base64url'), { tokenKey, accountId })).toBeUndefined();
    for (const cut of ['', sealed.slice(0, 20), sealed.slice(0, -4)]) {
      expect(unseal(cut, { tokenKey, accountId })).toBeUndefined();
    }
  });
});

describe('a password', () => {
  it('is checked against argon2id as its reference implementation makes it', async () => {
    // phc-winner-argon2, src/test.c: argon2id version 19, t=2, m=65536, p=1, "password", "somesalt".
    const reference =
      '$argon2id$v=19$m=65536,t=2,p=1$c29tZXNhbHQ$CTFhFdXPJO1aFaMaO6Mm5c8y7cJHAph8ArZWb2GRPPc';
    expect(await isPassword('password', reference)).toBe(true);
    expect(await isPassword('Password', reference)).toBe(false);
  });

  it('is kept as argon2id with the parameters of the OWASP Password Storage Cheat Sheet and a salt of its own', async () => {
    // "argon2id with a minimum configuration of 19 MiB of memory, an iteration count of 2, and 1 degree of parallelism"
    const [one, two] = [await hashPassword('a quiet lope to C'), await hashPassword('a quiet lope to C')];
    expect(one).toMatch(/^\$argon2id\$v=19\$m=19456,t=2,p=1\$[\w+/]{22}\$[\w+/]{43}$/);
    expect(one).not.toBe(two);
    expect([await isPassword('a quiet lope to C', one), await isPassword('a quiet lope to C', two)]).toEqual([
      ...[true, true],
    ]);
  });

  it('counts to its last character, in its own case, with its blanks', async () => {
    const long = `${'x7 Kp2m'.repeat(18)}ab`;
    expect(long).toHaveLength(128);
    const kept = await hashPassword(long);
    expect(await isPassword(long, kept)).toBe(true);
    for (const near of [long.slice(0, -1), `${long} `, long.toLowerCase(), ` ${long}`]) {
      expect(await isPassword(near, kept)).toBe(false);
    }
  });

  it('with an accent is the same whichever way the keyboard writes it', async () => {
    const kept = await hashPassword('caf\u00e9 au lait matin');
    expect(await isPassword('cafe\u0301 au lait matin', kept)).toBe(true);
  });

  it('of an account that has none is never right', async () => {
    expect(await isPassword('', null)).toBe(false);
    expect(await isPassword('password', null)).toBe(false);
  });
});

describe('a password that a guesser tries early', () => {
  const common = (password: string) => isCommonPassword(password, ['Ada Brandt', 'ada.brandt']);

  it('is a leaked one, a run on the keyboard, a repetition, a date', async () => {
    const refused = ['password1234', 'P@ssw0rd1234', 'qwertyuiop123', 'leavemealone', '123456654321'];
    for (const password of [...refused, 'aaaaaaaaaaaaaaaa', 'abcdefghijklmnop', '1qaz2wsx3edc']) {
      expect([password, await common(password)]).toEqual([password, true]);
    }
  });

  it('is the name of the person or of the place', async () => {
    for (const password of [
      'adabrandtadabrandt',
      'ada.brandt2026',
      'BrandtAda2026',
      'ringledger2026',
      'Ringledger!123',
    ]) {
      expect([password, await common(password)]).toEqual([password, true]);
    }
  });

  it('is not a long sentence without capitals or digits, nor a random one', async () => {
    for (const password of ['a quiet lope to the far cone', 'x7Kp2mQ9vL4w', 'жеребец у синего забора']) {
      expect([password, await common(password)]).toEqual([password, false]);
    }
  });

  it('is found out within a second, however it is made', async () => {
    await common('to load the lists');
    const slow = '@4aA$5sS!1iI0oO3eE7t'.repeat(7).slice(0, 128);
    const start = performance.now();
    await common(slow);
    expect(performance.now() - start).toBeLessThan(1_000);
  });
});

describe('guessing', () => {
  it('is free four times, then costs a wait that doubles up to a quarter of an hour', () => {
    const waits = Array.from({ length: 14 }, (_, failures) => waitAfter(failures));
    expect(waits).toEqual([0, 0, 0, 0, 0, 15, 30, 60, 120, 240, 480, 900, 900, 900]);
    expect(waitAfter(100_000)).toBe(900);
  });

  it('says in whole seconds how long to wait', () => {
    const at = atSecond(1_000);
    const { failures, slowedUntil } = afterFailure({ failures: 5 }, at);
    expect({ failures, slowedUntil }).toEqual({ failures: 6, slowedUntil: atSecond(1_030) });
    const later = [1_000, 1_000.5, 1_029.999, 1_030, 1_031].map((second) =>
      secondsToWait({ slowedUntil }, atSecond(second)),
    );
    expect(later).toEqual([30, 30, 1, 0, 0]);
    expect(secondsToWait({ slowedUntil: null }, at)).toBe(0);
  });

  it('names that have no account is slowed in the same steps', () => {
    const strangers = new GuessesOfStrangers();
    for (let tries = 1; tries <= 5; tries += 1) {
      expect(secondsToWait(strangers.of('nobody'), atSecond(1_000))).toBe(0);
      strangers.fail('nobody', atSecond(1_000));
    }
    expect(secondsToWait(strangers.of('nobody'), atSecond(1_000))).toBe(15);
    expect(secondsToWait(strangers.of('somebody'), atSecond(1_000))).toBe(0);
  });
});

describe('a set-up code', () => {
  it('has 125 random bits, in groups', () => {
    const codes = new Set(Array.from({ length: 200 }, drawSetupCode));
    expect(codes.size).toBe(200);
    for (const code of codes) expect(code).toMatch(/^([0-9A-HJKMNP-TV-Z]{5}-){4}[0-9A-HJKMNP-TV-Z]{5}$/);
  });

  it('is read as it was meant: small letters, blanks, an O for a 0', () => {
    const typed = typedSetupCode.parse(' 7k2qm-a1b2c d3e4f 0o1l9 zzzzz ');
    expect(typed).toBe('7K2QMA1B2CD3E4F00119ZZZZZ');
    const plain = createHash('sha256').update('7K2QMA1B2CD3E4F00119ZZZZZ').digest('hex');
    expect(hashOfSetupCode('7K2QM-A1B2C-D3E4F-00119-ZZZZZ')).toBe(plain);
    expect(hashOfSetupCode(typed)).toBe(plain);
  });

  it('with a U, too short or too long is refused', () => {
    for (const text of ['', '7K2QM', 'UUUUU-UUUUU-UUUUU-UUUUU-UUUUU', 'Z'.repeat(26), 'Z'.repeat(101)]) {
      expect(typedSetupCode.safeParse(text).success).toBe(false);
    }
  });
});
