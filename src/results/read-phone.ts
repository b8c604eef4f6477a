/** What a paired phone begins with: what it is, and the seats of its judge with where their classes stand. */
import { z } from 'zod';
import type { Actor } from '../access/index.ts';
import { problem } from '../platform/problems/index.ts';
import type { Sql, Statement } from '../platform/sql.ts';
import { classStates } from './class-state.ts';
import { readBoardLines } from './read-board.ts';

export type PhoneActor = Extract<Actor, { readonly phoneId: string }>;

const id = z.uuid();
const instant = z.iso.datetime();

const ownSeat = z.strictObject({
  seatId: id,
  seatOrder: z.int(),
  seatRole: z.enum(['judge', 'referee']),
  withdrawn: z.boolean().describe('The judge left the panel: her card counts no more.'),
  cardId: id.nullable().describe('null: not opened yet.'),
  signedRevision: z.int().nullable().describe('Last revision of the card that is signed; null: none is.'),
  classId: id,
  number: z.int().describe('Class number of the program.'),
  name: z.string(),
  ring: z.string().nullable(),
  scheduledAt: instant.nullable(),
  state: z.enum(classStates),
});

/** What a phone is, without its seats. */
export const phoneHead = z.strictObject({
  id,
  role: z.enum(['judge', 'scribe', 'gate']),
  label: z.string().nullable(),
  pairedAt: instant,
  show: z.strictObject({
    id,
    name: z.string(),
    place: z.string(),
    timeZone: z.string(),
    firstDay: z.iso.date(),
    lastDay: z.iso.date(),
    kind: z.enum(['official', 'practice']),
  }),
  judge: z
    .strictObject({ personId: id, name: z.string() })
    .nullable()
    .describe('Who judges with it, or whom the scribe writes for; null: the gate.'),
});
export type PhoneHead = z.output<typeof phoneHead>;

export const currentPhone = phoneHead
  .extend({
    seats: z.array(ownSeat).describe('Of this judge and of nobody else, in the order of the program.'),
  })
  .meta({ id: 'CurrentPhone' });
export type CurrentPhone = z.output<typeof currentPhone>;

interface PhoneRow extends Omit<PhoneHead, 'pairedAt'> {
  readonly pairedAt: Date;
}

const readPhone: Statement = {
  name: 'results.read-phone',
  text: `
    SELECT phone.id, phone.role, phone.label, phone.paired_at AS "pairedAt",
           jsonb_build_object('id', show.id, 'name', show.name, 'place', show.place, 'timeZone', show.time_zone,
             'firstDay', show.first_day, 'lastDay', show.last_day, 'kind', show.kind) AS show,
           CASE WHEN person.id IS NULL THEN NULL
                ELSE jsonb_build_object('personId', person.id, 'name', person.name) END AS judge
    FROM phone JOIN show ON show.id = phone.show_id LEFT JOIN person ON person.id = phone.person_id
    WHERE phone.id = $1::uuid`,
};

type SeatRow = Pick<
  z.output<typeof ownSeat>,
  'seatId' | 'seatOrder' | 'seatRole' | 'withdrawn' | 'cardId' | 'signedRevision' | 'classId'
>;

const readSeats: Statement = {
  name: 'results.read-own-seats',
  text: `
    SELECT seat.id AS "seatId", seat.seat_order AS "seatOrder", seat.role AS "seatRole", seat.class_id AS "classId",
           seat.withdrawn_at IS NOT NULL AS withdrawn, card.id AS "cardId",
           (SELECT max(revision) FROM card_revision WHERE card_id = card.id) AS "signedRevision"
    FROM panel_seat seat LEFT JOIN card ON card.seat_id = seat.id
    WHERE seat.id = ANY($1::uuid[])`,
};

/** Throws not_found, where the phone is gone. */
export async function readCurrentPhone(sql: Sql, actor: PhoneActor): Promise<CurrentPhone> {
  return { ...(await readPhoneHead(sql, actor)), seats: await ownSeats(sql, actor) };
}

/** Throws not_found, where the phone is gone. */
export async function readPhoneHead(sql: Sql, { phoneId }: PhoneActor): Promise<PhoneHead> {
  const phone = await sql.row<PhoneRow>(readPhone, [phoneId]);
  if (phone === undefined) throw problem('not_found');
  return { ...phone, pairedAt: phone.pairedAt.toISOString() };
}

async function ownSeats(sql: Sql, actor: PhoneActor): Promise<CurrentPhone['seats']> {
  if (actor.as === 'gate') return [];
  const seats = await sql.rows<SeatRow>(readSeats, [[...actor.seatIds]]);
  const lines = await readBoardLines(
    sql,
    seats.map(({ classId }) => classId),
  );
  return lines.flatMap(({ id: classId, number, name, ring, scheduledAt, state }) =>
    seats
      .filter((seat) => seat.classId === classId)
      .map((seat) => ({ ...seat, number, name, ring, scheduledAt, state })),
  );
}
