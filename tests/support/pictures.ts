/** Pictures for tests, out of real encoders. */
import { crc32 } from 'node:zlib';
import sharp, { type Sharp } from 'sharp';

interface Wanted {
  readonly width?: number;
  readonly height?: number;
  readonly background?: string | { r: number; g: number; b: number; alpha: number };
}

/** One plain surface; the kind of file is the caller's to choose. */
export function picture({ width = 300, height = 200, background = '#e8e0d0' }: Wanted = {}): Sharp {
  const channels = typeof background === 'string' ? 3 : 4;
  return sharp({ create: { width, height, channels, background } });
}

/** With what a phone writes into it: where, when and by what it was taken. The people are invented. */
export function withPlace(of: Sharp, format: 'jpeg' | 'png' | 'webp' = 'jpeg'): Sharp {
  return of.toFormat(format).withExif({
    IFD0: { Make: 'Larch Phones', Copyright: 'Maud Tansy', DateTime: '2026:05:02 15:04:05' },
    IFD3: {
      ...{ GPSLatitudeRef: 'N', GPSLatitude: '51/1 30/1 0/1' },
      ...{ GPSLongitudeRef: 'W', GPSLongitude: '0/1 7/1 0/1' },
    },
  });
}

/** A moving picture of two frames, as a WebP. */
export function manyPictures(): Promise<Buffer> {
  const pixels = Buffer.alloc(10 * 20 * 3, 100).fill(200, 10 * 10 * 3);
  return sharp(pixels, { raw: { width: 10, height: 20, channels: 3, pageHeight: 10 } })
    .webp({ loop: 0, delay: [100, 100] })
    .toBuffer();
}

/** Length, type, content, check value (PNG specification, third edition, 5.3). */
export function pngChunk(type: string, content: Buffer): Buffer {
  const named = Buffer.concat([Buffer.from(type, 'latin1'), content]);
  const [length, check] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(content.length);
  check.writeUInt32BE(crc32(named));
  return Buffer.concat([length, named, check]);
}
