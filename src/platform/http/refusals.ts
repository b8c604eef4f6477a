/** The problems of a route, for its documentation. */
import { z } from 'zod';
import { type ProblemCode, problemCatalogue } from '../problems/index.ts';

export const problemBody = z
  .looseObject({
    type: z.string().describe('Address of the entry in the error catalogue.'),
    title: z.string(),
    status: z.int(),
    code: z.string().describe('Stable; see api-docs/errors.md.'),
    detail: z.string().optional(),
    whatToDo: z.string(),
    requestId: z.string(),
    errors: z.array(z.object({ field: z.string(), message: z.string() })).optional(),
  })
  .describe('RFC 9457 problem details');

/** `{ 201: ring, ...refusals('not_found', 'already_exists') }`; `invalid_request` is always among them. */
export function refusals(...codes: readonly ProblemCode[]): Record<number, z.ZodType> {
  const byStatus = new Map<number, Set<ProblemCode>>();
  for (const code of ['invalid_request' as const, ...codes]) {
    const { status } = problemCatalogue[code];
    byStatus.set(status, (byStatus.get(status) ?? new Set()).add(code));
  }
  return Object.fromEntries(
    [...byStatus].map(([status, of]) => [status, problemBody.describe(`Problem: ${[...of].join(', ')}`)]),
  );
}
