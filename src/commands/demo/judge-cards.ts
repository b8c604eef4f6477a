/** The judges of a class write their cards and sign them, as their phones do it. */
import type { CardContent } from '../../engine/sheets/card-types.ts';
import type { Go } from '../../engine/sheets/types.ts';
import { type Amending, type CardToSign, cardStatement, signCard as signOnPhone } from '../../phone/index.ts';
import { type Api, Refused } from './api.ts';
import type { WrittenCard } from './marks/judge-class.ts';
import type { DemoPhone } from './phones.ts';

/** A judge at her card, with what the phone knows. */
export interface JudgeAtCard {
  readonly api: Api;
  readonly phone: DemoPhone;
  readonly cardId: string;
  /** Class entry ids by back number. */
  readonly classEntries: ReadonlyMap<number, string>;
}

/** What came of a signature. */
export interface SignedRevision {
  readonly revision: number;
  readonly contentHash: string;
}

interface SeatToOpen {
  readonly classId: string;
  readonly seatId: string;
  readonly phone: DemoPhone;
}

export async function openCard(api: Api, { classId, seatId, phone }: SeatToOpen): Promise<string> {
  const { body } = await api.ask<{ id: string }>({
    ...{ method: 'POST', path: `/classes/${classId}/cards`, as: phone.sends },
    body: { seatId },
  });
  return body.id;
}

/** Each go is saved as it ends; there is signal at the ring. */
export async function saveGoes(
  { api, phone, cardId, classEntries }: JudgeAtCard,
  goes: [number, Go][],
): Promise<void> {
  for (const [backNumber, go] of goes) {
    const classEntryId = idOf(classEntries, backNumber);
    const path = `/cards/${cardId}/goes/${classEntryId}`;
    await api.ask({ method: 'PUT', path, as: phone.sends, body: go });
  }
}

/** Signs the whole card at once, as a phone does that had no signal; where ties are the judge's to break, she does. */
export async function signCard(judge: JudgeAtCard, card: WrittenCard): Promise<SignedRevision> {
  const content = contentOf(judge, card);
  try {
    return await sign(judge, content);
  } catch (error) {
    const ties = openTiesIn(error);
    if (ties === undefined) throw error;
    return sign(judge, { ...content, ownOrder: ties.map((tie) => inOrderOfLiking(judge, card, tie)) });
  }
}

export function contentOf(
  { classEntries }: Pick<JudgeAtCard, 'classEntries'>,
  { goes, ranking }: WrittenCard,
): CardContent {
  const written = [...goes].map(([backNumber, go]) => [idOf(classEntries, backNumber), go] as const);
  return {
    goes: Object.fromEntries(written),
    ...(ranking === undefined
      ? {}
      : { ranking: ranking.map((backNumber) => [idOf(classEntries, backNumber)]) }),
  };
}

const sign = (judge: JudgeAtCard, content: CardContent): Promise<SignedRevision> =>
  send(judge, 'signatures', { content });

export async function amendCard(
  judge: JudgeAtCard,
  amended: { readonly before: SignedRevision; readonly content: CardContent; readonly reason: string },
): Promise<void> {
  const { before, content, reason } = amended;
  await send(judge, 'amendments', { content, amending: { ...before, reason } });
}

interface Written {
  readonly content: CardContent;
  readonly amending?: Amending;
}

/** The phone signs what it shows, and sends the signature. */
async function send(
  { api, phone, cardId }: JudgeAtCard,
  to: 'signatures' | 'amendments',
  written: Written,
): Promise<SignedRevision> {
  const path = `/cards/${cardId}`;
  const { body: seen } = await api.ask<CardToSign>({ method: 'GET', path, as: phone.sends });
  const jws = await signOnPhone(phone.key, cardStatement(seen, { signedAt: new Date(), ...written }));
  const { body } = await api.ask<SignedRevision>({
    ...{ method: 'POST', path: `${path}/${to}`, as: phone.sends, body: { jws } },
    idempotencyKey: `${to}-${cardId}-${written.amending?.revision ?? 0}`,
  });
  return body;
}

function openTiesIn(error: unknown): readonly (readonly string[])[] | undefined {
  if (!(error instanceof Refused) || error.problem.code !== 'card_has_open_ties') return undefined;
  return error.problem.openTies as readonly (readonly string[])[];
}

function inOrderOfLiking(
  { classEntries }: JudgeAtCard,
  { liking }: WrittenCard,
  tie: readonly string[],
): string[] {
  const rank = new Map(liking.map((backNumber, index) => [idOf(classEntries, backNumber), index]));
  return [...tie].sort((a, b) => (rank.get(a) ?? 0) - (rank.get(b) ?? 0));
}

function idOf(classEntries: ReadonlyMap<number, string>, backNumber: number): string {
  const id = classEntries.get(backNumber);
  if (id === undefined) throw new Error(`back number ${backNumber} is not in the class`);
  return id;
}
