/** What the page asks of the service about queries. */
import type { Answer } from '../../shared/api.ts';
import { problemIn } from '../../shared/problem-words.ts';
import { askAsAnyone } from '../../shared/public-client.ts';
import type { Draft } from './draft.ts';

type Asked = Answer<'/v1/classes/{classId}/queries', 'post'>;
export type Query = Answer<'/v1/queries/followed'>;

export type Sent =
  | { readonly kind: 'asked'; readonly followCode: string }
  /** `code` of the problem, or `no-answer`. Nothing is lost by it. */
  | { readonly kind: 'refused'; readonly code: string };

export interface Subject {
  readonly classId: string;
  readonly backNumber: number;
  /** Of the posting that is on the screen; `null`: nothing is posted. */
  readonly postingVersion: number | null;
}

export async function sendQuery(
  { classId, backNumber, postingVersion }: Subject,
  { about, words, reachedBy, key }: Draft,
): Promise<Sent> {
  const reached = reachedBy.trim();
  const body = { about, words, backNumber, postingVersion, reachedBy: reached === '' ? null : reached };
  try {
    const answer = await askAsAnyone(`/v1/classes/${classId}/queries`, {
      method: 'POST',
      headers: { 'content-type': 'application/json', 'idempotency-key': key },
      body: JSON.stringify(body),
    });
    if (!answer.ok) return { kind: 'refused', code: (await problemIn(answer)).code };
    return { kind: 'asked', followCode: ((await answer.json()) as Asked).followCode };
  } catch {
    return { kind: 'refused', code: 'no-answer' };
  }
}

/** `gone`: there is no such query. Rejects where the service does not answer. */
export async function readQuery(code: string): Promise<Query | 'gone'> {
  const answer = await askAsAnyone('/v1/queries/followed', { headers: { 'query-follow-code': code } });
  if (answer.status === 404 || answer.status === 400) return 'gone';
  if (!answer.ok) throw new Error(`the service answered ${answer.status}`);
  return (await answer.json()) as Query;
}

/** `undefined`: it was not taken back. */
export async function withdrawQuery(code: string): Promise<Query | undefined> {
  const headers = { 'query-follow-code': code };
  const answer = await askAsAnyone('/v1/queries/followed/withdrawals', { method: 'POST', headers }).catch(
    () => undefined,
  );
  return answer?.ok ? ((await answer.json()) as Query) : undefined;
}
