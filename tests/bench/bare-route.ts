/** The yardstick of a posted result: a Fastify with one route that sends the same bytes, or 304. Run as a process. */
import { readFileSync } from 'node:fs';
import Fastify from 'fastify';

const bytes = readFileSync(process.env.BARE_FILE ?? '');
const etag = '"bare"';
const app = Fastify();

app.get('/bare', (request, reply) => {
  reply.header('etag', etag);
  if (request.headers['if-none-match'] === etag) return reply.code(304).send();
  return reply.type('application/json; charset=utf-8').send(bytes);
});

await app.listen({ port: Number(process.env.PORT), host: '127.0.0.1' });
