/** Signatures for tests: a request whose body the judge's phone signs just before it is sent. */
import request from 'supertest';
import type { CardContent } from '../../src/engine/sheets/card-types.ts';
import type { SignedCard } from '../../src/evidence/index.ts';
import { isGoing } from '../../src/office/index.ts';
import type { TestApp } from './test-app.ts';
import type { PhonePass } from './test-passes.ts';
import { type CardToSign, signedBody, statementOf } from './test-phone.ts';

/** What differs from a first signature of what the drafts say; it may be wrong on purpose. */
export type Asked = { readonly [Member in keyof SignedCard]?: unknown } & Readonly<Record<string, unknown>>;

interface Signing {
  readonly pass: PhonePass;
  readonly cardId: string;
  readonly asked?: Asked;
}

/** `.use(signedBy(service, ...))`: reads the card as the phone has it, signs it, and sends that. */
export function signedBy(service: TestApp, signing: Signing): (test: request.Test) => void {
  return (test) => {
    const end = test.end.bind(test);
    test.end = (done) => {
      signatureOf(service, signing).then(
        (body) => end.call(test.send(body), done),
        (error: Error) => done?.(error, undefined as unknown as request.Response),
      );
      return test;
    };
  };
}

/** The body of a signature or an amendment. */
export async function signatureOf(service: TestApp, { pass, cardId, asked = {} }: Signing) {
  const read = await request(service.app.server).get(`/v1/cards/${cardId}`).use(pass);
  if (read.status !== 200) return signedBody(pass.phone, { ...nothing, ...asked });
  const card: CardSeen = read.body;
  return signedBody(pass.phone, { ...statementOf(card, contentOf(card)), ...asked });
}

/** For a card that the sender may not see: the service must refuse before it looks. */
const nothing = { form: 'ringledger signed card 1' };

interface CardSeen extends CardToSign {
  readonly goes: readonly {
    readonly classEntryId: string;
    readonly status: string;
    readonly content: object | null;
  }[];
  readonly order: { readonly content: object } | null;
}

function contentOf({ goes, order }: CardSeen): CardContent {
  const written = goes.flatMap(({ classEntryId, content, status }) =>
    content === null || !isGoing(status) ? [] : [[classEntryId, content] as const],
  );
  return { goes: Object.fromEntries(written), ...order?.content };
}
