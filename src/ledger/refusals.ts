/**
 * Refusals are in the ledger too: who tries what is not hers is seen by the office, even where nothing came of it.
 * Only known senders are written down. A stranger without a pass could otherwise fill the ledger for ever with
 * lines that can never be removed; the limits per address are for him.
 */
import type { FastifyRequest } from 'fastify';
import { type LineActor, ofTheService } from '../evidence/index.ts';
import type { App, AppParts } from '../platform/app-parts.ts';
import { inSqlTransaction } from '../platform/database.ts';
import { Problem, type ProblemCode } from '../platform/problems/index.ts';
import { appendLine } from './append-line.ts';
import { recordedRefusals } from './refusals-recorded.ts';
import { showAskedFor } from './refusals-show.ts';
import { onBehalfOf } from './sender.ts';

export interface RefusalAccess {
  /** Whoever came in with a good pass; `undefined`: a stranger. */
  readonly sender: (request: FastifyRequest) => LineActor | undefined;
}

interface Refusal {
  readonly ledgerId: string;
  readonly actor: LineActor;
  readonly code: ProblemCode;
  readonly method: string;
  /** As it is registered: "/v1/shows/:showId". What stood in its places may be anything. */
  readonly route: string;
  /** Whose token was used by somebody without its key. */
  readonly phoneId: string | undefined;
}

/** The first of several equal refusals is written at once, the others within a minute together, as a number. */
const togetherMilliseconds = 60_000;

/** Before routes are added: it hears every refusal, and the answer waits until the line is written. */
export function recordRefusals(app: App, parts: AppParts, { sender }: RefusalAccess): void {
  const lines = new RefusalLines(parts, () => app.log.warn('a refusal was not written to the ledger'));
  app.addHook('onError', async (request, _reply, error: unknown) => {
    if (!(error instanceof Problem) || recordedRefusals[error.code] === undefined) return;
    const { code, details } = error;
    const { actor = sender(request), phoneId } = details.refused ?? {};
    if (actor === undefined) return;
    const { method, routeOptions } = request;
    const asked = { method, route: routeOptions.url ?? '', code, actor, phoneId };
    await lines.record(request.params, asked);
  });
  const each = setInterval(() => void lines.tellCounts(), togetherMilliseconds);
  each.unref();
  app.addHook('preClose', async () => {
    clearInterval(each);
    await lines.tellCounts();
  });
}

interface Counted {
  readonly refusal: Refusal;
  /** Not in the ledger yet. */
  waiting: number;
}

class RefusalLines {
  readonly #parts: AppParts;
  readonly #failed: () => void;
  readonly #counts = new Map<string, Counted>();

  constructor(parts: AppParts, failed: () => void) {
    this.#parts = parts;
    this.#failed = failed;
  }

  /** Never throws: a refusal is answered, whatever becomes of its line. */
  async record(params: unknown, asked: Omit<Refusal, 'ledgerId'>): Promise<void> {
    try {
      const ledgerId = (await showAskedFor(this.#parts.db.sql, params)) ?? ofTheService;
      const refusal = { ...asked, ledgerId };
      const key = JSON.stringify(refusal);
      const counted = this.#counts.get(key);
      if (counted !== undefined) {
        counted.waiting += 1;
        return;
      }
      const first = { refusal, waiting: 1 };
      this.#counts.set(key, first);
      await this.#tell(first);
    } catch {
      this.#failed();
    }
  }

  /** Writes what was only counted, and forgets what did not come again. Never throws. */
  async tellCounts(): Promise<void> {
    for (const [key, counted] of this.#counts) {
      if (counted.waiting === 0) this.#counts.delete(key);
      else await this.#tell(counted).catch(this.#failed);
    }
  }

  async #tell(counted: Counted): Promise<void> {
    const { ledgerId, actor, ...what } = counted.refusal;
    const times = counted.waiting;
    counted.waiting = 0;
    const body = { ...what, times };
    const at = this.#parts.clock.now();
    try {
      await onBehalfOf(actor, () =>
        inSqlTransaction(this.#parts.db, async (tx) => {
          await tx.sql.rows(hurry);
          await appendLine(this.#parts, tx, { showId: ledgerId, type: 'request.refused', body, at });
        }),
      );
    } catch (error) {
      // Counted again, and told with the next.
      counted.waiting += times;
      throw error;
    }
  }
}

/** The sender waits for this: where the ledger is held longer by somebody else, the line comes later. */
const hurry = {
  name: 'refusal.hurry',
  text: `SELECT set_config('lock_timeout', '2000', true)`,
};
