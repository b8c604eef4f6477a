import { toString as drawQrCode } from 'qrcode';

/** The link of an invitation as a QR code: SVG text, level M (15 % may be hidden), with the margin of four modules. */
export const qrSvg = (link: string): Promise<string> =>
  drawQrCode(link, { type: 'svg', errorCorrectionLevel: 'M', margin: 4 });
