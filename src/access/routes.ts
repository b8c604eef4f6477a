import { z } from 'zod';
import type { FeatureRoutes } from '../platform/app-parts.ts';
import { type Role, roles } from './actor.ts';
import { issuePass, revokePass } from './issue-pass.ts';
import { requireRole } from './require-role.ts';

const tags = ['Access'];
const id = z.uuid('it must be an id: a UUID').toLowerCase();

const label = z
  .string()
  .trim()
  .normalize('NFC')
  .min(1)
  .max(200)
  .regex(/^\P{Cc}*$/u, 'it must not contain control characters')
  .describe('What it is handed out for, e.g. "Ring 2 gate". No names of minors.');
const hours = z
  .int()
  .min(1)
  .max(24 * 30)
  .default(72)
  .describe('How long it is good for.');

const newToken = z.discriminatedUnion('role', [
  z.strictObject({ role: z.literal('judge'), seatId: id, label: label.optional(), hours }),
  z.strictObject({ role: z.literal('scribe'), seatId: id, label: label.optional(), hours }),
  z.strictObject({ role: z.literal('gate'), label: label.optional(), hours }),
  z.strictObject({ role: z.literal('office'), label: label.optional(), hours }),
  z.strictObject({ role: z.literal('public'), label: label.optional(), hours }),
]);

const issuedBody = z.strictObject({
  jti: z.string(),
  role: z.enum(roles),
  seatId: z.string().nullable(),
  token: z.string().describe('Shown once; it is not kept.'),
  expiresAt: z.string(),
});

const registered = z.strictObject({
  jti: z.string(),
  role: z.string(),
  seatId: z.string().nullable(),
  label: z.string().nullable(),
  issuedAt: z.string(),
  expiresAt: z.string(),
  revokedAt: z.string().nullable(),
});

export const accessRoutes: FeatureRoutes = async (app, { parts }) => {
  const onRequest = requireRole(parts, 'office');

  app.post('/shows/:showId/tokens', {
    onRequest,
    schema: {
      tags,
      summary: 'Hand out a pass: to a judge, her scribe, the gate, the office',
      params: z.object({ showId: id }),
      body: newToken,
      response: { 201: issuedBody },
    },
    handler: async ({ params: { showId }, body }, reply) => {
      const role: Role = body.role;
      const seatId = 'seatId' in body ? body.seatId : null;
      const asked = { showId, role, seatId, label: body.label ?? null, hours: body.hours };
      const { jti, token, expiresAt } = await issuePass(parts, asked);
      reply.header('cache-control', 'no-store');
      return reply.code(201).send({ jti, role, seatId, token, expiresAt: expiresAt.toISOString() });
    },
  });

  app.get('/shows/:showId/tokens', {
    onRequest,
    schema: {
      tags,
      summary: 'The passes that were handed out for a show, newest first; at most 500',
      params: z.object({ showId: id }),
      response: { 200: z.strictObject({ items: z.array(registered) }) },
    },
    handler: async ({ params: { showId } }) => {
      const rows = await parts.db.prisma.accessToken.findMany({
        where: { showId },
        orderBy: { jti: 'desc' },
        take: 500,
      });
      const items = rows.map(({ jti, role, seatId, label: text, issuedAt, expiresAt, revokedAt }) => ({
        ...{ jti, role, seatId, label: text },
        issuedAt: issuedAt.toISOString(),
        expiresAt: expiresAt.toISOString(),
        revokedAt: revokedAt?.toISOString() ?? null,
      }));
      return { items };
    },
  });

  app.delete('/shows/:showId/tokens/:jti', {
    onRequest,
    schema: {
      tags,
      summary: 'Take a pass back',
      params: z.object({ showId: id, jti: id }),
      response: { 204: z.null().describe('It is taken back.') },
    },
    handler: async ({ params }, reply) => {
      await revokePass(parts, params);
      return reply.code(204).send(null);
    },
  });
};
