/** An office sees the classes of its own show; those of another are not there for it. */
import type { FastifyRequest } from 'fastify';
import { actorOf, reachesShow } from '../access/index.ts';
import type { AppParts } from '../platform/app-parts.ts';
import { problem } from '../platform/problems/index.ts';
import { readMark } from './statements.ts';

/** Throws not_found for a class that is not of the pass's show, and for one that does not exist. */
export function mustBeOfficeOf({ db }: AppParts) {
  return async (request: FastifyRequest): Promise<void> => {
    const { params } = request;
    const classId =
      typeof params === 'object' && params !== null && 'classId' in params ? String(params.classId) : '';
    const found = await db.sql.row<{ showId: string }>(readMark, [classId]);
    if (found === undefined || !reachesShow(actorOf(request), found.showId)) {
      throw problem('not_found', { detail: 'There is no such class in this show.' });
    }
  };
}
