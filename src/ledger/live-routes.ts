/** `GET /shows/:showId/events`: the ledger of a show as it grows, by server-sent events. */
import type { FastifyContextConfig, FastifyReply, FastifyRequest } from 'fastify';
import { z } from 'zod';
import { ofTheService } from '../evidence/index.ts';
import type { AppParts, FeatureRoutes } from '../platform/app-parts.ts';
import { refusals } from '../platform/http/refusals.ts';
import { problem } from '../platform/problems/index.ts';
import type { Sql } from '../platform/sql.ts';
import { mustBeShow } from './must-be-show.ts';
import { lastLineOf } from './read-lines.ts';
import { type Listener, ShowFeed } from './show-feed.ts';

export interface LiveAccess {
  /** Who may listen. */
  readonly config: FastifyContextConfig;
  /** Does the sender hear what is not public? */
  readonly hearsAll: (request: FastifyRequest, showId: string) => boolean;
  /** The same, looked up anew: accounts are closed and narrowed, and sessions end, while a stream is open. */
  readonly stillHearsAll: (parts: AppParts, request: FastifyRequest, showId: string) => Promise<boolean>;
}

const heartbeatMilliseconds = 15_000;
/** A stream ends after this and the reader comes back by itself: so a pass that ended does not listen on. */
const longestStreamMilliseconds = 30 * 60_000;
/** Whoever reads so slowly that this much waits for him is let go; he comes back where he was. */
const mostWaitingBytes = 1_048_576;

const query = z.strictObject({
  after: z.coerce
    .number()
    .int()
    .min(0)
    .optional()
    .describe('Begin after this line; 0: from the first. Without it and without Last-Event-ID: from now on.'),
});

export const liveRoutes =
  (access: LiveAccess): FeatureRoutes =>
  async (app, { parts }) => {
    const feeds = new Feeds(parts);
    app.addHook('preClose', async () => feeds.endAll());

    app.get('/shows/:showId/events', {
      // There is no head of a stream to look at: it would stand open for nobody.
      exposeHeadRoute: false,
      config: access.config,
      schema: {
        tags: ['Live'],
        summary: 'What happens at a show, as it happens (text/event-stream)',
        description:
          'Each event has the number of its ledger line as id, its type as event, and ids (never names) as data. ' +
          'A reader that comes back with Last-Event-ID misses nothing. The types stand in api-docs/events.md.',
        params: z.object({ showId: z.uuid().toLowerCase() }),
        querystring: query,
        response: { 200: z.string().describe('text/event-stream'), ...refusals('not_found') },
      },
      handler: async (request, reply) => {
        const { showId } = request.params;
        const { sql } = parts.db;
        await mustBeShow(sql, showId);
        const last = await lastLineOf(sql, showId);
        const position = Math.min(last, lastHeard(request) ?? request.query.after ?? last);
        const stillHearsAll = access.hearsAll(request, showId)
          ? () => access.stillHearsAll(parts, request, showId)
          : undefined;
        await feeds.open(showId, { reply, position, stillHearsAll });
        return reply;
      },
    });
  };

/** Throws invalid_request for an id that was never given here. */
function lastHeard(request: FastifyRequest): number | undefined {
  const header = request.headers['last-event-id'];
  if (header === undefined || header === '') return undefined;
  if (typeof header === 'string' && /^\d{1,9}$/.test(header)) return Number(header);
  const message = 'it must be the id of an event, a whole number';
  throw problem('invalid_request', { errors: [{ field: 'headers/last-event-id', message }] });
}

interface OpenStream {
  readonly reply: FastifyReply;
  readonly position: number;
  /** `undefined`: it hears what is public, which nobody takes away. */
  readonly stillHearsAll: (() => Promise<boolean>) | undefined;
}

interface FollowedShow {
  readonly feed: ShowFeed;
  readonly begun: Promise<void>;
  readonly stop: () => void;
  /** Streams that are open on it, those too that are still being brought up. */
  streams: number;
}

class Feeds {
  readonly #live: AppParts['live'];
  readonly #sql: Sql;
  readonly #shows = new Map<string, FollowedShow>();
  readonly #ends = new Set<() => void>();

  constructor({ live, db }: AppParts) {
    this.#live = live;
    this.#sql = db.sql;
  }

  async open(showId: string, { reply, position, stillHearsAll }: OpenStream): Promise<void> {
    const followed = this.#follow(showId);
    const stream = startStream(reply);
    const listener: Listener = { hearsAll: stillHearsAll !== undefined, position, write: stream.write };
    const unwatch = this.#watch(stream, stillHearsAll);
    this.#ends.add(stream.end);
    reply.raw.once('close', () => {
      stream.end();
      this.#ends.delete(stream.end);
      followed.feed.leave(listener);
      unwatch();
      this.#letGo(showId, followed);
    });
    followed.streams += 1;
    try {
      // From here on the answer is a stream, and a failure can only end it.
      await followed.begun;
      await followed.feed.join(listener);
    } catch {
      stream.end();
    }
    if (reply.raw.destroyed || reply.raw.writableEnded) followed.feed.leave(listener);
  }

  endAll(): void {
    for (const end of this.#ends) end();
  }

  /** Sessions and accounts are told of in the ledger of the service: at each of its lines the stream is looked at anew. */
  #watch({ end }: Stream, stillHearsAll: OpenStream['stillHearsAll']): () => void {
    if (stillHearsAll === undefined) return () => undefined;
    const look = async () => {
      if (!(await stillHearsAll().catch(() => false))) end();
    };
    return this.#live.subscribe(ofTheService, () => void look());
  }

  #follow(showId: string): FollowedShow {
    const known = this.#shows.get(showId);
    if (known !== undefined) return known;
    const feed = new ShowFeed(this.#sql, showId);
    // Listening comes first: a line that is appended while the feed begins is heard, and read again at worst.
    const stop = this.#live.subscribe(showId, feed.hear);
    const followed = { feed, begun: feed.begin(), stop, streams: 0 };
    this.#shows.set(showId, followed);
    return followed;
  }

  #letGo(showId: string, followed: FollowedShow): void {
    followed.streams -= 1;
    if (followed.streams > 0) return;
    followed.stop();
    if (this.#shows.get(showId) === followed) this.#shows.delete(showId);
  }
}

interface Stream {
  readonly write: (text: string) => void;
  readonly end: () => void;
}

function startStream(reply: FastifyReply): Stream {
  const { raw } = reply;
  const headers = {
    'content-type': 'text/event-stream; charset=utf-8',
    'cache-control': 'no-store',
    connection: 'close',
  };
  reply.hijack();
  raw.writeHead(200, { ...plainHeaders(reply), ...headers, 'x-accel-buffering': 'no' });
  const write = (text: string) => {
    if (raw.writableEnded || raw.destroyed) return;
    if (raw.writableLength > mostWaitingBytes) raw.destroy();
    else raw.write(text);
  };
  write('retry: 2000\n\n');
  const heartbeat = setInterval(() => write(': still here\n\n'), heartbeatMilliseconds);
  const end = () => {
    clearInterval(heartbeat);
    clearTimeout(longest);
    if (!raw.writableEnded) raw.end();
  };
  const longest = setTimeout(end, longestStreamMilliseconds);
  return { write, end };
}

function plainHeaders(reply: FastifyReply): Record<string, string | number | string[]> {
  const set = Object.entries(reply.getHeaders()).filter(([, value]) => value !== undefined);
  return Object.fromEntries(set) as Record<string, string | number | string[]>;
}
