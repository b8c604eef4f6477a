/** `GET /.well-known/jwks.json`: the public keys of the service, old and new (JWK Set, RFC 7517). */
import { z } from 'zod';
import type { FeatureRoutes } from '../app-parts.ts';

const cachedSeconds = 300;

const key = z.strictObject({
  kty: z.literal('EC'),
  crv: z.literal('P-256'),
  x: z.string(),
  y: z.string(),
  kid: z.string().describe('Thumbprint (RFC 7638); a signature names it in its header.'),
  alg: z.literal('ES256'),
  use: z.literal('sig'),
});

/**
 * They come out of the file of the private keys and not out of the database: who can write to the database could
 * otherwise publish a key of his own.
 */
export const signingKeysRoute: FeatureRoutes = async (app, { parts }) => {
  const keys = parts.keys.publicKeys.map(({ jwk }) => key.parse(jwk));

  app.get('/.well-known/jwks.json', {
    schema: {
      tags: ['Ledger'],
      summary: 'The public keys that check postings and the ledger, old ones too',
      description:
        'A key stays here for ever once it has signed. Who does not find the key of a signature asks again.',
      response: { 200: z.strictObject({ keys: z.array(key) }) },
    },
    handler: async (_request, reply) => {
      reply.header('cache-control', `public, max-age=${cachedSeconds}`).type('application/jwk-set+json');
      return { keys };
    },
  });
};
