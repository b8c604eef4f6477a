/** The bare service: how requests come in, are named, checked, logged and refused. Routes are added to it. */
import helmet from '@fastify/helmet';
import rateLimit from '@fastify/rate-limit';
import {
  type FastifyBaseLogger,
  type FastifyReply,
  type FastifyRequest,
  fastify,
  LogController,
} from 'fastify';
import { serializerCompiler, type ZodTypeProvider } from 'fastify-type-provider-zod';
import { pino } from 'pino';
import type { App, AppParts } from '../app-parts.ts';
import { problem } from '../problems/index.ts';
import { drainOnClose } from './drain.ts';
import { answerWithProblems } from './problem-answers.ts';
import { checkBySchema } from './validation.ts';

/** A card of 300 goes with twenty marks each is some 400 KB. */
const largestBody = 1_048_576;

export async function createServer({ config, ids }: AppParts): Promise<App> {
  const loggerInstance: FastifyBaseLogger = pino({ level: config.logLevel, base: null });
  const app: App = fastify({
    loggerInstance,
    logController: new LogController({ disableRequestLogging: true, requestIdLogLabel: 'requestId' }),
    bodyLimit: largestBody,
    requestTimeout: 30_000,
    requestIdHeader: false,
    genReqId: ({ headers }) => givenId(headers['x-request-id']) ?? ids.next(),
    routerOptions: { maxParamLength: 200, ignoreTrailingSlash: false },
    forceCloseConnections: 'idle',
  }).withTypeProvider<ZodTypeProvider>();
  app.setValidatorCompiler(checkBySchema);
  app.setSerializerCompiler(serializerCompiler);
  answerWithProblems(app);
  drainOnClose(app);
  app.addHook('onRequest', async (request, reply) => {
    reply.header('x-request-id', request.id);
  });
  app.addHook('onResponse', async (request, reply) => logAnswer(request, reply));
  await app.register(helmet, { contentSecurityPolicy: { directives: { 'default-src': ["'none'"] } } });
  if (config.requestsPerMinute > 0) await app.register(rateLimit, limits(config.requestsPerMinute));
  return app;
}

/** A request id from outside is taken over where it is short and plain, so that it can be found in both logs. */
function givenId(header: string | string[] | undefined): string | undefined {
  return typeof header === 'string' && /^[\w.:-]{1,64}$/.test(header) ? header : undefined;
}

/** Which route, what came of it, how long it took. No address, no query, no body: those may name people. */
function logAnswer(request: FastifyRequest, reply: FastifyReply): void {
  const { method, routeOptions } = request;
  const line = { method, route: routeOptions.url ?? 'none', status: reply.statusCode };
  request.log.info({ ...line, milliseconds: Math.round(reply.elapsedTime * 10) / 10 }, 'answered');
}

/** Many phones of a show ground may come from one address. */
const limits = (requestsPerMinute: number) => ({
  max: requestsPerMinute,
  timeWindow: 60_000,
  errorResponseBuilder: () => problem('too_many_requests'),
});
