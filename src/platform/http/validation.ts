/** What zod finds wrong becomes a problem that names each field. */
import type { FastifySchemaCompiler } from 'fastify';
import type { z } from 'zod';
import { type FieldFault, problem } from '../problems/index.ts';

export const checkBySchema: FastifySchemaCompiler<z.ZodType> = ({ schema, httpPart }) => {
  const root = httpPart === undefined || httpPart === 'body' ? '' : (partNames[httpPart] ?? httpPart);
  return (value: unknown) => {
    const read = schema.safeParse(value);
    if (read.success) return { value: read.data };
    if (root === '' && (value === undefined || value === null)) return { error: problem('empty_body') };
    return { error: problem('invalid_request', { errors: faultsOf(read.error.issues, root) }) };
  };
};

const partNames: Readonly<Record<string, string>> = {
  querystring: 'query',
  params: 'params',
  headers: 'headers',
};

type Issue = z.core.$ZodIssue;

/** One line per field; `root` is where the value came from, empty for the body. */
export function faultsOf(
  issues: readonly Issue[],
  root: string,
  above: readonly PropertyKey[] = [],
): FieldFault[] {
  return issues.flatMap((issue) => {
    const path = [...above, ...issue.path];
    if (issue.code === 'unrecognized_keys') {
      return issue.keys.map((key) => ({
        field: pointer(root, [...path, key]),
        message: 'there is no such field',
      }));
    }
    if (issue.code === 'invalid_union') {
      const nearest = nearestBranch(issue.errors);
      if (nearest !== undefined) return faultsOf(nearest, root, path);
    }
    return [{ field: pointer(root, path), message: issue.message }];
  });
}

/** Of the forms that were possible, the one that the sender seems to have meant: wrong deep inside, or in one thing only. */
function nearestBranch(branches: readonly (readonly Issue[])[]): readonly Issue[] | undefined {
  const told = branches.filter((issues) => issues.some((issue) => issue.path.length > 0));
  const depth = (issues: readonly Issue[]) => Math.max(0, ...issues.map((issue) => issue.path.length));
  return [...told].sort((a, b) => a.length - b.length || depth(b) - depth(a))[0];
}

/** RFC 6901. */
function pointer(root: string, path: readonly PropertyKey[]): string {
  return root + path.map((part) => `/${String(part).replaceAll('~', '~0').replaceAll('/', '~1')}`).join('');
}
