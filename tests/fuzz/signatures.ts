/** Bodies that no chance would make: what a judge's phone really signs, whole or spoiled in one place. */
import type { CardContent } from '../../src/engine/sheets/card-types.ts';
import type { App } from '../../src/platform/app-parts.ts';
import { headersOf } from '../api/matrix/prepared-show.ts';
import type { PhonePass } from '../support/test-passes.ts';
import { signedBody, statementOf } from '../support/test-phone.ts';
import { jsonOf } from './check-answer.ts';

interface CardSeen {
  readonly goes?: readonly { readonly classEntryId: string; readonly content: object | null }[];
  readonly revisions?: readonly { readonly revision: number; readonly contentHash: string }[];
}

const spoilers: readonly object[] = [
  {},
  {},
  {},
  { reason: 'read wrongly' },
  { revision: 0 },
  { revision: 1e9 },
  { signedAt: 'yesterday' },
  { content: { goes: {} } },
  { cardId: '0198f0a0-0000-7000-8000-000000000000' },
  { form: 'ringledger signed card 2' },
  { unknown: true },
];

interface Signing {
  readonly pass: PhonePass;
  /** `/v1/cards/<id>/signatures` */
  readonly address: string;
  /** 0 to 1. */
  readonly at: number;
}

/** `undefined` where the sender may not see the card: then there is nothing to sign. */
export async function signedPayload(app: App, { pass, address, at }: Signing): Promise<string | undefined> {
  const cardAddress = address.split('/').slice(0, 4).join('/');
  const read = await app.inject({ url: cardAddress, headers: headersOf(pass, 'GET', cardAddress) });
  if (read.statusCode !== 200) return undefined;
  const card = jsonOf(read.payload) as CardSeen & Parameters<typeof statementOf>[0];
  const goes = (card.goes ?? []).flatMap(({ classEntryId, content }) =>
    content === null ? [] : [[classEntryId, content] as const],
  );
  const content: CardContent = { goes: Object.fromEntries(goes) };
  const last = card.revisions?.at(-1);
  const amending = last === undefined ? {} : amendmentOf(last, content, at);
  const spoiler = spoilers[Math.floor(at * spoilers.length)] ?? {};
  return JSON.stringify(signedBody(pass.phone, { ...statementOf(card, content), ...amending, ...spoiler }));
}

function amendmentOf(
  { revision, contentHash }: { revision: number; contentHash: string },
  content: CardContent,
  at: number,
) {
  const goes = Object.fromEntries(
    Object.entries(content.goes).map(([id, go]) => [
      id,
      { ...go, measure: `${20 + Math.floor(at * 1_000)}.5` },
    ]),
  );
  return {
    revision: revision + 1,
    previousHash: contentHash,
    reason: 'the watch was misread',
    content: { goes },
  };
}
