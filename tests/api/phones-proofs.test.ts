import { createHash, createHmac } from 'node:crypto';
import {
  type CryptoKey,
  calculateJwkThumbprint,
  compactVerify,
  exportJWK,
  generateKeyPair,
  importJWK,
  type JWK,
  type JWTHeaderParameters,
  SignJWT,
} from 'jose';
import { beforeAll, describe, expect, it } from 'vitest';
import { checkProof, publicKeySchema } from '../../src/access/phones/proofs.ts';
import { Problem } from '../../src/platform/problems/index.ts';

/** RFC 9449, section 4.1: the proof of a token request, with the line breaks taken out. */
const proofForToken =
  'eyJ0eXAiOiJkcG9wK2p3dCIsImFsZyI6IkVTMjU2IiwiandrIjp7Imt0eSI6IkVDIiwieCI6Imw4dEZyaHgtMzR0VjNoUklDUkRZOXpDa0RscEJo' +
  'RjQyVVFVZldWQVdCRnMiLCJ5IjoiOVZFNGpmX09rX282NHpiVFRsY3VOSmFqSG10NnY5VERWclUwQ2R2R1JEQSIsImNydiI6IlAtMjU2In19.eyJq' +
  'dGkiOiItQndDM0VTYzZhY2MybFRjIiwiaHRtIjoiUE9TVCIsImh0dSI6Imh0dHBzOi8vc2VydmVyLmV4YW1wbGUuY29tL3Rva2VuIiwiaWF0Ijox' +
  'NTYyMjYyNjE2fQ.2-GxA6T8lP4vfrg8v-FdWP0A0zdrj8igiMLvqRMUvwnQg4PtFLbdLXiOSsX0x7NVY-FNyJK70nfbV37xRZT3Lg';
/** RFC 9449, section 7.1: the proof of a request with a token, and that token. */
const proofForResource =
  'eyJ0eXAiOiJkcG9wK2p3dCIsImFsZyI6IkVTMjU2IiwiandrIjp7Imt0eSI6IkVDIiwieCI6Imw4dEZyaHgtMzR0VjNoUklDUkRZOXpDa0RscEJo' +
  'RjQyVVFVZldWQVdCRnMiLCJ5IjoiOVZFNGpmX09rX282NHpiVFRsY3VOSmFqSG10NnY5VERWclUwQ2R2R1JEQSIsImNydiI6IlAtMjU2In19.eyJq' +
  'dGkiOiJlMWozVl9iS2ljOC1MQUVCIiwiaHRtIjoiR0VUIiwiaHR1IjoiaHR0cHM6Ly9yZXNvdXJjZS5leGFtcGxlLm9yZy9wcm90ZWN0ZWRyZXNv' +
  'dXJjZSIsImlhdCI6MTU2MjI2MjYxOCwiYXRoIjoiZlVIeU8ycjJaM0RaNTNFc05yV0JiMHhXWG9hTnk1OUlpS0NBcWtzbVFFbyJ9.2oW9RP35yRqz' +
  'hrtNP86L-Ey71EOptxRimPPToA1plemAgR6pxHF8y6-yqyVnmcw6Fy1dqd-jfxSYoMxhAJpLjA';
const tokenOfResource = 'Kz~8mXK1EalYznwH-LC-1fBAo.4Ljp~zsPE_NeO.gxU';
/** RFC 9449, section 6.1: the thumbprint of the key of both. */
const thumbprintOfBoth = '0ZcOCORZNYy-DWpqq30jZyJGHTN0d2HglBV3uiguA4I';

describe('the examples of RFC 9449', () => {
  it.each([
    ['section 4.1', proofForToken],
    ['section 7.1', proofForResource],
  ])('%s: the signature holds by jose, and the key has the thumbprint of section 6.1', async (_, proof) => {
    const header = JSON.parse(Buffer.from(proof.split('.')[0] ?? '', 'base64url').toString());
    expect(header).toMatchObject({ typ: 'dpop+jwt', alg: 'ES256' });
    const key = publicKeySchema.parse(header.jwk);
    const { payload } = await compactVerify(proof, await importJWK({ ...key }, 'ES256'));
    expect(JSON.parse(new TextDecoder().decode(payload)).iat).toBeGreaterThan(1_562_262_000);
    expect(await calculateJwkThumbprint({ ...key })).toBe(thumbprintOfBoth);
  });

  const refusalOf = (...call: Parameters<typeof checkProof>) =>
    checkProof(...call).then(
      () => 'taken',
      (error: Problem) => error.code,
    );

  it('hold in everything that is asked for here but the nonce, which they do not have', async () => {
    const isNonce = () => true;
    const token = {
      method: 'POST',
      isAddress: (htu: string) => htu === 'https://server.example.com/token',
      isNonce,
    };
    expect(await refusalOf(proofForToken, token)).toBe('proof_nonce_needed');
    expect(await refusalOf(proofForToken, { ...token, method: 'GET' })).toBe('proof_invalid');
    const isAddress = (htu: string) => htu === 'https://resource.example.org/protectedresource';
    const resource = { method: 'GET', isAddress, isNonce, token: tokenOfResource };
    expect(await refusalOf(proofForResource, resource)).toBe('proof_nonce_needed');
    expect(await refusalOf(proofForResource, { ...resource, token: `${tokenOfResource}x` })).toBe(
      'proof_invalid',
    );
  });
});

