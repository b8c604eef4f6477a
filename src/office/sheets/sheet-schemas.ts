import { z } from 'zod';
import type { ScoreSheet } from '../../engine/sheets/types.ts';
import type { ScoreSheet as ScoreSheetRow } from '../../platform/generated/prisma/client.ts';
import { id } from '../schemas/common.ts';
import { code, scoreSheet } from '../schemas/score-sheet.ts';

export const sheetRef = z.strictObject({
  code,
  version: z.int().min(1).max(1_000_000).optional().describe('Left out: the last version there is.'),
});
export type SheetRef = z.infer<typeof sheetRef>;

export const scoreSheetBody = z.strictObject({
  id,
  code: z.string(),
  version: z.int(),
  hash: z.string().describe('SHA-256 over the canonical form (RFC 8785) of the definition.'),
  origin: z.enum(['bundled', 'added']),
  definition: scoreSheet,
});
export type ScoreSheetBody = z.infer<typeof scoreSheetBody>;

/** What was checked when it was stored is not checked again each time it is read. */
export const definitionOf = (row: Pick<ScoreSheetRow, 'definition'>): ScoreSheet =>
  row.definition as unknown as ScoreSheet;

export const scoreSheetOf = (row: ScoreSheetRow): ScoreSheetBody => ({
  id: row.id,
  code: row.code,
  version: row.version,
  hash: row.hash,
  origin: row.origin === 'bundled' ? 'bundled' : 'added',
  definition: definitionOf(row) as ScoreSheetBody['definition'],
});
