/** The answers of a route for its documentation: the good ones, and each problem by its status. */
import { z } from 'zod';
import { type ProblemCode, problemCatalogue } from '../../platform/problems/index.ts';

const problemBody = z
  .looseObject({
    type: z.string(),
    title: z.string(),
    status: z.int(),
    code: z.string(),
    detail: z.string().optional(),
    errors: z.array(z.object({ field: z.string(), message: z.string() })).optional(),
  })
  .describe('RFC 9457 problem details');

/** `{ 201: ring, ...refusals('not_found', 'already_exists') }` */
export function refusals(...codes: readonly ProblemCode[]): Record<number, z.ZodType> {
  const byStatus = new Map<number, ProblemCode[]>();
  for (const code of ['invalid_request' as const, ...codes]) {
    const { status } = problemCatalogue[code];
    byStatus.set(status, [...(byStatus.get(status) ?? []), code]);
  }
  return Object.fromEntries(
    [...byStatus].map(([status, of]) => [
      status,
      problemBody.describe(`Problem: ${[...new Set(of)].join(', ')}`),
    ]),
  );
}

/** What any guarded route may refuse. */
export const accessRefusals = ['token_missing', 'token_invalid', 'not_allowed', 'not_found'] as const;
