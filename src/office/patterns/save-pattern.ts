import { checkDrawing } from '../../engine/patterns/check-drawing.ts';
import { drawingFaultSentence } from '../../engine/sentences/drawing-fault-sentences.ts';
import { told } from '../../language/index.ts';
import { appendLine } from '../../ledger/index.ts';
import type { AppParts } from '../../platform/app-parts.ts';
import type { Transaction } from '../../platform/database.ts';
import { Prisma } from '../../platform/generated/prisma/client.ts';
import { mustBeCurrent } from '../../platform/http/versions.ts';
import { problem } from '../../platform/problems/index.ts';
import { lockShow } from '../store/locks.ts';
import { type NewPattern, type PatternBody, patternOf, withManeuvers } from './pattern-schemas.ts';

/** Throws not_found, already_exists, drawing_invalid for a drawing that does not show it. */
export async function addPattern(
  parts: AppParts,
  tx: Transaction,
  asked: NewPattern & { showId: string },
): Promise<PatternBody> {
  const at = parts.clock.now();
  const { showId, name } = asked;
  mustShowThePattern(asked);
  await lockShow(tx, showId);
  await mustBeFreeName(tx, { showId, name });
  const row = await tx.prisma.pattern.create({
    data: {
      ...{ id: parts.ids.next(), showId, name, createdAt: at, drawing: storedDrawing(asked) },
      maneuvers: { create: inOrder(asked) },
    },
    include: withManeuvers,
  });
  await appendLine(parts, tx, { showId, type: 'pattern.created', body: { patternId: row.id }, at });
  return patternOf(row);
}

interface Change {
  readonly showId: string;
  readonly patternId: string;
  readonly versionRead: number;
  readonly pattern: NewPattern;
}

/**
 * Puts the whole pattern anew. Throws not_found, stale_version, pattern_in_use, already_exists, invalid_request for a
 * drawing that does not show it.
 */
export async function changePattern(parts: AppParts, tx: Transaction, asked: Change): Promise<PatternBody> {
  const at = parts.clock.now();
  const { showId, patternId, versionRead, pattern } = asked;
  mustShowThePattern(pattern);
  await lockShow(tx, showId);
  const before = await tx.prisma.pattern.findFirst({ where: { id: patternId, showId } });
  if (before === null) throw problem('not_found');
  mustBeCurrent(before.version, versionRead);
  await mustBeUnused(tx, patternId);
  if (before.name !== pattern.name) await mustBeFreeName(tx, { showId, name: pattern.name });
  const row = await tx.prisma.pattern.update({
    where: { id: patternId },
    data: {
      ...{ name: pattern.name, drawing: storedDrawing(pattern), version: { increment: 1 } },
      maneuvers: { deleteMany: {}, create: inOrder(pattern) },
    },
    include: withManeuvers,
  });
  await appendLine(parts, tx, {
    showId,
    type: 'pattern.changed',
    body: { patternId, version: row.version },
    at,
  });
  return patternOf(row);
}

const inOrder = ({ maneuvers }: NewPattern) =>
  maneuvers.map((maneuver, index) => ({ ...maneuver, position: index + 1 }));

/** A drawing is plain JSON; only its lists are read-only in our types. */
const storedDrawing = ({ drawing }: NewPattern) =>
  drawing === null ? Prisma.DbNull : (drawing as unknown as Prisma.InputJsonObject);

function mustShowThePattern({ drawing, maneuvers }: NewPattern): void {
  if (drawing === null) return;
  const errors = checkDrawing(drawing, maneuvers).map((fault) => ({
    field: `/drawing${fault.at}`,
    message: told((speech) => drawingFaultSentence(fault, speech)),
  }));
  if (errors.length > 0) throw problem('drawing_invalid', { errors });
}

async function mustBeFreeName(tx: Transaction, where: { showId: string; name: string }): Promise<void> {
  if ((await tx.prisma.pattern.count({ where })) > 0) {
    const message = 'the show has a pattern of that name';
    throw problem('already_exists', { errors: [{ field: '/name', message }] });
  }
}

/**
 * Marks stand by the position of a maneuver: once they were written the pattern may not move under them.
 * The classes are taken first, so that no card is opened in between.
 */
async function mustBeUnused(tx: Transaction, patternId: string): Promise<void> {
  await tx.sql.rows(lockClassesOfPattern, [patternId]);
  const opened = await tx.prisma.card.findFirst({
    where: { showClass: { patternId } },
    select: { showClass: { select: { number: true } } },
  });
  if (opened !== null)
    throw problem('pattern_in_use', { detail: `A card of class ${opened.showClass.number} was written.` });
}

const lockClassesOfPattern = {
  name: 'office.lock-classes-of-pattern',
  text: 'SELECT id FROM show_class WHERE pattern_id = $1 ORDER BY id FOR NO KEY UPDATE',
};
