/** Rings, people on the panel, horses, owners: records of a show that are little more than a name. */
import { z } from 'zod';
import { office, officeReading, openTo } from '../../access/index.ts';
import { appendLine, type LineType } from '../../ledger/index.ts';
import type { App, AppParts } from '../../platform/app-parts.ts';
import type { Database, Transaction } from '../../platform/database.ts';
import { afterId, pageFrom, pageOf, pageQuery } from '../../platform/http/pages.ts';
import { refusals } from '../../platform/http/refusals.ts';
import { created, once } from '../once.ts';
import { accessRefusals, id, showParams } from '../schemas/common.ts';
import { nameText } from '../schemas/text.ts';
import { lockShow } from '../store/locks.ts';

export const namedBody = z.strictObject({ name: nameText });
const namedRecord = z.strictObject({ id, name: z.string() });

interface NamedRow {
  readonly id: string;
  readonly name: string;
}

export interface NewRow {
  readonly id: string;
  readonly showId: string;
  readonly name: string;
  readonly createdAt: Date;
}

export interface NamedKind {
  /** `rings`: the address is `/shows/:showId/rings`. */
  readonly path: string;
  /** `a ring` */
  readonly what: string;
  readonly tag: string;
  readonly line: LineType;
  /** Field of the ledger line: `ringId`. */
  readonly lineField: string;
  readonly create: (tx: Transaction, row: NewRow) => Promise<NamedRow>;
  readonly list: (
    db: Database,
    asked: { showId: string; after: string; take: number },
  ) => Promise<NamedRow[]>;
}

export function namedRoutes(app: App, parts: AppParts, kind: NamedKind): void {
  const { path, what, tag } = kind;

  app.get(`/shows/:showId/${path}`, {
    config: openTo(...officeReading),
    schema: {
      tags: [tag],
      summary: `All of the show's ${path}`,
      params: showParams,
      querystring: pageQuery,
      response: { 200: pageOf(namedRecord), ...refusals(...accessRefusals, 'invalid_cursor') },
    },
    handler: async ({ params: { showId }, query: { limit, cursor } }) => {
      const rows = await kind.list(parts.db, { showId, after: afterId(cursor) ?? lowestId, take: limit + 1 });
      return pageFrom(rows, limit, { key: (row) => row.id, item: namedOf });
    },
  });

  app.post(`/shows/:showId/${path}`, {
    config: openTo(...office),
    schema: {
      tags: [tag],
      summary: `Add ${what}`,
      params: showParams,
      body: namedBody,
      response: { 201: namedRecord, ...refusals(...accessRefusals, 'already_exists') },
    },
    handler: (request, reply) =>
      once({ parts, request, reply }, async (tx) =>
        created(await addNamed(parts, tx, { kind, ...request.params, ...request.body })),
      ),
  });
}

const lowestId = '00000000-0000-0000-0000-000000000000';

const namedOf = ({ id: rowId, name }: NamedRow) => ({ id: rowId, name });

interface NewNamed {
  readonly kind: NamedKind;
  readonly showId: string;
  readonly name: string;
}

/** Throws not_found, and what the kind's `create` refuses. */
async function addNamed(parts: AppParts, tx: Transaction, { kind, showId, name }: NewNamed) {
  const at = parts.clock.now();
  await lockShow(tx, showId);
  const row = await kind.create(tx, { id: parts.ids.next(), showId, name, createdAt: at });
  await appendLine(parts, tx, { showId, type: kind.line, body: { [kind.lineField]: row.id }, at });
  return namedOf(row);
}