it('a thumbprint is the one of the example of RFC 7638, section 3.1', async () => {
  const key = {
    kty: 'RSA',
    n:
      '0vx7agoebGcQSuuPiLJXZptN9nndrQmbXEps2aiAFbWhM78LhWx4cbbfAAtVT86zwu1RK7aPFFxuhDR1L6tSoc_BJECPebWKRXjBZCiFV4n3oknjhM' +
      'stn64tZ_2W-5JsGY4Hc5n9yBXArwl93lqt7_RN5w6Cf0h4QyQ5v-65YGjQR0_FDW2QvzqY368QQMicAtaSqzs8KJZgnYb9c7d0zgdAZHzu6qMQvRL5h' +
      'ajrn1n91CbOpbISD08qNLyrdkt-bFTWhAI4vMQFh6WeZu0fM4lFd2NcRwr3XPksINHaQ-G_xBniIqbw0Ls1jF44-csFCur-kEgU8awapJzKnqDKgw',
    e: 'AQAB',
    alg: 'RS256',
    kid: '2011-04-29',
  };
  expect(await calculateJwkThumbprint(key)).toBe('NzbLsXh8uDCcd-6MNwXF4W_7noWXFZAfHkxZsRGC9Xs');
});

describe('a proof', () => {
  const address = 'https://show.example/v1/phones/current';
  const token = 'a.token.of-a-phone';
  const asked = {
    method: 'GET',
    isAddress: (htu: string) => htu === address,
    isNonce: (nonce: string) => nonce === 'the present nonce',
    token,
  };
  let phone: { publicKey: CryptoKey; privateKey: CryptoKey };
  let jwk: JWK;
  beforeAll(async () => {
    phone = await generateKeyPair('ES256', { extractable: true });
    jwk = await exportJWK(phone.publicKey);
  });

  const goodClaims = () => ({
    jti: 'a-number-of-its-own',
    htm: 'GET',
    htu: address,
    iat: 1_767_225_600,
    nonce: 'the present nonce',
    ath: createHash('sha256').update(token).digest('base64url'),
  });

  const sign = (claims: object = {}, header: object = {}, key: CryptoKey | Uint8Array = phone.privateKey) =>
    new SignJWT({ ...goodClaims(), ...claims })
      .setProtectedHeader({ alg: 'ES256', typ: 'dpop+jwt', jwk, ...header } as JWTHeaderParameters)
      .sign(key);

  async function refused(proof: string | undefined, code: string, detail?: RegExp) {
    const error = await checkProof(proof, asked).catch((thrown: unknown) => thrown);
    expect(error).toBeInstanceOf(Problem);
    const { code: found, status, details } = error as Problem;
    expect({ code: found, status }).toEqual({ code, status: 401 });
    if (detail !== undefined) expect(details.detail).toMatch(detail);
    expect(details.headers?.['www-authenticate']).toMatch(/^DPoP error=".+", algs="ES256"$/);
  }

  it('by the key of its header, for this method, address and token, holds', async () => {
    const checked = await checkProof(await sign(), asked);
    const thumbprint = await calculateJwkThumbprint(jwk);
    expect(checked.thumbprint).toBe(thumbprint);
    expect(checked.publicKey).toEqual({ kty: 'EC', crv: 'P-256', x: jwk.x, y: jwk.y });
    const remembered = createHash('sha256').update(`${thumbprint} a-number-of-its-own`).digest('hex');
    expect(checked.hash).toBe(remembered);
  });

  it.each([-9, 9, 24 * 365])('of a phone whose clock is %i hours off holds', async (hours) => {
    const iat = Math.floor(Date.now() / 1_000) + hours * 3_600;
    await expect(checkProof(await sign({ iat }), asked)).resolves.toBeDefined();
  });

  it('that is missing, or no JWT, is refused', async () => {
    await refused(undefined, 'proof_missing');
    for (const proof of ['', 'x', 'a.b.c', `${'a'.repeat(5_000)}.b.c`]) await refused(proof, 'proof_invalid');
  });

  it('for another method, address or token is refused', async () => {
    await refused(await sign({ htm: 'POST' }), 'proof_invalid', /"htm"/);
    await refused(await sign({ htm: 'get' }), 'proof_invalid', /"htm"/);
    await refused(await sign({ htu: 'https://show.example/v1/phones/currents' }), 'proof_invalid', /"htu"/);
    await refused(
      await sign({ ath: createHash('sha256').update('x').digest('base64url') }),
      'proof_invalid',
      /"ath"/,
    );
    await refused(await sign({ ath: undefined }), 'proof_invalid', /"ath"/);
  });

  it('without a nonce, or with an old one, is answered with the need of the present one', async () => {
    await refused(await sign({ nonce: undefined }), 'proof_nonce_needed');
    await refused(await sign({ nonce: 'an old nonce' }), 'proof_nonce_needed');
  });

  it.each([
    { jti: undefined },
    { jti: 'short' },
    { jti: 'x'.repeat(129) },
    { jti: 12 },
    { htm: undefined },
    { htu: undefined },
    { iat: undefined },
    { iat: 'now' },
  ])('with the claims changed to %j is refused', async (claims) => {
    await refused(await sign(claims), 'proof_invalid');
  });

  it('of another type is refused: a signed card is no proof', async () => {
    for (const typ of ['JWT', 'ringledger-card+jws', 'at+jwt', undefined]) {
      await refused(await sign({}, { typ }), 'proof_invalid');
    }
  });

  it('with "alg" none is refused, with and without a signature', async () => {
    const part = (value: object) => Buffer.from(JSON.stringify(value)).toString('base64url');
    const unsigned = `${part({ alg: 'none', typ: 'dpop+jwt', jwk })}.${part(goodClaims())}`;
    await refused(`${unsigned}.`, 'proof_invalid');
    await refused(`${unsigned}.${(await sign()).split('.')[2]}`, 'proof_invalid');
  });

  it('by HS256 with the public key as the secret is refused (key confusion)', async () => {
    const secrets = [JSON.stringify(jwk), jwk.x ?? '', await calculateJwkThumbprint(jwk)];
    for (const secret of secrets) {
      const forged = await sign({}, { alg: 'HS256' }, new TextEncoder().encode(secret.padEnd(32, '.')));
      await refused(forged, 'proof_invalid', /ES256/);
    }
    const oct = {
      kty: 'oct',
      k: Buffer.from('a key that everyone can read in the header').toString('base64url'),
    };
    const head = Buffer.from(JSON.stringify({ alg: 'HS256', typ: 'dpop+jwt', jwk: oct })).toString(
      'base64url',
    );
    const body = Buffer.from(JSON.stringify(goodClaims())).toString('base64url');
    const mac = createHmac('sha256', Buffer.from(oct.k, 'base64url'))
      .update(`${head}.${body}`)
      .digest('base64url');
    await refused(`${head}.${body}.${mac}`, 'proof_invalid');
  });

  it('by RS256, ES384 or EdDSA is refused, even with a key that fits', async () => {
    for (const alg of ['RS256', 'PS256', 'ES384', 'EdDSA']) {
      const other = await generateKeyPair(alg, { extractable: true });
      const itsKey = await exportJWK(other.publicKey);
      await refused(await sign({}, { alg, jwk: itsKey }, other.privateKey), 'proof_invalid', /ES256/);
    }
  });

  it('with the private half in its header is refused', async () => {
    await refused(await sign({}, { jwk: await exportJWK(phone.privateKey) }), 'proof_invalid', /public key/);
  });

  it('with a key that did not sign it is refused', async () => {
    const foreign = await exportJWK((await generateKeyPair('ES256')).publicKey);
    await refused(await sign({}, { jwk: foreign }), 'proof_invalid', /signed by the key of its header/);
    await refused(await sign({}, { jwk: undefined }), 'proof_invalid');
    await refused(
      await sign({}, { jwk: 'https://elsewhere.example/keys', jku: 'https://elsewhere.example' }),
      'proof_invalid',
    );
  });

  it('with a point that is not on the curve is refused', async () => {
    await refused(await sign({}, { jwk: { ...jwk, y: jwk.x } }), 'proof_invalid');
    await refused(await sign({}, { jwk: { ...jwk, crv: 'P-384' } }), 'proof_invalid');
  });

  it('with one changed character is refused, wherever it is', async () => {
    const proof = await sign();
    for (let at = 3; at < proof.length; at += 17) {
      const changed = proof.slice(0, at) + (proof[at] === 'A' ? 'B' : 'A') + proof.slice(at + 1);
      await refused(changed, 'proof_invalid');
    }
  });

  it('that asks to understand an unknown member ("crit") is refused', async () => {
    const head = { alg: 'ES256', typ: 'dpop+jwt', jwk, crit: ['far'], far: true };
    const text = `${Buffer.from(JSON.stringify(head)).toString('base64url')}.${Buffer.from(JSON.stringify(goodClaims())).toString('base64url')}`;
    const signature = await crypto.subtle.sign(
      { name: 'ECDSA', hash: 'SHA-256' },
      phone.privateKey,
      new TextEncoder().encode(text),
    );
    await refused(`${text}.${Buffer.from(signature).toString('base64url')}`, 'proof_invalid');
  });
});
