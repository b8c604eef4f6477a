/** Photos of paper cards, made here by sharp or by hand: what comes in, and what is left of it. */
import { createHash } from 'node:crypto';
import { crc32, deflateSync } from 'node:zlib';
import exifr from 'exifr';
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { largestPhotoBytes, type Photo, type PhotoType, readPhoto } from '../../src/cards/paper/photo.ts';
import { manyPictures, picture, pngChunk, withPlace } from '../support/pictures.ts';

async function kept(bytes: Uint8Array, type: PhotoType = 'image/jpeg'): Promise<Photo> {
  const read = await readPhoto(bytes, type);
  if (!read.ok) throw new Error(read.fault);
  return read.photo;
}

/** The markers of a JPEG up to its pixels, e.g. `e0` for APP0 (ITU-T T.81, table B.1). */
function markersOf(jpeg: Buffer): string[] {
  const markers: string[] = [];
  for (let at = 2; jpeg[at] === 0xff && jpeg[at + 1] !== 0xda; at += 2 + jpeg.readUInt16BE(at + 2)) {
    markers.push((jpeg[at + 1] ?? 0).toString(16));
  }
  return markers;
}

describe('a photo of a paper card', () => {
  test.each(['jpeg', 'png', 'webp'] as const)('may be a %s and is kept as a JPEG', async (format) => {
    const { bytes, ...photo } = await kept(await picture().toFormat(format).toBuffer(), `image/${format}`);
    expect(photo).toEqual({
      ...{ mediaType: 'image/jpeg', width: 300, height: 200 },
      hash: createHash('sha256').update(bytes).digest('hex'),
    });
    expect(await sharp(bytes).metadata()).toMatchObject({ format: 'jpeg', width: 300, height: 200 });
  });

  test('is kept at most 2400 pixels long, in its own shape, and is never made larger', async () => {
    const long = await kept(await picture({ width: 4_800, height: 1_600 }).jpeg().toBuffer());
    expect([long.width, long.height]).toEqual([2_400, 800]);
    const tall = await kept(await picture({ width: 1_000, height: 3_000 }).jpeg().toBuffer());
    expect([tall.width, tall.height]).toEqual([800, 2_400]);
    const thin = await kept(await picture({ width: 20_000, height: 1 }).png().toBuffer(), 'image/png');
    expect([thin.width, thin.height]).toEqual([2_400, 1]);
  });

  test('stands upright, as the phone was held when it was taken', async () => {
    // Red above, blue below; orientation 6: the camera lay on its side (EXIF 2.32, tag 0x0112, from memory).
    const lying = await sharp(
      await picture({ width: 100, height: 100, background: '#ff0000' }).png().toBuffer(),
    )
      .extend({ bottom: 100, background: '#0000ff' })
      .jpeg()
      .withMetadata({ orientation: 6 })
      .toBuffer();
    const { bytes, width, height } = await kept(lying);
    expect([width, height]).toEqual([200, 100]);
    const { data } = await sharp(bytes).raw().toBuffer({ resolveWithObject: true });
    const [left, right] = [data.subarray(50 * 600 + 150), data.subarray(50 * 600 + 450)];
    expect(left[2]).toBeGreaterThan(200);
    expect(right[0]).toBeGreaterThan(200);
    expect(await exifr.orientation(bytes)).toBeUndefined();
  });

  test('tells nothing of the place, the device, the time or its author any more', async () => {
    const taken = await withPlace(picture()).toBuffer();
    expect(await exifr.gps(taken)).toEqual({ latitude: 51.5, longitude: expect.closeTo(-0.1167, 3) });
    expect(await exifr.parse(taken)).toMatchObject({ Make: 'Larch Phones', Copyright: 'Maud Tansy' });
    expect(markersOf(taken)).toContain('e1');
    const { bytes } = await kept(taken);
    expect(await exifr.gps(bytes)).toBeUndefined();
    const everything = { tiff: true, xmp: true, icc: true, iptc: true, jfif: false, ihdr: false, exif: true };
    expect(await exifr.parse(bytes, { ...everything, gps: true })).toBeUndefined();
    // Tables (db, c4) and the frame (c0): the picture and nothing beside it.
    expect(new Set(markersOf(bytes))).toEqual(new Set(['db', 'c0', 'c4']));
    for (const word of ['Larch Phones', 'Maud Tansy', '2026:05:02', 'Exif', 'http://ns.adobe.com/xap'])
      expect(bytes.includes(word)).toBe(false);
  });

  test.each(['png', 'webp'] as const)('tells nothing of them out of a %s either', async (format) => {
    const taken = await withPlace(picture(), format).toBuffer();
    expect(taken.includes('Larch Phones')).toBe(true);
    const { bytes } = await kept(taken, `image/${format}`);
    expect(bytes.includes('Larch Phones')).toBe(false);
    expect(await exifr.gps(bytes)).toBeUndefined();
  });

  test('loses a text that was written into a PNG', async () => {
    const png = await picture().png().toBuffer();
    const note = pngChunk('tEXt', Buffer.from('Comment\0Maud Tansy, 12 Larch Lane'));
    const { bytes } = await kept(Buffer.concat([png.subarray(0, 33), note, png.subarray(33)]), 'image/png');
    expect(bytes.includes('Tansy')).toBe(false);
  });

  test.each(['jpeg', 'png', 'webp'] as const)(
    'loses a page that hangs on the end of a %s',
    async (format) => {
      const tail = Buffer.from('<html><script>alert(1)</script></html>');
      const both = Buffer.concat([await picture().toFormat(format).toBuffer(), tail]);
      const { bytes, width } = await kept(both, `image/${format}`);
      expect(width).toBe(300);
      expect(bytes.includes('script')).toBe(false);
      expect(bytes.subarray(-2)).toEqual(Buffer.from([0xff, 0xd9]));
    },
  );

  test('loses a page that stands in the comment of a JPEG', async () => {
    const jpeg = await picture().jpeg().toBuffer();
    const page = Buffer.from('<svg onload=alert(1)>');
    const comment = Buffer.concat([Buffer.from([0xff, 0xfe, 0, page.length + 2]), page]);
    const { bytes } = await kept(Buffer.concat([jpeg.subarray(0, 2), comment, jpeg.subarray(2)]));
    expect(bytes.includes('onload')).toBe(false);
  });

  test('on a ground that lets light through is kept on white', async () => {
    const clear = await picture({ background: { r: 0, g: 0, b: 0, alpha: 0 } })
      .png()
      .toBuffer();
    const { bytes } = await kept(clear, 'image/png');
    expect((await sharp(bytes).raw().toBuffer())[0]).toBeGreaterThan(250);
  });

  test('of a scanner is kept, in grey, in 16 bits, or in the inks of a printer', async () => {
    const grey = await picture().toColourspace('b-w').png().toBuffer();
    const deep = await picture().toColourspace('rgb16').png().toBuffer();
    const inks = await picture().toColourspace('cmyk').jpeg().toBuffer();
    for (const [bytes, type] of [
      [grey, 'image/png'],
      [deep, 'image/png'],
      [inks, 'image/jpeg'],
    ] as const) {
      const photo = await kept(bytes, type);
      expect(await sharp(photo.bytes).metadata()).toMatchObject({ width: 300, depth: 'uchar' });
    }
  });

  test('comes out the same from the same bytes', async () => {
    const bytes = await picture().jpeg().toBuffer();
    const [one, other] = await Promise.all([kept(bytes), kept(bytes)]);
    expect(one.hash).toBe(other.hash);
  });
});

