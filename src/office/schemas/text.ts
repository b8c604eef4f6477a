/** Names and wordings, and the one letter that the office writes. */
import { z } from 'zod';

export { nameText, wording } from '../../platform/http/text.ts';

/** Letter of a cone: A to Z. */
export const coneLetter = z.string().regex(/^[A-Z]$/, 'it must be one capital letter, A to Z');
