/** The form of an archive as JSON Schema (draft 2020-12), for those who read one with other tools. */
import { z } from 'zod';
import { archive } from './archive.ts';

export const archiveJsonSchema = (): string =>
  `${JSON.stringify({ title: 'Archive of a show', ...z.toJSONSchema(archive) }, null, 2)}\n`;
