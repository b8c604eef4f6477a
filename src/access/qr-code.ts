import { toString as drawQrCode } from 'qrcode';

/** A text as a QR code, a link or what an authenticator app reads: SVG text, level M (15 % may be hidden), with the margin of four modules. */
export const qrSvg = (text: string): Promise<string> =>
  drawQrCode(text, { type: 'svg', errorCorrectionLevel: 'M', margin: 4 });
