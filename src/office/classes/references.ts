/** What a class refers to must be there, and of the same show. */
import type { SheetManeuver } from '../../engine/sheets/types.ts';
import type { Transaction } from '../../platform/database.ts';
import type { ScoreSheet } from '../../platform/generated/prisma/client.ts';
import { problem } from '../../platform/problems/index.ts';
import { coefficientText } from '../patterns/pattern-schemas.ts';
import type { SheetRef } from '../sheets/sheet-schemas.ts';

const unknown = (field: string, message: string) =>
  problem('unknown_reference', { errors: [{ field, message }] });

/** The version asked for, or the last there is. Throws unknown_reference. */
export async function findSheet(tx: Transaction, { code, version }: SheetRef): Promise<ScoreSheet> {
  const row = await tx.prisma.scoreSheet.findFirst({
    where: { code, ...(version === undefined ? {} : { version }) },
    orderBy: { version: 'desc' },
  });
  if (row === null)
    throw unknown('/sheet', `there is no score sheet ${code}${version ? ` version ${version}` : ''}`);
  return row;
}

interface Reference {
  readonly showId: string;
  readonly id: string | null;
}

/** No pattern, no maneuvers. Throws unknown_reference. */
export async function findManeuvers(tx: Transaction, { showId, id }: Reference): Promise<SheetManeuver[]> {
  if (id === null) return [];
  const pattern = await tx.prisma.pattern.findFirst({
    where: { id, showId },
    include: { maneuvers: { orderBy: { position: 'asc' } } },
  });
  if (pattern === null) throw unknown('/patternId', 'there is no such pattern in this show');
  return pattern.maneuvers.map(({ position, name, coefficient }) => ({
    position,
    name,
    coefficient: coefficientText(coefficient),
  }));
}

/** Throws unknown_reference. */
export async function mustBeRing(tx: Transaction, { showId, id }: Reference): Promise<void> {
  if (id !== null && (await tx.prisma.ring.count({ where: { id, showId } })) === 0) {
    throw unknown('/ringId', 'there is no such ring in this show');
  }
}

/** Throws class_number_taken. */
export async function mustBeFreeNumber(
  tx: Transaction,
  where: { showId: string; number: number },
): Promise<void> {
  const holder = await tx.prisma.showClass.findFirst({ where, select: { name: true } });
  if (holder !== null) {
    const message = `class ${where.number} is "${holder.name}"`;
    throw problem('class_number_taken', { errors: [{ field: '/number', message }] });
  }
}
