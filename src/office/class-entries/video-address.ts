import { z } from 'zod';

/** Nobody's password stands in it, and it is kept letter by letter as it was given. */
export const videoAddress = z
  .string()
  .max(500, 'it must have at most 500 characters')
  .refine(isOpenHttps, 'it must be an address that begins with https://, without a name or password in it')
  .meta({ format: 'uri', maxLength: 500, examples: ['https://video.example/goes/214'] });

function isOpenHttps(text: string): boolean {
  if (!/^https:\/\/[^\s\p{Cc}]+$/u.test(text) || !URL.canParse(text)) return false;
  const { protocol, username, password, hostname } = new URL(text);
  return protocol === 'https:' && username === '' && password === '' && hostname !== '';
}
