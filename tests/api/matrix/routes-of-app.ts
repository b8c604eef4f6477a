/** Every route of the service while it is being built, those too that its own description leaves out. */
import { subscribe, unsubscribe } from 'node:diagnostics_channel';
import type { FastifyInstance } from 'fastify';

export interface FoundRoute {
  readonly method: string;
  /** `/v1/shows/:showId` */
  readonly url: string;
}

/** Runs `build` and returns what was registered meanwhile. Listens to the framework itself, so nothing can hide. */
export async function withRoutes<T>(build: () => Promise<T>): Promise<{ built: T; routes: FoundRoute[] }> {
  const routes: FoundRoute[] = [];
  const onStart = (message: unknown) => {
    const { fastify } = message as { fastify: FastifyInstance };
    fastify.addHook('onRoute', ({ method, url }) => {
      for (const one of [method].flat()) routes.push({ method: one, url });
    });
  };
  subscribe('fastify.initialization', onStart);
  try {
    const built = await build();
    return { built, routes };
  } finally {
    unsubscribe('fastify.initialization', onStart);
  }
}
