/** Results over HTTP: the preview and its rulings for the office, postings for everyone. */
import type { FastifyReply, FastifyRequest } from 'fastify';
import { z } from 'zod';
import { requireRole } from '../access/index.ts';
import { created, once } from '../office/index.ts';
import type { App, AppParts, FeatureRoutes } from '../platform/app-parts.ts';
import { refusals } from '../platform/http/refusals.ts';
import { isKnownToReader } from '../platform/http/versions.ts';
import { problem } from '../platform/problems/index.ts';
import { postingSummaryAnswer } from './answers.ts';
import type { RulingOnRecord } from './class-records.ts';
import { mustBeOfficeOf } from './office-only.ts';
import { postResult } from './post-result.ts';
import { readBoard } from './read-board.ts';
import { readAgreement, readMargins } from './read-closeness.ts';
import { listPostings, listRulings, readOnePosting } from './read-postings.ts';
import { PostedResults, readEntryResult } from './read-result.ts';
import { readTabulation } from './read-tabulation.ts';
import { recordRuling } from './record-ruling.ts';
import {
  agreementAnswer,
  boardAnswer,
  classParams,
  entryAnswer,
  entryParams,
  marginsAnswer,
  marginsQuery,
  postingAnswer,
  postingParams,
  postingRequest,
  postingSummary,
  postingsAnswer,
  resultAnswer,
  rulingAnswer,
  rulingRequest,
  rulingsAnswer,
  showParams,
  tabulationAnswer,
} from './schemas.ts';

export const resultRoutes: FeatureRoutes = async (app, { parts }) => {
  officeRoutes(app, parts);
  postingRoutes(app, parts);
  publicRoutes(app, parts);
};

const tags = ['results'];
const access = ['token_missing', 'token_invalid', 'not_allowed', 'not_found'] as const;

/** What only the office of the show sees: the preview, rulings, how close it was. */
function officeRoutes(app: App, parts: AppParts): void {
  const { sql } = parts.db;
  const guard = { onRequest: requireRole(parts, 'office'), preHandler: mustBeOfficeOf(parts) };
  app.get(
    '/classes/:classId/tabulation',
    {
      ...guard,
      schema: {
        tags,
        summary: 'Preview of the merged result, with open ties',
        params: classParams,
        response: { 200: tabulationAnswer, ...refusals(...access, 'class_cannot_be_tabulated') },
      },
    },
    async ({ params }, reply) => {
      const { etag, answer } = await readTabulation(parts.db, params.classId);
      reply.header('etag', etag);
      return answer;
    },
  );
  app.post(
    '/classes/:classId/rulings',
    {
      ...guard,
      schema: {
        tags,
        summary: 'Record how an open tie was decided',
        params: classParams,
        body: rulingRequest,
        response: {
          201: rulingAnswer,
          ...refusals(
            ...access,
            'ruling_does_not_fit',
            'cards_missing',
            'class_not_open',
            'idempotency_key_reused',
            'class_cannot_be_tabulated',
          ),
        },
      },
    },
    async (request, reply) => {
      const { params, body } = request;
      const { classId } = params;
      return once({ parts, request, reply }, async (tx) =>
        created(rulingAnswerOf(await recordRuling(tx, { parts, classId, ruling: body }))),
      );
    },
  );
  app.get(
    '/classes/:classId/rulings',
    {
      ...guard,
      schema: {
        tags,
        summary: 'The rulings of a class',
        params: classParams,
        response: { 200: rulingsAnswer, ...refusals(...access) },
      },
    },
    async ({ params }) => ({
      rulings: (await listRulings(sql, params.classId)).map(rulingAnswerOf),
    }),
  );
  app.get(
    '/classes/:classId/margins',
    {
      ...guard,
      schema: {
        tags,
        summary: 'How close the posted placing was',
        params: classParams,
        querystring: marginsQuery,
        response: { 200: marginsAnswer, ...refusals(...access, 'class_not_posted') },
      },
    },
    async ({ params, query }) => readMargins(parts.db, params.classId, query.upTo),
  );
  app.get(
    '/classes/:classId/agreement',
    {
      ...guard,
      schema: {
        tags,
        summary: 'How far the judges of a posted class agree',
        params: classParams,
        response: { 200: agreementAnswer, ...refusals(...access, 'class_not_posted') },
      },
    },
    async ({ params }) => readAgreement(parts.db, params.classId),
  );
}

