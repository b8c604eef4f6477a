/** The bare service: how requests come in, are named, checked, logged and refused. Routes are added to it. */
import { fastify, LogController } from 'fastify';
import { serializerCompiler, type ZodTypeProvider } from 'fastify-type-provider-zod';
import type { App, AppParts } from '../app-parts.ts';
import { drainOnClose } from './drain.ts';
import { answerWithProblems, refuseAddress } from './problem-answers.ts';
import { logAnswer, quietLog } from './quiet-log.ts';
import { limitAddresses } from './rate-limits.ts';
import { sendSecurityHeaders } from './security-headers.ts';
import { checkBySchema } from './validation.ts';
import { wireLimits } from './wire.ts';

export async function createServer(parts: AppParts): Promise<App> {
  const { config, ids, logTo } = parts;
  const app: App = fastify({
    ...wireLimits(parts),
    loggerInstance: quietLog(config.logLevel, logTo),
    logController: new LogController({ disableRequestLogging: true, requestIdLogLabel: 'requestId' }),
    requestIdHeader: false,
    genReqId: ({ headers }) => givenId(headers['x-request-id']) ?? ids.next(),
    routerOptions: { maxParamLength: 200, ignoreTrailingSlash: false },
    forceCloseConnections: 'idle',
    frameworkErrors: refuseAddress,
  }).withTypeProvider<ZodTypeProvider>();
  app.setValidatorCompiler(checkBySchema);
  app.setSerializerCompiler(serializerCompiler);
  answerWithProblems(app);
  drainOnClose(app);
  app.addHook('onRequest', async (request, reply) => {
    reply.header('x-request-id', request.id);
  });
  app.addHook('onResponse', async (request, reply) => logAnswer(request, reply));
  await sendSecurityHeaders(app);
  await limitAddresses(app, config.requestsPerMinute);
  return app;
}

/**
 * A request id from outside is taken over where it is short and plain, so that it can be found in both logs. It is
 * no longer than a UUID: no token fits in, and none is logged by mistake.
 */
function givenId(header: string | string[] | undefined): string | undefined {
  return typeof header === 'string' && /^[\w.:-]{1,36}$/.test(header) ? header : undefined;
}
