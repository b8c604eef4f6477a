/** Is the process alive, and can it do its work? For whoever watches over it. */
import { z } from 'zod';
import type { FeatureRoutes } from '../app-parts.ts';
import { problem } from '../problems/index.ts';
import { refusals } from './refusals.ts';

const ask = { name: 'health.ask', text: 'SELECT 1 AS one' };
const tags = ['Health'];
const answer = z.strictObject({ status: z.literal('ok') });

export const healthRoutes: FeatureRoutes = async (app, { parts }) => {
  let stopping = false;
  app.addHook('preClose', async () => {
    stopping = true;
  });

  app.get('/health/live', {
    schema: { tags, summary: 'The process is alive', response: { 200: answer } },
    handler: async () => ({ status: 'ok' }) as const,
  });

  app.get('/health/ready', {
    schema: {
      tags,
      summary: 'The process can do its work: the database answers',
      response: { 200: answer, ...refusals('database_unavailable', 'shutting_down') },
    },
    handler: async (request) => {
      if (stopping) throw problem('shutting_down');
      try {
        await parts.db.sql.rows(ask);
      } catch {
        request.log.warn('the database does not answer');
        throw problem('database_unavailable');
      }
      return { status: 'ok' } as const;
    },
  });
};
