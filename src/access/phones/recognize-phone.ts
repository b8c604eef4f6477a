/** What a phone must show with each request: its token, and a proof by its key for just this request. */
import type { FastifyReply, FastifyRequest } from 'fastify';
import type { AppParts } from '../../platform/app-parts.ts';
import { problem } from '../../platform/problems/index.ts';
import { type FoundPhone, findPhone } from './find-phone.ts';
import { readPhoneToken } from './phone-tokens.ts';
import { ProofNonces } from './proof-nonces.ts';
import { type CheckedProof, checkProof } from './proofs.ts';
import { namesAddressOf } from './request-address.ts';

export class PhoneDoor {
  readonly #parts: AppParts;
  readonly #nonces: ProofNonces;

  constructor(parts: AppParts) {
    this.#parts = parts;
    this.#nonces = new ProofNonces(parts);
  }

  /**
   * Who sends a request with `Authorization: DPoP <token>`. Throws what `prove` throws, token_invalid, token_expired,
   * phone_unknown, phone_revoked, proof_replayed.
   */
  async recognize(request: FastifyRequest, reply: FastifyReply, token: string): Promise<FoundPhone> {
    this.#tellNonce(reply);
    const holder = await readPhoneToken(this.#parts, token);
    const proof = await this.prove(request, reply, token);
    if (proof.thumbprint !== holder.thumbprint) {
      throw problem('proof_invalid', {
        detail: 'It is signed by another key than the one of the token.',
        refused: { actor: { as: 'everyone' }, phoneId: holder.phoneId },
      });
    }
    const phone = await findPhone(this.#parts.db.sql, proof, this.#parts.clock.now());
    if (phone.id !== holder.phoneId) throw problem('token_invalid');
    return phone;
  }

  /** The proof of a request; `token` where one comes with it. Throws proof_missing, proof_invalid, proof_nonce_needed. */
  prove(request: FastifyRequest, reply: FastifyReply, token?: string): Promise<CheckedProof> {
    this.#tellNonce(reply);
    return checkProof(request.headers.dpop, {
      method: request.method,
      isAddress: (htu) => namesAddressOf(htu, this.#parts.config, request),
      isNonce: (nonce) => this.#nonces.isGood(nonce),
      ...(token === undefined ? {} : { token }),
    });
  }

  /** RFC 9449, section 8.2: with every answer, so that a phone seldom has to ask twice. */
  #tellNonce(reply: FastifyReply): void {
    reply.header('dpop-nonce', this.#nonces.now());
  }
}