describe('what is no photo is refused', () => {
  const fault = async (bytes: Uint8Array, type: PhotoType = 'image/jpeg') => {
    const read = await readPhoto(bytes, type);
    return read.ok ? 'kept' : read.fault;
  };

  test.each([
    ['a text', Buffer.from('maneuver 3: +1/2')],
    ['a page', Buffer.from('<!doctype html><title>x</title>')],
    [
      'a drawing of lines (SVG)',
      Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>'),
    ],
    ['a PDF', Buffer.from('%PDF-1.7\n%\xe2\xe3\xcf\xd3\n')],
    ['an archive', Buffer.from('PK\x03\x04')],
    ['nothing', Buffer.alloc(0)],
    ['a file of zeros', Buffer.alloc(1_000)],
  ])('%s', async (_what, bytes) => {
    for (const type of ['image/jpeg', 'image/png', 'image/webp'] as const)
      expect(await fault(bytes, type)).toBe('another-kind');
  });

  test.each(['gif', 'tiff', 'avif'] as const)('a %s, under whatever name', async (format) => {
    const bytes = await picture().toFormat(format).toBuffer();
    for (const type of ['image/jpeg', 'image/png', 'image/webp'] as const)
      expect(await fault(bytes, type)).toBe('another-kind');
  });

  test('a PNG that is called a JPEG, and the other way round', async () => {
    expect(await fault(await picture().png().toBuffer(), 'image/jpeg')).toBe('another-kind');
    expect(await fault(await picture().jpeg().toBuffer(), 'image/png')).toBe('another-kind');
    expect(await fault(await picture().jpeg().toBuffer(), 'image/webp')).toBe('another-kind');
  });

  test.each(['gif', 'tiff', 'svg'])(
    'and a %s could not be decoded even if its first bytes were not looked at',
    async (kind) => {
      const svg = Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>');
      const bytes =
        kind === 'svg'
          ? svg
          : await picture()
              .toFormat(kind === 'gif' ? 'gif' : 'tiff')
              .toBuffer();
      await expect(sharp(bytes).metadata()).rejects.toThrow('unsupported image format');
    },
  );

  test('more than 40 megapixels, however few bytes they take', async () => {
    const bytes = await picture({ width: 10_000, height: 4_001 }).png({ compressionLevel: 1 }).toBuffer();
    expect(bytes.length).toBeLessThan(largestPhotoBytes);
    expect(await fault(bytes, 'image/png')).toBe('too-many-pixels');
  });

  test('a picture that claims to be of 60,000 times 60,000 pixels, before one of them is read', async () => {
    const began = performance.now();
    expect(await fault(claiming(60_000, 60_000), 'image/png')).toBe('too-many-pixels');
    expect(performance.now() - began).toBeLessThan(2_000);
  });

  test('one that claims more pixels than it has', async () => {
    expect(await fault(claiming(6_000, 6_000), 'image/png')).toBe('unreadable');
  });

  test('one that unpacks to more than it claims is read as far as it claims', async () => {
    const { width, height } = await kept(claiming(10, 10, Buffer.alloc(30_000_000)), 'image/png');
    expect([width, height]).toEqual([10, 10]);
  });

  test('a moving picture', async () => {
    expect(await fault(await manyPictures(), 'image/webp')).toBe('moves');
  });

  test('but of a moving PNG the still picture that every reader shows is kept', async () => {
    // APNG: acTL before the pixels (PNG specification, third edition, 11.3.6).
    const png = await picture().png().toBuffer();
    const twoFrames = pngChunk('acTL', Buffer.from([0, 0, 0, 2, 0, 0, 0, 0]));
    const moving = Buffer.concat([png.subarray(0, 33), twoFrames, png.subarray(33)]);
    expect(moving.includes('acTL')).toBe(true);
    const photo = await kept(moving, 'image/png');
    expect(photo.bytes.includes('acTL')).toBe(false);
  });

  test.each(['jpeg', 'png', 'webp'] as const)('a %s that is cut off on its way', async (format) => {
    const bytes = await picture({ width: 900, height: 900 }).toFormat(format).toBuffer();
    expect(await fault(bytes.subarray(0, bytes.length * 0.7), `image/${format}`)).toBe('unreadable');
    expect(await fault(bytes.subarray(0, 20), `image/${format}`)).toBe('unreadable');
  });

  test('one with a page in the place of its pixels', async () => {
    const head = (await picture().jpeg().toBuffer()).subarray(0, 3);
    const page = Buffer.concat([head, Buffer.from('<script>alert(document.cookie)</script>'.repeat(50))]);
    expect(await fault(page)).toBe('unreadable');
  });
});

/** A PNG whose head claims a size (8 bits of grey), with what it unpacks to. */
function claiming(width: number, height: number, pixels = Buffer.alloc(100)): Buffer {
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head[8] = 8;
  const signature = Buffer.from('\x89PNG\r\n\x1a\n', 'latin1');
  const body = pngChunk('IDAT', deflateSync(pixels));
  return Buffer.concat([signature, pngChunk('IHDR', head), body, pngChunk('IEND', Buffer.alloc(0))]);
}

test('the chunks that are made here are chunks: the check value of an empty IEND is AE426082', () => {
  // PNG specification, third edition, annex D; the value stands in every PNG (from memory).
  expect(crc32(Buffer.from('IEND')).toString(16)).toBe('ae426082');
  expect(pngChunk('IEND', Buffer.alloc(0)).toString('hex')).toBe('0000000049454e44ae426082');
});
