/** The judges of a class write their cards and sign them, as their phones do it. */
import type { CardContent } from '../../engine/sheets/card-types.ts';
import type { Go } from '../../engine/sheets/types.ts';
import { type Api, Refused } from './api.ts';
import type { WrittenCard } from './marks/judge-class.ts';

/** A judge at her card, with what the phone knows. */
export interface JudgeAtCard {
  readonly api: Api;
  readonly pass: string;
  readonly cardId: string;
  /** Class entry ids by back number. */
  readonly classEntries: ReadonlyMap<number, string>;
}

export interface SignedCard {
  readonly contentHash: string;
  readonly content: CardContent;
}

export async function openCard(
  api: Api,
  { classId, seatId, pass }: { readonly classId: string; readonly seatId: string; readonly pass: string },
): Promise<string> {
  const { body } = await api.ask<{ id: string }>({
    method: 'POST',
    path: `/classes/${classId}/cards`,
    pass,
    body: { seatId },
  });
  return body.id;
}

/** Each go is saved as it ends; there is signal at the ring. */
export async function saveGoes(
  { api, pass, cardId, classEntries }: JudgeAtCard,
  goes: [number, Go][],
): Promise<void> {
  for (const [backNumber, go] of goes) {
    const classEntryId = idOf(classEntries, backNumber);
    await api.ask({ method: 'PUT', path: `/cards/${cardId}/goes/${classEntryId}`, pass, body: go });
  }
}

/** Signs the whole card at once, as a phone does that had no signal; where ties are the judge's to break, she does. */
export async function signCard(judge: JudgeAtCard, card: WrittenCard): Promise<SignedCard> {
  const content = contentOf(judge, card);
  try {
    return await sign(judge, content);
  } catch (error) {
    const ties = openTiesIn(error);
    if (ties === undefined) throw error;
    return sign(judge, { ...content, ownOrder: ties.map((tie) => inOrderOfLiking(judge, card, tie)) });
  }
}

export function contentOf({ classEntries }: JudgeAtCard, { goes, ranking }: WrittenCard): CardContent {
  const written = [...goes].map(([backNumber, go]) => [idOf(classEntries, backNumber), go] as const);
  return {
    goes: Object.fromEntries(written),
    ...(ranking === undefined
      ? {}
      : { ranking: ranking.map((backNumber) => [idOf(classEntries, backNumber)]) }),
  };
}

async function sign({ api, pass, cardId }: JudgeAtCard, content: CardContent): Promise<SignedCard> {
  const { body } = await api.ask<{ contentHash: string }>({
    method: 'POST',
    path: `/cards/${cardId}/signatures`,
    pass,
    idempotencyKey: `sign-${cardId}`,
    body: { signedAt: new Date().toISOString(), content },
  });
  return { contentHash: body.contentHash, content };
}

export async function amendCard(
  { api, pass, cardId }: JudgeAtCard,
  amended: { readonly before: SignedCard; readonly content: CardContent; readonly reason: string },
): Promise<void> {
  const { before, content, reason } = amended;
  await api.ask({
    method: 'POST',
    path: `/cards/${cardId}/amendments`,
    pass,
    idempotencyKey: `amend-${cardId}`,
    body: { signedAt: new Date().toISOString(), reason, content, previousHash: before.contentHash },
  });
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
