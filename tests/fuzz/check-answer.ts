/** What every answer must be, whatever was asked. */
import type { LightMyRequestResponse as Response } from 'fastify';
import { problemBody } from '../../src/platform/http/refusals.ts';
import { problemCatalogue } from '../../src/platform/problems/index.ts';

/** How the inside of a service looks; none of it is in what the run sends. */
const inside = [
  /\bat [^\n]*\.(ts|js|mjs):\d+/,
  /node_modules|node:internal/,
  /\bSELECT\b[^"]*\bFROM\b|\bINSERT INTO\b|\bUPDATE\b[^"]*\bSET\b/,
  /PrismaClient|Invalid `.*` invocation|SQLSTATE|violates [a-z-]+ constraint|syntax error at or near/,
  /ECONNREFUSED|BEGIN PRIVATE KEY|\$argon2/,
];

/** In words; empty where nothing is wrong. */
export function faultsOfAnswer({ statusCode, headers, payload }: Response): string[] {
  const leaks = inside
    .filter((look) => look.test(payload))
    .map((look) => `it shows the inside: ${look.source}`);
  const faults =
    statusCode >= 400 ? faultsOfProblem(statusCode, String(headers['content-type']), payload) : [];
  return [
    ...(statusCode >= 500 ? [`status ${statusCode}`] : []),
    ...(headers['set-cookie'] === undefined ? [] : ['it sets a cookie']),
    ...leaks,
    ...faults,
  ];
}

// RFC 9457, 3: its media type, and a status that is the same as that of the answer.
function faultsOfProblem(statusCode: number, mediaType: string, payload: string): string[] {
  if (!mediaType.startsWith('application/problem+json')) return [`a refusal as ${mediaType}`];
  const read = problemBody.safeParse(jsonOf(payload));
  if (!read.success) return [`no problem: ${read.error.message}`];
  const { code, status } = read.data;
  const kind = Object.entries(problemCatalogue).find(([known]) => known === code)?.[1];
  if (kind === undefined) return [`the code ${code} is not in the catalogue`];
  return kind.status === statusCode && status === statusCode ? [] : [`${code} with status ${statusCode}`];
}

export function jsonOf(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
