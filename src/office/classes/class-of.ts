import type { PlacingRule } from '../../engine/placing/types.ts';
import type { ScoreSheet, Show, ShowClass } from '../../platform/generated/prisma/client.ts';
import { dayText, localText } from '../show-time.ts';
import { type ClassBody, classBody } from './class-schemas.ts';

export const withSheetAndShow = { sheet: true, show: true } as const;

export type ClassRow = ShowClass & { readonly sheet: ScoreSheet; readonly show: Show };

/** What was checked when it was stored is not checked again each time it is read. */
export const ruleOf = ({ placingRule }: Pick<ShowClass, 'placingRule'>): PlacingRule =>
  placingRule as unknown as PlacingRule;

const { status, publishCards } = classBody.shape;

export const classOf = (row: ClassRow): ClassBody => ({
  id: row.id,
  showId: row.showId,
  number: row.number,
  name: row.name,
  discipline: row.discipline,
  division: row.division,
  youth: row.youth,
  sheet: { code: row.sheet.code, version: row.sheet.version },
  patternId: row.patternId,
  placingRule: ruleOf(row) as ClassBody['placingRule'],
  placesGiven: row.placesGiven,
  ringId: row.ringId,
  day: row.day === null ? null : dayText(row.day),
  scheduledAt: row.scheduledAt?.toISOString() ?? null,
  scheduledAtShow: row.scheduledAt === null ? null : localText(row.scheduledAt, row.show.timeZone),
  publishCards: publishCards.parse(row.publishCards),
  drawSeed: row.drawSeed,
  status: status.parse(row.status),
  openedAt: row.openedAt?.toISOString() ?? null,
  calledAt: row.calledAt?.toISOString() ?? null,
  version: row.version,
});
