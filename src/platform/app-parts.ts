/** What the app is built from. Clock, ids and database come from outside, so that a test can give its own. */
import { randomBytes } from 'node:crypto';
import type { IncomingMessage, ServerResponse } from 'node:http';
import type { FastifyBaseLogger, FastifyInstance, RawServerDefault } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { v7 as uuidV7 } from 'uuid';
import type { Config } from '../config.ts';
import type { Database } from './database.ts';
import type { LiveLines } from './live-lines.ts';
import type { ServiceKeys } from './service-keys.ts';

export interface Clock {
  readonly now: () => Date;
}

export interface Ids {
  /** A new UUID of version 7; later ones sort later. */
  readonly next: () => string;
  /** 128 random bits as 32 hex digits: what a lot is drawn from. */
  readonly seed: () => string;
}

/** Where log lines go, one JSON object each. */
export interface LogTarget {
  readonly write: (line: string) => void;
}

export interface AppParts {
  readonly config: Config;
  readonly db: Database;
  readonly clock: Clock;
  readonly ids: Ids;
  /** TOKEN_SECRET, at least 32 bytes: signs the tokens of phones (HS256); keys for the rest are derived from it. */
  readonly tokenKey: Uint8Array;
  /** What postings are signed and ledger lines sealed with. */
  readonly keys: ServiceKeys;
  /** Tells, across processes, that a show's ledger has grown. */
  readonly live: LiveLines;
  /** Left out: the standard output. */
  readonly logTo?: LogTarget;
}

/** A Fastify whose routes take and give what their zod schemas say. */
export type App = FastifyInstance<
  RawServerDefault,
  IncomingMessage,
  ServerResponse,
  FastifyBaseLogger,
  ZodTypeProvider
>;

/** A feature's routes. It is registered under `/v1`, so a feature writes `/shows/:showId`. */
export type FeatureRoutes = (app: App, options: { readonly parts: AppParts }) => Promise<void>;

export const systemClock: Clock = { now: () => new Date() };

export const randomIds: Ids = { next: () => uuidV7(), seed: () => randomBytes(16).toString('hex') };
