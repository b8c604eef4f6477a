/** A class with all that judging and placing it needs, for the features that come after the office. */
import type { PlacingRule } from '../../engine/placing/types.ts';
import type { ScoreSheet, SheetManeuver } from '../../engine/sheets/types.ts';
import type { Transaction } from '../../platform/database.ts';
import type { Prisma } from '../../platform/generated/prisma/client.ts';
import { type ClassEntryStatus, isGoing } from '../class-entries/status.ts';
import { ruleOf } from '../classes/class-of.ts';
import type { PublishCards } from '../classes/class-schemas.ts';
import { seatRole } from '../panel/seats.ts';
import { coefficientText } from '../patterns/pattern-schemas.ts';
import { definitionOf } from '../sheets/sheet-schemas.ts';
import { isPractice } from '../shows/show-schemas.ts';

export interface LoadedClass {
  readonly id: string;
  readonly showId: string;
  /** Of a practice show: nothing of it counts. */
  readonly practice: boolean;
  readonly number: number;
  readonly name: string;
  readonly discipline: string;
  readonly division: string | null;
  readonly youth: boolean;
  readonly status: 'open' | 'cancelled' | 'combined';
  readonly calledAt: Date | null;
  readonly publishCards: PublishCards;
  readonly drawSeed: string;
  /** How many places are given; `null`: all. */
  readonly placesGiven: number | null;
  readonly version: number;
  readonly sheet: { readonly id: string; readonly hash: string; readonly definition: ScoreSheet };
  /** In the order in which they are ridden; none without a pattern. */
  readonly maneuvers: readonly SheetManeuver[];
  /** As it was set: an empty list of tie judges stands for the panel's, an empty seed for the class's. */
  readonly rule: PlacingRule;
  /** All seats in their order, those withdrawn too. */
  readonly seats: readonly LoadedSeat[];
  /** In the order of go; who is not drawn yet comes last, by back number. Those moved to another class are left out. */
  readonly entries: readonly LoadedEntry[];
}

export interface LoadedSeat {
  readonly id: string;
  readonly personId: string;
  readonly personName: string;
  readonly seatOrder: number;
  readonly role: 'judge' | 'referee';
  readonly callOrder: number | null;
  readonly tieOrder: number | null;
  readonly withdrawn: boolean;
}

export interface LoadedEntry {
  /** Id of the class entry: what the engine knows an entry by. */
  readonly id: string;
  readonly entryId: string;
  readonly backNumber: number;
  readonly goPosition: number | null;
  readonly status: ClassEntryStatus;
  /** Entered or checked in: a card must have a go for it. */
  readonly going: boolean;
}

const parts = {
  sheet: true,
  show: { select: { kind: true } },
  pattern: { include: { maneuvers: { orderBy: { position: 'asc' } } } },
  seats: { include: { person: { select: { name: true } } }, orderBy: { seatOrder: 'asc' } },
  classEntries: {
    where: { status: { not: 'moved' } },
    include: { entry: { select: { backNumber: true } } },
    orderBy: [{ goPosition: { sort: 'asc', nulls: 'last' } }, { entry: { backNumber: 'asc' } }],
  },
} satisfies Prisma.ShowClassInclude;

/** `undefined`: there is no such class. Reads only; whoever writes takes the class first (`lockClass`). */
export async function loadClass(
  tx: Pick<Transaction, 'prisma'>,
  classId: string,
): Promise<LoadedClass | undefined> {
  const row = await tx.prisma.showClass.findUnique({ where: { id: classId }, include: parts });
  if (row === null) return undefined;
  const {
    id,
    showId,
    number,
    name,
    discipline,
    division,
    youth,
    calledAt,
    drawSeed,
    placesGiven,
    version,
    sheet,
  } = row;
  return {
    ...{ id, showId, number, name, discipline, division, youth, calledAt, drawSeed, placesGiven, version },
    practice: isPractice(row.show),
    status: row.status as LoadedClass['status'],
    publishCards: row.publishCards as PublishCards,
    sheet: { id: sheet.id, hash: sheet.hash, definition: definitionOf(sheet) },
    maneuvers: (row.pattern?.maneuvers ?? []).map((maneuver) => ({
      position: maneuver.position,
      name: maneuver.name,
      coefficient: coefficientText(maneuver.coefficient),
    })),
    rule: ruleOf(row),
    seats: row.seats.map((seat) => ({
      id: seat.id,
      personId: seat.personId,
      personName: seat.person.name,
      seatOrder: seat.seatOrder,
      role: seatRole(seat.role),
      callOrder: seat.callOrder,
      tieOrder: seat.tieOrder,
      withdrawn: seat.withdrawnAt !== null,
    })),
    entries: row.classEntries.map((entry) => ({
      id: entry.id,
      entryId: entry.entryId,
      backNumber: entry.entry.backNumber,
      goPosition: entry.goPosition,
      status: entry.status as ClassEntryStatus,
      going: isGoing(entry.status),
    })),
  };
}
