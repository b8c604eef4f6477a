/** Results for everyone, without a pass: posted results, all postings, the board, combinations. */
import type { FastifyReply, FastifyRequest } from 'fastify';
import { z } from 'zod';
import { openTo } from '../access/index.ts';
import { tellIn } from '../language/index.ts';
import type { App, AppParts } from '../platform/app-parts.ts';
import { refusals } from '../platform/http/refusals.ts';
import { isKnownToReader } from '../platform/http/versions.ts';
import { postingSummaryAnswer } from './answers.ts';
import { readBoard } from './read-board.ts';
import { readCombination } from './read-combination.ts';
import { isOfPractice, listPostings, readOnePosting } from './read-postings.ts';
import { PostedResults, readEntryResult, type SentResult } from './read-result.ts';
import {
  boardAnswer,
  classParams,
  combinationAnswer,
  combinationQuery,
  entryAnswer,
  entryParams,
  postingAnswer,
  postingParams,
  postingsAnswer,
  resultAnswer,
  showParams,
} from './schemas.ts';

const tags = ['Results'];

export function publicRoutes(app: App, parts: AppParts): void {
  const { sql } = parts.db;
  const posted = new PostedResults(parts.db);
  app.get(
    '/classes/:classId/result',
    {
      config: openTo('everyone'),
      schema: {
        tags,
        summary: 'The posted result, with the reasons',
        params: classParams,
        response: {
          200: resultAnswer,
          304: z.null().describe('The reader has it already (If-None-Match).'),
          ...refusals('not_found', 'class_not_posted'),
        },
      },
    },
    async (request, reply) => {
      const speech = tellIn(request, reply);
      return sendResult(request, reply, await posted.read(request.params.classId, speech));
    },
  );
  app.get(
    '/classes/:classId/result/entries/:backNumber',
    {
      config: openTo('everyone'),
      schema: {
        tags,
        summary: "One entry's result: place, reasons, what each judge gave",
        params: entryParams,
        response: { 200: entryAnswer, ...refusals('not_found', 'class_not_posted') },
      },
    },
    async (request, reply) => {
      const { classId, backNumber } = request.params;
      return readEntryResult(parts.db, { classId, entry: { backNumber }, speech: tellIn(request, reply) });
    },
  );
  app.get(
    '/classes/:classId/postings',
    {
      config: openTo('everyone'),
      schema: {
        tags,
        summary: 'All postings of a class, corrected ones too',
        params: classParams,
        response: { 200: postingsAnswer, ...refusals('not_found') },
      },
    },
    async ({ params: { classId } }) => ({
      practice: await isOfPractice(sql, classId),
      postings: (await listPostings(sql, classId)).map(postingSummaryAnswer),
    }),
  );
  app.get(
    '/postings/:postingId',
    {
      config: openTo('everyone'),
      schema: {
        tags,
        summary: 'One posting as it was hashed',
        params: postingParams,
        response: { 200: postingAnswer, ...refusals('not_found') },
      },
    },
    async ({ params }) => {
      const posting = await readOnePosting(sql, params.postingId);
      const practice = await isOfPractice(sql, posting.classId);
      return { practice, ...postingSummaryAnswer(posting), body: posting.body };
    },
  );
  app.get(
    '/shows/:showId/board',
    {
      config: openTo('everyone'),
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

export function combinationRoutes(app: App, parts: AppParts): void {
  app.get(
    '/shows/:showId/combined-placing',
    {
      config: openTo('everyone'),
      schema: {
        tags,
        summary: 'Posted classes combined with weights',
        params: showParams,
        querystring: combinationQuery,
        response: {
          200: combinationAnswer,
          ...refusals('not_found', 'class_not_posted', 'class_cannot_be_tabulated'),
        },
      },
    },
    async (request, reply) => {
      const { phase: phases, withoutPlace } = request.query;
      const speech = tellIn(request, reply);
      return readCombination(parts.db, { ...request.params, phases, withoutPlace, speech });
    },
  );
}

function sendResult(request: FastifyRequest, reply: FastifyReply, { bytes, etag }: SentResult) {
  reply.headers({ etag, 'cache-control': 'no-cache' });
  if (isKnownToReader(request, etag)) return reply.code(304).send();
  return reply.type('application/json; charset=utf-8').send(bytes);
}
