/**
 * A photo of a paper card as it is kept: read as a picture and written anew, so that nothing of the file that came
 * in is stored, neither what it says of the place, the device and the time nor what may hang on it. What cannot be
 * read as one still picture is refused (OWASP ASVS 5, chapter 5: file handling).
 */
import { createHash } from 'node:crypto';
import pLimit from 'p-limit';
import sharp, { type Metadata, type SharpOptions } from 'sharp';

export const photoTypes = ['image/jpeg', 'image/png', 'image/webp'] as const;
export type PhotoType = (typeof photoTypes)[number];

/** 8 MiB: a phone's photo of a sheet of paper has 2 to 6. */
export const largestPhotoBytes = 8 * 1_024 * 1_024;
export const mostPixels = 40_000_000;
/** On the long side; a sheet of letter paper is then read at some 200 dots to the inch. */
export const longestSide = 2_400;

export interface Photo {
  readonly bytes: Buffer;
  readonly mediaType: 'image/jpeg';
  /** In pixels, upright. */
  readonly width: number;
  readonly height: number;
  /** SHA-256 over `bytes`, as small hex. */
  readonly hash: string;
}

export type PhotoFault =
  /** Not the picture that its media type says. */
  | 'another-kind'
  | 'too-many-pixels'
  /** More than one picture, one after the other. */
  | 'moves'
  /** It begins like a picture, and is broken or cut off. */
  | 'unreadable';

export type PhotoReading =
  | { readonly ok: true; readonly photo: Photo }
  | { readonly ok: false; readonly fault: PhotoFault };

// What decodes other kinds (SVG with its links, PDF, TIFF ...) cannot be reached at all, whatever the bytes say.
sharp.block({ operation: ['VipsForeignLoad'] });
sharp.unblock({
  operation: ['VipsForeignLoadJpegBuffer', 'VipsForeignLoadPngBuffer', 'VipsForeignLoadWebpBuffer'],
});
// Nothing of one photo stays in memory for the next.
sharp.cache(false);

/** A photo that must be turned takes some 120 MB while it is: never two at once, and never a card waits for one. */
const oneAtATime = pLimit(1);
const patienceSeconds = 20;

/** `sent` upright, at most `longestSide` pixels, as a JPEG without any note of where, when or by what it was taken. */
export function readPhoto(sent: Uint8Array, mediaType: PhotoType): Promise<PhotoReading> {
  if (typeByFirstBytes(sent) !== mediaType) return Promise.resolve({ ok: false, fault: 'another-kind' });
  return oneAtATime(() => read(sent));
}

async function read(sent: Uint8Array): Promise<PhotoReading> {
  const head = await headOf(sent);
  const fault = head === undefined ? 'unreadable' : faultIn(head);
  if (fault !== undefined) return { ok: false, fault };
  const photo = await written(sent);
  return photo === undefined ? { ok: false, fault: 'unreadable' } : { ok: true, photo };
}

/** How each kind begins: ITU-T T.81, B.1.1.3; PNG, 5.2; WebP container specification (RFC 9649, 2.4). */
function typeByFirstBytes(sent: Uint8Array): PhotoType | undefined {
  const begin = Buffer.from(sent.subarray(0, 12)).toString('latin1');
  if (begin.startsWith('\xff\xd8\xff')) return 'image/jpeg';
  if (begin.startsWith('\x89PNG\r\n\x1a\n')) return 'image/png';
  return begin.startsWith('RIFF') && begin.endsWith('WEBP') ? 'image/webp' : undefined;
}

function faultIn({ width, height, pages = 1 }: Metadata): PhotoFault | undefined {
  if (width * height > mostPixels) return 'too-many-pixels';
  return pages > 1 ? 'moves' : undefined;
}

/** The head alone, whatever size it claims: no pixel is read yet. */
const headOf = (sent: Uint8Array) =>
  sharp(sent, { limitInputPixels: false })
    .metadata()
    .catch(() => undefined);

// Phones write pictures that libraries warn about; a cut-off one is more than a warning.
const careful: SharpOptions = { limitInputPixels: mostPixels, failOn: 'error' };

/** `undefined`: the pixels cannot be read. sharp leaves out all metadata unless it is told to keep some. */
async function written(sent: Uint8Array): Promise<Photo | undefined> {
  const picture = sharp(sent, careful)
    .timeout({ seconds: patienceSeconds })
    .autoOrient()
    .resize({ width: longestSide, height: longestSide, fit: 'inside', withoutEnlargement: true })
    .flatten({ background: '#ffffff' })
    .toColourspace('srgb')
    .jpeg({ quality: 82 });
  const made = await picture.toBuffer({ resolveWithObject: true }).catch(() => undefined);
  if (made === undefined) return undefined;
  const { data, info } = made;
  const hash = createHash('sha256').update(data).digest('hex');
  return { bytes: data, mediaType: 'image/jpeg', width: info.width, height: info.height, hash };
}
