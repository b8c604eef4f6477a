/** Sends planned requests, some at a time, looks at every answer, and learns ids from those that were taken. */
import type { InjectOptions, LightMyRequestResponse as Response } from 'fastify';
import type { Sender } from '../api/matrix/ask.ts';
import { expected } from '../api/matrix/expected.ts';
import { type PreparedShow, prepareShow } from '../api/matrix/prepared-show.ts';
import { sendersAt } from '../api/matrix/senders.ts';
import { isLetIn, type Kind } from '../api/matrix/verdict.ts';
import { picture } from '../support/pictures.ts';
import type { TestApp } from '../support/test-app.ts';
import type { PhonePass } from '../support/test-passes.ts';
import { faultsOfAnswer, jsonOf } from './check-answer.ts';
import { type WrittenRequest, written } from './fill-in.ts';
import { KnownRecords } from './known-records.ts';
import type { PlannedRequest } from './requests.ts';
import { signedPayload } from './signatures.ts';

/** Several at once, so that requests meet in the database as they do on a show day. */
const atOnce = 8;
/** So many refused passes, and all are made anew. */
const mostLost = 20;

export class FuzzRun {
  readonly faults: string[] = [];
  sent = 0;
  /** Operations of which at least one request was taken. */
  readonly taken = new Set<string>();
  /** How often all passes were made anew. */
  renewed = 0;
  readonly #service: TestApp;
  readonly #statuses = new Map<number, number>();
  readonly #reached = new Map<string, number>();
  #known = new KnownRecords({}, []);
  #shows: { readonly here: PreparedShow; readonly there: PreparedShow } | undefined;
  #senders: readonly Sender[] = [];
  /** Passes that were good and are refused: their session was ended, their phone taken back. */
  #lost = 0;
  #judges: ReadonlyMap<string, PhonePass> = new Map();
  #photo = Buffer.alloc(0);

  constructor(service: TestApp) {
    this.#service = service;
  }

  async newShow(): Promise<void> {
    const here = await prepareShow(this.#service);
    const there = this.#shows?.there ?? (await prepareShow(this.#service));
    this.#shows = { here, there };
    await this.#newSenders();
    this.#known = new KnownRecords(idsOf(here, there), Object.values(here.ids));
    this.#photo = await picture().jpeg().toBuffer();
  }

  async #newSenders(): Promise<void> {
    if (this.#shows === undefined) throw new Error('the run has no shows');
    const here = { ...this.#shows.here, passes: await this.#shows.here.newPasses() };
    const there = { ...this.#shows.there, passes: await this.#shows.there.newPasses() };
    const senders = await sendersAt(this.#service, { here, there });
    this.#senders = senders;
    this.#judges = new Map([
      ['the judge of the seat', here.passes.judge],
      ['the judge of another seat of the class', here.passes.otherJudge],
    ]);
    this.#lost = 0;
  }

  async send(planned: readonly PlannedRequest[]): Promise<void> {
    const waiting = [...planned];
    const worker = async () => {
      for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) await this.#one(next);
    };
    await Promise.all(Array.from({ length: atOnce }, worker));
  }

  /** "200: 4211, 400: 9120 ..." */
  summary(): string {
    const counted = [...this.#statuses].sort(([a], [b]) => a - b);
    return `${counted.map(([status, count]) => `${status}: ${count}`).join(', ')}; passes made anew ${this.renewed} times`;
  }

  /** How often the least reached operation was asked; 0 where one was not. */
  leastReached(operations: number): number {
    return this.#reached.size < operations ? 0 : Math.min(...this.#reached.values());
  }

  async #one(planned: PlannedRequest): Promise<void> {
    const sender = this.#senderOf(planned);
    const request = written(planned, this.#known);
    const { method, address } = request;
    const payload = await this.#payload(planned, request, sender);
    const headers = { ...(await sender.headers(method, address.split('?')[0] ?? '')), ...request.headers };
    const asked = {
      method: method as 'GET',
      url: address,
      headers,
      ...(payload === undefined ? {} : { payload }),
    };
    const answer = await this.#inject(planned.operation.path, asked);
    this.#note(planned.operation.name, answer.statusCode);
    if (answer.statusCode === 401 && isGood(sender, request)) this.#lost += 1;
    if (this.#lost > mostLost) {
      this.renewed += 1;
      this.#lost = 0;
      await this.#newSenders();
    }
    const faults = faultsOfAnswer(answer);
    if (faults.length > 0) this.faults.push(told({ sender, request, payload, answer, faults }));
    if (answer.statusCode < 400) this.taken.add(planned.operation.name);
    if (answer.statusCode < 300) this.#known.learn(address, etagOf(answer), jsonOf(answer.payload));
  }

  /** Four of five are sent by whoever is let in and so gets far, the others by anybody. */
  #senderOf({ operation: { method, path }, sender: at }: PlannedRequest): Sender {
    const row = expected[`${method} ${path.replace(/\{(\w+)\}/g, ':$1')}`];
    const isStrong = ({ shows, holdsSeat }: Kind) => shows === 'all' || holdsSeat;
    // Whoever gets far seldom signs out, or soon nobody would get far.
    const signsOut = method === 'DELETE' && path === '/v1/sessions/current';
    const fitting = this.#senders.filter(
      ({ kind }) => row !== undefined && isStrong(kind) && isLetIn(row, kind, { signed: false }),
    );
    const anybody = this.#senders.filter(({ kind }) => !signsOut || at > 0.95 || kind.shows !== 'all');
    const from = at < 0.8 && fitting.length > 0 && !signsOut ? fitting : anybody;
    const sender = from[Math.floor((at * 997) % from.length)];
    if (sender === undefined) throw new Error('the run has no senders');
    return sender;
  }

