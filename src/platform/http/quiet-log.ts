/**
 * The log: which route, what came of it, how long it took. No address, query, header or body ever stands in it, at
 * no level: those may name a child or open a door. What may stand in it is listed here, so that a careless line
 * says too little and never too much.
 */
import type { FastifyBaseLogger, FastifyReply, FastifyRequest } from 'fastify';
import { pino } from 'pino';
import type { LogTarget } from '../app-parts.ts';

/** Everything else that a line brings along is left out. */
const mayStandInLog = new Set([
  ...['method', 'route', 'status', 'milliseconds'],
  ...['failure', 'code', 'message', 'frames'],
  ...['err', 'req', 'res'],
]);

export function quietLog(level: string, to: LogTarget | undefined): FastifyBaseLogger {
  const settings: pino.LoggerOptions = {
    level,
    base: null,
    formatters: { log: onlyWhatMay },
    serializers: {
      err: describeFailure,
      // The framework's own lines bring these along; its own form of them holds the address and who asks.
      req: ({ method }: FastifyRequest) => ({ method }),
      res: ({ statusCode }: FastifyReply) => ({ statusCode }),
    },
  };
  return to === undefined ? pino(settings) : pino(settings, to);
}

function onlyWhatMay(line: Record<string, unknown>): Record<string, unknown> {
  return Object.fromEntries(Object.entries(line).filter(([member]) => mayStandInLog.has(member)));
}

/** Where it happened, never with what values, which may be names. */
export function describeFailure(error: unknown): Readonly<Record<string, unknown>> {
  if (!(error instanceof Error)) return { failure: typeof error };
  const { name, stack = '' } = error;
  const code = 'code' in error ? error.code : undefined;
  const frames = stack.split('\n').filter((line) => line.startsWith('    at '));
  const ownWords = name === 'Error' && code === undefined ? error.message : undefined;
  return { failure: name, code, message: ownWords, frames: frames.slice(0, 12) };
}

/** No address, no query, no body: those may name people. */
export function logAnswer(request: FastifyRequest, reply: FastifyReply): void {
  const { method, routeOptions } = request;
  const line = { method, route: routeOptions.url ?? 'none', status: reply.statusCode };
  request.log.info({ ...line, milliseconds: Math.round(reply.elapsedTime * 10) / 10 }, 'answered');
}
