/** The pattern of a class for everyone, once the class is drawn or called. */

import { z } from 'zod';
import { openTo } from '../../access/index.ts';
import type { FeatureRoutes } from '../../platform/app-parts.ts';
import type { Database } from '../../platform/database.ts';
import { id } from '../../platform/http/id.ts';
import { refusals } from '../../platform/http/refusals.ts';
import { problem } from '../../platform/problems/index.ts';
import { type PatternBody, patternBody, patternOf, withManeuvers } from './pattern-schemas.ts';

export const publicPatternRoutes: FeatureRoutes = async (app, { parts }) => {
  app.get('/classes/:classId/pattern', {
    config: openTo('everyone'),
    schema: {
      tags: ['Patterns'],
      summary: 'The pattern of a class, once the class is drawn or called',
      description:
        'A pattern hangs at the gate before its class is ridden, so that everyone learns the same one (common practice, ' +
        'no source). Until then the office and the judges of the show read it.',
      params: z.object({ classId: id }),
      response: { 200: patternBody, ...refusals('not_found', 'pattern_not_public') },
    },
    handler: async ({ params }, reply) => {
      reply.header('cache-control', 'no-cache');
      return readPublicPattern(parts.db, params.classId);
    },
  });
};

/** Throws not_found, also where the class has no pattern; pattern_not_public. */
export async function readPublicPattern(
  { prisma }: Pick<Database, 'prisma'>,
  classId: string,
): Promise<PatternBody> {
  const row = await prisma.showClass.findUnique({
    where: { id: classId },
    include: {
      pattern: { include: withManeuvers },
      _count: { select: { draws: true, postings: true } },
    },
  });
  if (row === null) throw problem('not_found', { detail: 'There is no such class.' });
  if (row.pattern === null) throw problem('not_found', { detail: 'The class has no pattern.' });
  const { draws, postings } = row._count;
  const isOut = row.calledAt !== null || row.openedAt !== null || draws > 0 || postings > 0;
  if (!isOut) throw problem('pattern_not_public');
  return patternOf(row.pattern);
}
