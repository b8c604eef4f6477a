/** Every refusal leaves the service here, as RFC 9457 problem details. */
import type { FastifyError, FastifyReply, FastifyRequest } from 'fastify';
import type { App } from '../app-parts.ts';
import { problemFromDatabase } from '../problems/database-problems.ts';
import { type FieldFault, Problem, type ProblemCode, problem, problemCatalogue } from '../problems/index.ts';
import { describeFailure } from './quiet-log.ts';
import { headersOfEarlyRefusals } from './security-headers.ts';

export const problemMediaType = 'application/problem+json';

export function answerWithProblems(app: App): void {
  const routes: KnownRoute[] = [];
  app.addHook('onRoute', ({ method, url }) => {
    routes.push({ methods: [method].flat(), parts: url.split('/') });
  });
  app.setErrorHandler((error: unknown, request, reply) => {
    const refusal = asProblem(error);
    if (refusal.status >= 500) request.log.error(describeFailure(error), 'failed');
    sendProblem(reply, request, refusal);
  });
  app.setNotFoundHandler((request, reply) => {
    sendProblem(reply, request, nothingHere(routes, request));
  });
}

/** An address that cannot be read or is too long: the framework refuses it before any hook runs. */
export function refuseAddress(error: FastifyError, request: FastifyRequest, reply: FastifyReply): void {
  const refusal = asProblem(error);
  request.log.info({ method: request.raw.method, route: 'none', status: refusal.status }, 'answered');
  reply.headers({ ...headersOfEarlyRefusals, 'x-request-id': request.id });
  sendProblem(reply, request, refusal);
}

export function sendProblem(reply: FastifyReply, request: FastifyRequest, refusal: Problem): void {
  const { code, details, status } = refusal;
  const { title, whatToDo } = problemCatalogue[code];
  const { detail, errors, more, headers } = details;
  const body = {
    type: `/docs/errors#${code}`,
    title,
    status,
    code,
    detail,
    whatToDo,
    errors: errors?.map(({ field, message }) => ({ field, message: inWords(message, request) })),
    requestId: request.id,
  };
  reply
    .code(status)
    .headers({ ...headers, 'cache-control': 'no-store' })
    .type(problemMediaType)
    .send(JSON.stringify({ ...more, ...body }));
}

const inWords = (message: FieldFault['message'], { headers }: FastifyRequest): string =>
  typeof message === 'string' ? message : message(headers['accept-language']);

interface KnownRoute {
  readonly methods: readonly string[];
  readonly parts: readonly string[];
}

function nothingHere(routes: readonly KnownRoute[], request: FastifyRequest): Problem {
  const asked = (request.url.split('?')[0] ?? '').split('/');
  const fits = ({ parts }: KnownRoute) =>
    parts.length === asked.length && parts.every((part, at) => part.startsWith(':') || part === asked[at]);
  const methods = [...new Set(routes.filter(fits).flatMap((route) => route.methods))].sort();
  if (methods.length === 0) return problem('route_not_found');
  return problem('method_not_allowed', { headers: { allow: methods.join(', ') } });
}

/** Fastify's own refusals, by their stable codes. */
const byFrameworkCode: Readonly<Record<string, ProblemCode>> = {
  FST_ERR_CTP_BODY_TOO_LARGE: 'body_too_large',
  FST_ERR_CTP_INVALID_MEDIA_TYPE: 'unsupported_media_type',
  FST_ERR_CTP_EMPTY_JSON_BODY: 'empty_body',
  FST_ERR_CTP_INVALID_JSON_BODY: 'malformed_json',
  FST_ERR_CTP_INVALID_CONTENT_LENGTH: 'malformed_json',
  FST_ERR_BAD_URL: 'route_not_found',
  FST_ERR_MAX_PARAM_LENGTH: 'route_not_found',
};

function asProblem(error: unknown): Problem {
  if (error instanceof Problem) return error;
  const { code = '', statusCode = 500, message = '' } = error as Partial<FastifyError>;
  const known = byFrameworkCode[code];
  if (known !== undefined) return problem(known);
  if (error instanceof SyntaxError && statusCode === 400) return problem('malformed_json');
  if (statusCode >= 400 && statusCode < 500) return problem('invalid_request', { detail: message });
  return problemFromDatabase(error) ?? problem('internal_error');
}
