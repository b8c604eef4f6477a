/**
 * What PostgreSQL refuses, as a problem: for the case that two requests pass the checks in the code at the same
 * time and only one can be right. Codes: PostgreSQL, appendix A. The database's own words hold values, which may
 * be names, so only the name of the constraint is given on.
 */
import { type Problem, problem } from './problem.ts';

interface Refusal {
  /** SQLSTATE, e.g. 23505. */
  readonly state: string;
  readonly constraint: string | undefined;
}

export function problemFromDatabase(error: unknown): Problem | undefined {
  const refusal = refusalIn(error);
  if (refusal === undefined) return isOutOfReach(error) ? problem('database_unavailable') : undefined;
  const { state, constraint } = refusal;
  const detail = constraint === undefined ? {} : { detail: `It is refused by "${constraint}".` };
  if (state === '23505') return problem('already_exists', detail);
  if (state === '23503') return problem('still_referred_to', detail);
  if (state === '23514' || state === '23502' || state.startsWith('22')) {
    return problem('refused_by_database', detail);
  }
  // 57: an operator or a crash ended the connection; 53: no room or no connection left; 08: connection lost.
  return /^(08|53|57)/.test(state) ? problem('database_unavailable') : undefined;
}

function refusalIn(error: unknown, depth = 0): Refusal | undefined {
  if (typeof error !== 'object' || error === null || depth > 5) return undefined;
  const { code, originalCode, constraint, meta, cause, driverAdapterError } = error as Readonly<
    Record<string, unknown>
  >;
  const state = [originalCode, code].find(
    (word) => typeof word === 'string' && /^[0-9A-Z]{5}$/.test(word) && /\d/.test(word),
  );
  if (typeof state === 'string' && !/^P\d{4}$/.test(state))
    return { state, constraint: constraintName(constraint) };
  for (const inner of [meta, driverAdapterError, cause]) {
    const found = refusalIn(inner, depth + 1);
    if (found !== undefined) return found;
  }
  return undefined;
}

/** `pg` gives the name; Prisma gives `{ index }` or the fields. */
function constraintName(constraint: unknown): string | undefined {
  if (typeof constraint === 'string') return constraint;
  if (typeof constraint !== 'object' || constraint === null) return undefined;
  const { index, fields } = constraint as { readonly index?: unknown; readonly fields?: unknown };
  if (typeof index === 'string') return index;
  return Array.isArray(fields) ? fields.join(', ') : undefined;
}

function isOutOfReach(error: unknown): boolean {
  const { code = '', message = '' } = (error ?? {}) as { readonly code?: string; readonly message?: string };
  if (['ECONNREFUSED', 'ECONNRESET', 'EPIPE', 'P1001', 'P1017', 'P2024', 'P2028'].includes(code)) return true;
  return /Connection terminated|timeout exceeded when trying to connect/.test(message);
}
