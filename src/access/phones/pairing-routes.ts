/** What a phone calls before it has a token: it pairs, and it asks for its next token. */
import type { FeatureRoutes } from '../../platform/app-parts.ts';
import { refusals } from '../../platform/http/refusals.ts';
import { problem } from '../../platform/problems/index.ts';
import { openTo } from '../open-to.ts';
import { findPhone, forgetProofs } from './find-phone.ts';
import { pairPhone } from './pair-phone.ts';
import { pairedPhone, pairingBody, phoneTokenBody } from './phone-schemas.ts';
import { issuePhoneToken } from './phone-tokens.ts';
import { proofMilliseconds } from './proof-nonces.ts';
import type { PhoneDoor } from './recognize-phone.ts';
import { SlowGuesses } from './slow-guesses.ts';

const tags = ['Phones'];
const config = openTo('everyone');
const proofRefusals = ['proof_missing', 'proof_nonce_needed', 'proof_invalid', 'proof_replayed'] as const;

export const pairingRoutes =
  (door: PhoneDoor): FeatureRoutes =>
  async (app, { parts }) => {
    const guesses = new SlowGuesses();

    app.post('/pairings', {
      config,
      schema: {
        tags,
        summary: 'Pair this phone with a code of the office',
        description:
          'Needs the header DPoP (RFC 9449) with a proof by the key that is to be paired, with the nonce of DPoP-Nonce. ' +
          'Sent again with the same code and key it answers the same: a lost answer loses nothing.',
        body: pairingBody,
        response: {
          201: pairedPhone,
          ...refusals(
            ...proofRefusals,
            'pairing_code_unknown',
            'pairing_code_used',
            'pairing_code_ended',
            'pairing_slowed',
            'key_already_paired',
          ),
        },
      },
      handler: async (request, reply) => {
        const { code, publicKey } = request.body;
        const proof = await door.prove(request, reply);
        if (proof.publicKey.x !== publicKey.x || proof.publicKey.y !== publicKey.y) {
          throw problem('proof_invalid', { detail: 'It is signed by another key than "publicKey".' });
        }
        const paired = await guesses.count(request.ip, () => pairPhone(parts, { code, proof }));
        return reply.code(201).send(paired);
      },
    });

    app.post('/phone-tokens', {
      config,
      schema: {
        tags,
        summary: 'The next token of a paired phone, good for a quarter of an hour',
        description: 'Needs the header DPoP with a proof by the key of the phone, and no body.',
        response: { 201: phoneTokenBody, ...refusals(...proofRefusals, 'phone_unknown', 'phone_revoked') },
      },
      handler: async (request, reply) => {
        const proof = await door.prove(request, reply);
        const at = parts.clock.now();
        const phone = await findPhone(parts.db.sql, proof, at);
        // Here and not by a timer: each phone comes by every quarter of an hour.
        await forgetProofs(parts.db.sql, new Date(at.getTime() - 2 * proofMilliseconds));
        const { thumbprint } = proof;
        const { accessToken, endsAt, endsInSeconds } = await issuePhoneToken(parts, {
          phoneId: phone.id,
          thumbprint,
        });
        reply.header('cache-control', 'no-store');
        return reply
          .code(201)
          .send({ accessToken, tokenType: 'DPoP', endsAt: endsAt.toISOString(), endsInSeconds });
      },
    });
  };
