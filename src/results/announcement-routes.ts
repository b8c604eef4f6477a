import { officeReading, openTo } from '../access/index.ts';
import type { App, AppParts } from '../platform/app-parts.ts';
import { refusals } from '../platform/http/refusals.ts';
import { mustBeOfficeOf } from './office-only.ts';
import { announcementAnswer, readAnnouncement } from './read-announcement.ts';
import { classParams } from './schemas.ts';

/** For whoever stands at the microphone: the gate of the show, or its office. */
export function announcementRoutes(app: App, parts: AppParts): void {
  app.get(
    '/classes/:classId/announcement',
    {
      config: openTo(...officeReading, 'gate'),
      preHandler: mustBeOfficeOf(parts),
      schema: {
        tags: ['Results'],
        summary: 'The posted placings from the last to the first, with how names are spoken',
        params: classParams,
        response: {
          200: announcementAnswer,
          ...refusals('token_missing', 'token_invalid', 'not_allowed', 'not_found', 'class_not_posted'),
        },
      },
    },
    async ({ params }, reply) => {
      reply.header('cache-control', 'no-store');
      return readAnnouncement(parts.db, params.classId);
    },
  );
}
