/** The day of a phone: all that it needs to judge its classes with no signal, at once. */
import { createHash } from 'node:crypto';
import { mustBreakTies } from '../cards/index.ts';
import { appliedRule } from '../engine/placing/applied-rule.ts';
import { cardIdOf } from '../evidence/index.ts';
import type { Sql } from '../platform/sql.ts';
import { readBoardLines } from './read-board.ts';
import { type PhoneActor, readPhoneHead } from './read-phone.ts';
import type { PhoneDay, PhoneDayClass } from './read-phone-day-schema.ts';
import {
  countOtherPhones,
  type DayClassRow,
  type DayEntryRow,
  type DayGoRow,
  readDayClasses,
  readDayEntries,
  readDayGoes,
} from './read-phone-day-statements.ts';

export type SeatedActor = Exclude<PhoneActor, { readonly as: 'gate' }>;

interface Asked {
  readonly actor: SeatedActor;
  /** Of this class alone; left out: of all. */
  readonly classId?: string | undefined;
}

export interface SentDay {
  readonly bytes: Buffer;
  readonly etag: string;
}

/** Spelled once, so that its ETag is that of what is sent. Throws not_found, where the phone is gone. */
export async function readPhoneDay(sql: Sql, asked: Asked): Promise<SentDay> {
  const day: PhoneDay = { phone: await phoneOf(sql, asked.actor), classes: await classesOf(sql, asked) };
  const bytes = Buffer.from(JSON.stringify(day));
  return { bytes, etag: `"${createHash('sha256').update(bytes).digest('base64url')}"` };
}

async function phoneOf(sql: Sql, actor: SeatedActor): Promise<PhoneDay['phone']> {
  const { showId, personId, phoneId, as: role } = actor;
  const { judge, ...head } = await readPhoneHead(sql, actor);
  if (judge === null) throw new Error('the phone of a judge or scribe belongs to nobody');
  const counted = await sql.row<{ others: number }>(countOtherPhones, [showId, personId, phoneId]);
  return { ...head, role, judge, otherPhones: counted?.others ?? 0 };
}

async function classesOf(sql: Sql, { actor, classId }: Asked): Promise<PhoneDayClass[]> {
  const seats = await sql.rows<DayClassRow>(readDayClasses, [[...actor.seatIds], classId ?? null]);
  const classIds = seats.map((seat) => seat.classId);
  const cardIds = seats.flatMap(({ cardId, revision }) =>
    cardId === null || revision !== null ? [] : [cardId],
  );
  const goes = grouped(await sql.rows<DayGoRow>(readDayGoes, [cardIds]), (go) => go.cardId);
  const entries = grouped(await sql.rows<DayEntryRow>(readDayEntries, [classIds]), (entry) => entry.classId);
  const lines = await readBoardLines(sql, classIds);
  return lines.flatMap(({ id, number, name, ring, scheduledAt, state }) =>
    seats
      .filter((seat) => seat.classId === id)
      .map(
        (seat): PhoneDayClass => ({
          ...{ classId: id, seatId: seat.seatId, seatRole: seat.seatRole, withdrawn: seat.withdrawn },
          ...{ number, name, discipline: seat.discipline, division: seat.division, ring, scheduledAt, state },
          rule: ruleOf(seat),
          panel: seat.panel.map(({ id: seatId, seatOrder }) => ({ seatId, seatOrder })),
          ...{ sheet: seat.sheet as PhoneDayClass['sheet'], sheetName: seat.sheetName },
          pattern: seat.pattern as PhoneDayClass['pattern'],
          entries: (entries.get(id) ?? []).map(({ classId: _, ...entry }) => entry),
          tiesMustBeBroken: mustBreakTies({ sheet: seat.sheet, placingRule: seat.rule }),
          card: cardOf(seat, goes.get(seat.cardId ?? '') ?? []),
        }),
      ),
  );
}

function grouped<Row>(rows: readonly Row[], by: (row: Row) => string): ReadonlyMap<string, readonly Row[]> {
  const groups = new Map<string, Row[]>();
  for (const row of rows) {
    const group = groups.get(by(row));
    if (group === undefined) groups.set(by(row), [row]);
    else group.push(row);
  }
  return groups;
}

/** With the panel's tie judges filled in, so that the phone can say it in the language of whoever holds it. */
const ruleOf = ({ rule, placesGiven, drawSeed, panel: seats }: DayClassRow) =>
  appliedRule({ rule, placesGiven, drawSeed, seats }) as PhoneDayClass['rule'];

function cardOf(seat: DayClassRow, goes: readonly DayGoRow[]): PhoneDayClass['card'] {
  const { seatId, cardId, order, orderVersion, orderSavedAt } = seat;
  return {
    cardId: cardId ?? cardIdOf(seatId),
    opened: cardId !== null,
    goes: goes.map(({ classEntryId, version, savedAt, content }) => ({
      ...{ classEntryId, version, savedAt: savedAt.toISOString(), content },
    })),
    order:
      order === null || orderVersion === null || orderSavedAt === null
        ? null
        : { version: orderVersion, savedAt: orderSavedAt.toISOString(), content: order },
    signed: signedOf(seat),
  };
}

function signedOf(seat: DayClassRow): PhoneDayClass['card']['signed'] {
  const { revision, content, contentHash, signedAt, receivedAt, amendmentReason: reason } = seat;
  if (revision === null || content === null || contentHash === null) return null;
  if (signedAt === null || receivedAt === null) return null;
  return {
    ...{ revision, content, contentHash, reason },
    ...{ signedAt: signedAt.toISOString(), receivedAt: receivedAt.toISOString() },
  };
}
