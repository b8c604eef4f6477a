/** What the service says to this phone, sorted by what follows from it. */
import type { PhoneClient, PhoneRequest } from '../../../phone/index.ts';
import type { ServiceProblem } from './desk-types.ts';

export type Answered =
  | { readonly is: 'done'; readonly body: unknown; readonly etag: string | null }
  | { readonly is: 'not-modified' }
  /** Sent again as it is, it would be refused again. */
  | { readonly is: 'refused'; readonly status: number; readonly problem: RefusedProblem }
  /** The pairing has ended: nothing of this phone is taken any more. */
  | { readonly is: 'ended'; readonly problem: ServiceProblem }
  /** Nobody answered, or somebody in between did, or the service is in trouble: later again. */
  | { readonly is: 'no-answer'; readonly waitSeconds: number };

/** With whatever else the problem names. */
export type RefusedProblem = ServiceProblem & Readonly<Record<string, unknown>>;

export interface Sign {
  readonly heard: boolean;
  /** Of the header Date, ms; `null`: it had none. */
  readonly serviceTime: number | null;
  /** Of the phone's clock, halfway through the request. */
  readonly phoneTime: number;
}

export class Service {
  readonly #client: PhoneClient;
  readonly #tell: (sign: Sign) => void;

  constructor(client: PhoneClient, tell: (sign: Sign) => void) {
    this.#client = client;
    this.#tell = tell;
  }

  async ask(request: PhoneRequest): Promise<Answered> {
    const began = Date.now();
    try {
      const answer = await this.#client.request(request);
      const phoneTime = (began + Date.now()) / 2;
      const read = await readAnswer(answer);
      const serviceTime = Date.parse(answer.headers.get('date') ?? '');
      const heard = read.is !== 'no-answer';
      this.#tell({ heard, serviceTime: Number.isNaN(serviceTime) ? null : serviceTime, phoneTime });
      return read;
    } catch {
      this.#tell({ heard: false, serviceTime: null, phoneTime: began });
      return { is: 'no-answer', waitSeconds: 0 };
    }
  }
}

const endings = ['phone_revoked', 'phone_unknown'];
/** The service is there and cannot now. */
const passing = [408, 425, 429];

async function readAnswer(answer: Response): Promise<Answered> {
  if (answer.status === 304) return { is: 'not-modified' };
  const body: unknown = answer.status === 204 ? null : await answer.json().catch(() => undefined);
  const waitSeconds = Number(answer.headers.get('retry-after') ?? 0) || 0;
  // A page to sign in to some network answers with 200 too, but never with JSON.
  if (body === undefined || answer.redirected) return { is: 'no-answer', waitSeconds };
  if (answer.ok) return { is: 'done', body, etag: answer.headers.get('etag') };
  if (!isProblem(body)) return { is: 'no-answer', waitSeconds };
  if (endings.includes(body.code)) return { is: 'ended', problem: plainProblem(body) };
  // Any other 401 is about one token or one proof, and the next one is better.
  const later = answer.status === 401 || answer.status >= 500 || passing.includes(answer.status);
  return later ? { is: 'no-answer', waitSeconds } : { is: 'refused', status: answer.status, problem: body };
}

const isProblem = (body: unknown): body is RefusedProblem =>
  typeof body === 'object' && body !== null && 'code' in body && typeof body.code === 'string';

/** What is kept of a problem: not the whole cards that some carry. */
export function plainProblem({ code, title, detail, whatToDo, errors }: ServiceProblem): ServiceProblem {
  return {
    ...{ code, title, whatToDo },
    ...(detail === undefined ? {} : { detail }),
    ...(errors === undefined ? {} : { errors }),
  };
}
