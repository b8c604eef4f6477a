/** The photo of a paper card. These routes stand in a scope of their own, the only one that reads pictures. */
import { z } from 'zod';
import { actorOf, office, openTo } from '../../access/index.ts';
import type { FeatureRoutes } from '../../platform/app-parts.ts';
import { inSqlTransaction } from '../../platform/database.ts';
import { refusals } from '../../platform/http/refusals.ts';
import { problem } from '../../platform/problems/index.ts';
import { accessRefusals, tags } from '../route-parts.ts';
import { paperCardForReading } from './paper-record.ts';
import { paperCardParams, photoSchema } from './paper-schemas.ts';
import { largestPhotoBytes, type PhotoType, photoTypes } from './photo.ts';
import { mustTakePhotos, photoBytesOf, photoHeadOf, photoOutOf, storePhoto } from './photo-record.ts';

/** As OpenAPI writes raw bytes (3.1, 4.8.14.2). */
const rawPicture = z
  .custom<Buffer>(Buffer.isBuffer, 'the bytes of a picture')
  .meta({ type: 'string', contentMediaType: 'image/*' });

/**
 * The bytes are made by this service, and still no browser may take them for anything but a picture
 * (OWASP ASVS 5, chapter 3: browser security mechanisms).
 */
const pictureOnly = {
  'content-type': 'image/jpeg',
  'content-disposition': 'inline; filename="paper-card.jpg"',
  'content-security-policy':
    "default-src 'none'; object-src 'none'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'; sandbox",
  'x-content-type-options': 'nosniff',
  'cache-control': 'no-store',
} as const;

export const photoRoutes: FeatureRoutes = async (app, { parts }) => {
  app.removeAllContentTypeParsers();
  app.addContentTypeParser(
    [...photoTypes],
    { parseAs: 'buffer', bodyLimit: largestPhotoBytes },
    async (_request: unknown, body: Buffer) => body,
  );
  app.addContentTypeParser('*', async () => {
    throw problem('photo_of_another_kind');
  });

  app.put('/paper-cards/:paperCardId/photo', {
    config: openTo(...office),
    bodyLimit: largestPhotoBytes,
    schema: {
      tags,
      summary: 'Store a photo of the paper',
      description:
        'The raw bytes of a JPEG, PNG or WebP, at most 8 MiB and 40 million pixels. It is written anew as a JPEG: upright, at most 2400 pixels on the long side, without place, device, time or anything else beside the picture. "hash" is of what is kept.',
      consumes: [...photoTypes],
      params: paperCardParams,
      body: rawPicture,
      response: {
        200: photoSchema.describe('It is stored.'),
        ...refusals(
          ...accessRefusals,
          'paper_card_closed',
          'body_too_large',
          'photo_of_another_kind',
          'photo_unreadable',
          'photo_too_many_pixels',
          'photo_moves',
        ),
      },
    },
    handler: async (request) => {
      const { paperCardId } = request.params;
      const actor = actorOf(request);
      await inSqlTransaction(parts.db, async (tx) =>
        mustTakePhotos(await paperCardForReading(tx, paperCardId, actor)),
      );
      const photo = await photoOutOf(request.body, typeOf(request.headers['content-type']));
      return inSqlTransaction(parts.db, async (tx) => {
        await storePhoto(parts, tx, { paperCardId, actor, photo });
        const head = await photoHeadOf(tx, paperCardId);
        if (head === null) throw new Error('the photo was not kept');
        return head;
      });
    },
  });

  app.get('/paper-cards/:paperCardId/photo', {
    config: openTo(...office, 'judge'),
    schema: {
      tags,
      summary: 'The photo of the paper: for the office, and for the judge whose card it is',
      params: paperCardParams,
      response: {
        200: { description: 'The picture.', content: { 'image/jpeg': { schema: rawPicture } } },
        ...refusals(...accessRefusals),
      },
    },
    handler: async (request, reply) => {
      const { paperCardId } = request.params;
      const { bytes } = await inSqlTransaction(parts.db, (tx) =>
        photoBytesOf(tx, paperCardId, actorOf(request)),
      );
      return reply.headers(pictureOnly).send(bytes);
    },
  });
};

function typeOf(header: string | undefined): PhotoType {
  const said = header?.split(';')[0]?.trim().toLowerCase();
  const type = photoTypes.find((known) => known === said);
  if (type === undefined) throw problem('photo_of_another_kind');
  return type;
}
