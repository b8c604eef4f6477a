/**
 * The one verb by which the office asks the service: a refusal comes back in words, an ended session is begun anew
 * over what was typed, and a change that was sent but not answered is sent again as the same change.
 */
import { v4 as newKey } from 'uuid';
import type { FaultWords } from '../shared/fault-words.ts';
import { askAsOffice, type OfficeRequest } from '../shared/office-client.ts';
import { type Problem, problemIn } from '../shared/problem-words.ts';
import { askAsAnyone } from '../shared/public-client.ts';
import { signInAgain } from './session.ts';
import { spokenNoAnswer, spokenProblem } from './spoken.ts';

export interface Asking extends Pick<OfficeRequest, 'method' | 'path' | 'body' | 'signal'> {
  /** The ETag that was read, with its quotes. */
  readonly ifMatch?: string | undefined;
}

export interface Refused {
  readonly ok: false;
  /** Stable: `stale_version`; `no_answer` where the service was not reached. */
  readonly code: string;
  readonly words: FaultWords;
  /** By field of what was sent: `/password` -> what is wrong with it. */
  readonly fields: ReadonlyMap<string, string>;
  /** Of the header Retry-After. */
  readonly waitSeconds: number | undefined;
  readonly problem: Problem | undefined;
}

export interface Answered<Body> {
  readonly ok: true;
  readonly body: Body;
  readonly etag: string | undefined;
}

export type Outcome<Body> = Answered<Body> | Refused;

/** Never rejects. `Body`: `Answer<'/v1/shows/{showId}/board'>`; `undefined` where there is none (204). */
export async function ask<Body>(asking: Asking): Promise<Outcome<Body>> {
  const key = keyOf(asking);
  const answer = await sendUntilKnown(asking, key);
  const isAnswered = answer !== undefined && answer.status < 500 && answer.status !== 401;
  if (key !== undefined && isAnswered) unanswered.delete(asKey(asking));
  return outcomeOf<Body>(answer);
}

/** The same, where a session that ended is the answer and not a reason to sign in again. */
export async function askOnce<Body>(asking: Asking): Promise<Outcome<Body>> {
  return outcomeOf<Body>(await send(asking, undefined));
}

/** At the door: signing in and setting up need no pass, and an old one would only be refused. */
export async function askAtDoor<Body>(path: string, body: unknown): Promise<Outcome<Body>> {
  const headers = { 'content-type': 'application/json' };
  const sent = askAsAnyone(path, { method: 'POST', headers, body: JSON.stringify(body) });
  return outcomeOf<Body>(await sent.catch(() => undefined));
}

async function outcomeOf<Body>(answer: Response | undefined): Promise<Outcome<Body>> {
  if (answer === undefined) return notReached();
  if (!answer.ok) return refusalIn(answer);
  const body = (answer.status === 204 ? undefined : await answer.json()) as Body;
  return { ok: true, body, etag: answer.headers.get('etag') ?? undefined };
}

async function sendUntilKnown(asking: Asking, key: string | undefined): Promise<Response | undefined> {
  for (;;) {
    const answer = await send(asking, key);
    if (answer?.status !== 401) return answer;
    if (!(await signInAgain())) return answer;
  }
}

async function send(asking: Asking, key: string | undefined): Promise<Response | undefined> {
  const { ifMatch, ...request } = asking;
  const headers = {
    ...(ifMatch === undefined ? {} : { 'if-match': ifMatch }),
    ...(key === undefined ? {} : { 'idempotency-key': key }),
  };
  try {
    return await askAsOffice({ ...request, headers });
  } catch {
    return undefined;
  }
}

/** Keys of changes that were sent and are not answered yet: the same change goes out again under the same key. */
const unanswered = new Map<string, string>();

function keyOf(asking: Asking): string | undefined {
  if (asking.method !== 'POST') return undefined;
  const key = unanswered.get(asKey(asking)) ?? newKey();
  unanswered.set(asKey(asking), key);
  return key;
}

const asKey = ({ path, body }: Asking): string => `${path} ${JSON.stringify(body ?? null)}`;

const notReached = (): Refused => ({
  ok: false,
  code: 'no_answer',
  words: spokenNoAnswer(),
  fields: new Map(),
  waitSeconds: undefined,
  problem: undefined,
});

async function refusalIn(answer: Response): Promise<Refused> {
  const problem = await problemIn(answer);
  const wait = Number(answer.headers.get('retry-after') ?? Number.NaN);
  return {
    ok: false,
    code: problem.code,
    words: spokenProblem(problem),
    fields: fieldsOf(problem),
    waitSeconds: Number.isFinite(wait) ? wait : undefined,
    problem,
  };
}

interface FieldFault {
  readonly field?: string;
  readonly message: string;
}

const fieldsOf = ({ errors = [] }: Problem): ReadonlyMap<string, string> =>
  new Map(errors.map(({ field = '', message }: FieldFault) => [field, message]));