function postingRoutes(app: App, parts: AppParts): void {
  app.post(
    '/classes/:classId/postings',
    {
      onRequest: requireRole(parts, 'office'),
      preHandler: mustBeOfficeOf(parts),
      schema: {
        tags,
        summary: 'Post the result: provisional, official or corrected',
        params: classParams,
        headers: z.looseObject({ 'if-match': z.string().optional().describe('ETag of the preview.') }),
        body: postingRequest,
        response: {
          201: postingSummary,
          ...refusals(
            ...access,
            'if_match_required',
            'idempotency_key_reused',
            'class_not_open',
            'stale_version',
            'cards_missing',
            'ties_open',
            'class_not_posted',
            'class_already_official',
            'posting_out_of_date',
            'correction_reason_missing',
            'correction_changes_nothing',
            'class_cannot_be_tabulated',
          ),
        },
      },
    },
    async (request, reply) => {
      const ifMatch = request.headers['if-match'];
      if (ifMatch === undefined) throw problem('if_match_required');
      const { classId } = request.params;
      const { state, reason } = request.body;
      return once({ parts, request, reply }, async (tx) => {
        const posting = await postResult(tx, parts, { classId, ifMatch, state, reason });
        return created(postingSummaryAnswer(posting), `/v1/postings/${posting.id}`);
      });
    },
  );
}

/** What everyone may read, without a pass. */
function publicRoutes(app: App, parts: AppParts): void {
  const { sql } = parts.db;
  const posted = new PostedResults(parts.db);
  app.get(
    '/classes/:classId/result',
    {
      schema: {
        tags,
        summary: 'The posted result, with the reasons',
        params: classParams,
        response: { 200: resultAnswer, 304: z.null(), ...refusals('not_found', 'class_not_posted') },
      },
      serializerCompiler: () => (text) => String(text),
    },
    async (request, reply) => {
      const { text, etag } = await posted.read(request.params.classId);
      return sendText(request, reply, { text, etag });
    },
  );
  app.get(
    '/classes/:classId/result/entries/:backNumber',
    {
      schema: {
        tags,
        summary: "One entry's result: place, reasons, what each judge gave",
        params: entryParams,
        response: { 200: entryAnswer, ...refusals('not_found', 'class_not_posted') },
      },
    },
    async ({ params }) => readEntryResult(parts.db, params.classId, params.backNumber),
  );
  app.get(
    '/classes/:classId/postings',
    {
      schema: {
        tags,
        summary: 'All postings of a class, corrected ones too',
        params: classParams,
        response: { 200: postingsAnswer, ...refusals('not_found') },
      },
    },
    async ({ params }) => ({ postings: (await listPostings(sql, params.classId)).map(postingSummaryAnswer) }),
  );
  app.get(
    '/postings/:postingId',
    {
      schema: {
        tags,
        summary: 'One posting as it was hashed',
        params: postingParams,
        response: { 200: postingAnswer, ...refusals('not_found') },
      },
    },
    async ({ params }) => {
      const posting = await readOnePosting(sql, params.postingId);
      return { ...postingSummaryAnswer(posting), body: posting.body };
    },
  );
  app.get(
    '/shows/:showId/board',
    {
      schema: {
        tags,
        summary: 'The classes of a show and where each stands',
        params: showParams,
        response: { 200: boardAnswer, ...refusals('not_found') },
      },
    },
    async ({ params }) => readBoard(sql, params.showId),
  );
}

function sendText(
  request: FastifyRequest,
  reply: FastifyReply,
  { text, etag }: { text: string; etag: string },
) {
  reply.headers({ etag, 'cache-control': 'no-cache' });
  if (isKnownToReader(request, etag)) return reply.code(304).send();
  return reply.type('application/json; charset=utf-8').send(text);
}

const rulingAnswerOf = ({ decision, ruledAt, ...ruling }: RulingOnRecord) => ({
  ...ruling,
  order: decision.order.map((group) => [...group]),
  ruledAt: ruledAt.toISOString(),
});
