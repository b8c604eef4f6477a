/** Results for the office of the show: the preview, rulings, posting, how close it was. */
import { z } from 'zod';
import { actorOf, office, officeOf, officeReading, openTo } from '../access/index.ts';
import { tellIn } from '../language/index.ts';
import { created, once } from '../office/index.ts';
import type { App, AppParts } from '../platform/app-parts.ts';
import { refusals } from '../platform/http/refusals.ts';
import { problem } from '../platform/problems/index.ts';
import { postingSummaryAnswer } from './answers.ts';
import type { RulingOnRecord } from './class-records.ts';
import { mustBeOfficeOf } from './office-only.ts';
import { postResult } from './post-result.ts';
import { readAgreement, readMargins } from './read-closeness.ts';
import { listRulings } from './read-postings.ts';
import { readTabulation } from './read-tabulation.ts';
import { recordRuling } from './record-ruling.ts';
import {
  agreementAnswer,
  classParams,
  marginsAnswer,
  marginsQuery,
  postingRequest,
  postingSummary,
  rulingAnswer,
  rulingRequest,
  rulingsAnswer,
  tabulationAnswer,
} from './schemas.ts';

const tags = ['Results'];
const access = ['token_missing', 'token_invalid', 'not_allowed', 'not_found'] as const;

export function tabulationRoutes(app: App, parts: AppParts): void {
  const { sql } = parts.db;
  const preHandler = mustBeOfficeOf(parts);
  app.get(
    '/classes/:classId/tabulation',
    {
      config: openTo(...officeReading),
      preHandler,
      schema: {
        tags,
        summary: 'Preview of the merged result, with open ties',
        params: classParams,
        response: { 200: tabulationAnswer, ...refusals(...access, 'class_cannot_be_tabulated') },
      },
    },
    async (request, reply) => {
      const speech = tellIn(request, reply);
      const { etag, answer } = await readTabulation(parts.db, request.params.classId, speech);
      reply.header('etag', etag);
      return answer;
    },
  );
  app.post(
    '/classes/:classId/rulings',
    {
      config: openTo(...office),
      preHandler,
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
      const ruling = { ...body, recordedBy: officeOf(actorOf(request)).accountId };
      return once({ parts, request, reply }, async (tx) =>
        created(rulingAnswerOf(await recordRuling(tx, { parts, classId, ruling }))),
      );
    },
  );
  app.get(
    '/classes/:classId/rulings',
    {
      config: openTo(...officeReading),
      preHandler,
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
      config: openTo(...officeReading),
      preHandler,
      schema: {
        tags,
        summary: 'How close the posted placing was',
        params: classParams,
        querystring: marginsQuery,
        response: { 200: marginsAnswer, ...refusals(...access, 'class_not_posted') },
      },
    },
    async (request, reply) => {
      const { classId } = request.params;
      const { upTo } = request.query;
      return readMargins(parts.db, { classId, upTo, speech: tellIn(request, reply) });
    },
  );
  app.get(
    '/classes/:classId/agreement',
    {
      config: openTo(...officeReading),
      preHandler,
      schema: {
        tags,
        summary: 'How far the judges of a posted class agree',
        params: classParams,
        response: { 200: agreementAnswer, ...refusals(...access, 'class_not_posted') },
      },
    },
    async (request, reply) => readAgreement(parts.db, request.params.classId, tellIn(request, reply)),
  );
}

export function postingRoutes(app: App, parts: AppParts): void {
  app.post(
    '/classes/:classId/postings',
    {
      config: openTo(...office),
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

const rulingAnswerOf = ({ decision, ruledAt, ...ruling }: RulingOnRecord) => ({
  ...ruling,
  order: decision.order.map((group) => [...group]),
  ruledAt: ruledAt.toISOString(),
});