  async #payload(
    { operation, sender: at }: PlannedRequest,
    { address, payload, headers }: WrittenRequest,
    sender: Sender,
  ): Promise<string | Buffer | undefined> {
    const signs = /\/(signatures|amendments)$/.test(operation.path);
    const judge = this.#judges.get(sender.name);
    if (signs && judge !== undefined && payload !== undefined && !address.includes('%')) {
      return (await signedPayload(this.#service.app, { pass: judge, address, at: (at * 97) % 1 })) ?? payload;
    }
    const isPicture = String(headers['content-type']).startsWith('image/');
    return isPicture && operation.otherBodies.length > 0 && at > 0.3 ? this.#photo : payload;
  }

  /** A stream of events never ends: its head is looked at, then the reader goes away. */
  async #inject(path: string, asked: InjectOptions): Promise<Response> {
    if (!path.endsWith('/events')) return this.#service.app.inject(asked);
    const answer = await this.#service.app.inject({ ...asked, payloadAsStream: true });
    if (answer.statusCode >= 300) return this.#service.app.inject(asked);
    answer.stream().destroy();
    answer.raw.res.destroy();
    return { ...answer, statusCode: answer.statusCode, headers: answer.headers, payload: '' } as Response;
  }

  #note(name: string, status: number): void {
    this.sent += 1;
    this.#statuses.set(status, (this.#statuses.get(status) ?? 0) + 1);
    this.#reached.set(name, (this.#reached.get(name) ?? 0) + 1);
  }
}

/** Should the pass have been taken? */
const isGood = ({ kind }: Sender, { headers, address }: WrittenRequest): boolean =>
  !kind.ended &&
  kind.role !== 'everyone' &&
  !address.includes('%') &&
  // There the proof alone counts; a pass beside it has used it up.
  !address.startsWith('/v1/phone-tokens') &&
  !['authorization', 'dpop', 'host', 'x-forwarded-host'].some((name) => name in headers);

const etagOf = ({ headers }: Response): string | undefined =>
  headers.etag === undefined ? undefined : String(headers.etag);

/** All kinds of ids, those of the show far more often than those of the other one. */
function idsOf(here: PreparedShow, there: PreparedShow): Record<string, string[]> {
  const all = [here, here, here, here, there].flatMap(({ ids }) => Object.values(ids));
  const names = Object.keys(here.ids.posted);
  return Object.fromEntries(names.map((name) => [name, all.map((ids) => ids[name] ?? '')]));
}

interface Told {
  readonly sender: Sender;
  readonly request: WrittenRequest;
  readonly payload: string | Buffer | undefined;
  readonly answer: Response;
  readonly faults: readonly string[];
}

/** So that it can be sent again by hand. */
function told({ sender, request, payload, answer, faults }: Told): string {
  const { method, address, headers } = request;
  const body = typeof payload === 'string' ? payload.slice(0, 1_500) : `${payload?.length ?? 0} bytes`;
  const asked = `${method} ${address.slice(0, 500)} ${JSON.stringify(headers)} by ${sender.name}\n${body}`;
  return `${faults.join('; ')}\n${asked}\n-> ${answer.statusCode} ${answer.payload.slice(0, 500)}`;
}
