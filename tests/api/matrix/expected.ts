/**
 * Who is let in where. Written by hand from what each role is for, and not read from the routes: a route that is
 * opened to too many differs from this table, and a new route has no row in it.
 */

/**
 * What a sender must reach beside its role.
 * - `anywhere`: nothing; a pass of another show is as good as none.
 * - `show`: the show of the record. Whoever brings a pass of another show is refused, also where no pass is needed.
 * - `service`: an account for all shows.
 * - `seat`: a judge or scribe must hold the seat; an account must reach the show.
 * - `itself`: only what belongs to the sender, e.g. its own session.
 * - `no-pass`: the route looks at no pass at all.
 */
export type Within = 'anywhere' | 'show' | 'service' | 'seat' | 'itself' | 'no-pass';

export type Role = 'manager' | 'secretary' | 'points-secretary' | 'judge' | 'scribe' | 'gate' | 'everyone';

export interface Row {
  readonly open: readonly Role[];
  readonly within: Within;
  /** Who is let in once the card is signed, where that is more. */
  readonly onceSigned?: readonly Role[];
}

const office = ['manager', 'secretary'] as const;
const reading = [...office, 'points-secretary'] as const;
const seat = ['judge', 'scribe'] as const;
const phones = [...seat, 'gate'] as const;
const everyone = ['everyone'] as const;

const row = (open: readonly Role[], within: Within, onceSigned?: readonly Role[]): Row =>
  onceSigned === undefined ? { open, within } : { open, within, onceSigned };

export const expected: Readonly<Record<string, Row>> = {
  'GET /health/live': row(everyone, 'no-pass'),
  'GET /health/ready': row(everyone, 'no-pass'),
  'GET /openapi.json': row(everyone, 'no-pass'),
  'GET /docs/errors': row(everyone, 'no-pass'),
  'GET /.well-known/jwks.json': row(everyone, 'no-pass'),

  // Sheets are rule-book knowledge; a new one is for all shows.
  'GET /v1/score-sheets': row(everyone, 'anywhere'),
  'GET /v1/score-sheets/:code/:version': row(everyone, 'anywhere'),
  'POST /v1/score-sheets': row(office, 'service'),

  // The program of a show is public.
  'GET /v1/shows': row(everyone, 'anywhere'),
  'POST /v1/shows': row(office, 'service'),
  'GET /v1/shows/:showId': row(everyone, 'show'),
  'PATCH /v1/shows/:showId': row(office, 'show'),
  'GET /v1/shows/:showId/board': row(everyone, 'show'),
  'GET /v1/shows/:showId/events': row(everyone, 'show'),
  'GET /v1/shows/:showId/combined-placing': row(everyone, 'show'),
  'GET /v1/shows/:showId/classes': row(everyone, 'show'),
  'GET /v1/shows/:showId/classes/:classId': row(everyone, 'show'),
  'GET /v1/shows/:showId/classes/:classId/relations': row(everyone, 'show'),
  'GET /v1/shows/:showId/classes/:classId/order-of-go': row(everyone, 'show'),
  'GET /v1/shows/:showId/classes/:classId/order-of-go/draws': row(everyone, 'show'),

  // Setting up is the office's.
  'POST /v1/shows/:showId/classes': row(office, 'show'),
  'PATCH /v1/shows/:showId/classes/:classId': row(office, 'show'),
  'POST /v1/shows/:showId/classes/:classId/cancellation': row(office, 'show'),
  'POST /v1/shows/:showId/classes/:classId/combinations': row(office, 'show'),
  'POST /v1/shows/:showId/classes/:classId/splits': row(office, 'show'),
  'POST /v1/shows/:showId/classes/:classId/entries': row(office, 'show'),
  'PUT /v1/shows/:showId/classes/:classId/panel': row(office, 'show'),
  'POST /v1/shows/:showId/classes/:classId/panel/:seatId/withdrawal': row(office, 'show'),
  'POST /v1/shows/:showId/classes/:classId/order-of-go/draws': row(office, 'show'),
  'GET /v1/shows/:showId/people': row(reading, 'show'),
  'POST /v1/shows/:showId/people': row(office, 'show'),
  'GET /v1/shows/:showId/rings': row(reading, 'show'),
  'POST /v1/shows/:showId/rings': row(office, 'show'),
  'GET /v1/shows/:showId/owners': row(reading, 'show'),
  'POST /v1/shows/:showId/owners': row(office, 'show'),
  'GET /v1/shows/:showId/horses': row(reading, 'show'),
  'POST /v1/shows/:showId/horses': row(office, 'show'),
  'GET /v1/shows/:showId/exhibitors': row(reading, 'show'),
  'POST /v1/shows/:showId/exhibitors': row(office, 'show'),
  'GET /v1/shows/:showId/exhibitors/:exhibitorId': row(reading, 'show'),
  'PATCH /v1/shows/:showId/exhibitors/:exhibitorId': row(office, 'show'),
  'GET /v1/shows/:showId/entries': row(reading, 'show'),
  'POST /v1/shows/:showId/entries': row(office, 'show'),
  'GET /v1/shows/:showId/entries/:entryId': row(reading, 'show'),
  'PATCH /v1/shows/:showId/entries/:entryId': row(office, 'show'),
  'POST /v1/shows/:showId/patterns': row(office, 'show'),
  'PUT /v1/shows/:showId/patterns/:patternId': row(office, 'show'),

  // A judge and her scribe read the pattern and the panel; the gate calls, checks in and keeps the order.
  'GET /v1/shows/:showId/patterns': row([...reading, ...seat], 'show'),
  'GET /v1/shows/:showId/patterns/:patternId': row([...reading, ...seat], 'show'),
  'GET /v1/shows/:showId/classes/:classId/panel': row([...reading, ...phones], 'show'),
  'GET /v1/shows/:showId/classes/:classId/entries': row([...reading, 'gate'], 'show'),
  'PUT /v1/shows/:showId/classes/:classId/entries/:classEntryId/status': row([...office, 'gate'], 'show'),
  'PUT /v1/shows/:showId/classes/:classId/order-of-go': row([...office, 'gate'], 'show'),
  'POST /v1/shows/:showId/classes/:classId/calls': row([...office, 'gate'], 'show'),

  // A card is its seat's alone; once it is signed the office reads it, and only the judge amends it.
  'POST /v1/classes/:classId/cards': row(seat, 'seat'),
  'GET /v1/classes/:classId/cards': row([...reading, ...phones], 'show'),
  'GET /v1/cards/:cardId': row(seat, 'seat', [...seat, ...reading]),
  'PUT /v1/cards/:cardId/goes/:classEntryId': row(seat, 'seat'),
  'DELETE /v1/cards/:cardId/goes/:classEntryId': row(seat, 'seat'),
  'PUT /v1/cards/:cardId/order': row(seat, 'seat'),
  'POST /v1/cards/:cardId/signatures': row(['judge'], 'seat'),
  'POST /v1/cards/:cardId/amendments': row(['judge'], 'seat'),
  'GET /v1/cards/:cardId/revisions': row(seat, 'seat', [...seat, ...reading]),
  'GET /v1/cards/:cardId/revisions/:revision': row(seat, 'seat', [...seat, ...reading]),

  // The preview of a result is the office's; what is posted is everyone's.
  'GET /v1/classes/:classId/tabulation': row(office, 'show'),
  'GET /v1/classes/:classId/rulings': row(office, 'show'),
  'POST /v1/classes/:classId/rulings': row(office, 'show'),
  'GET /v1/classes/:classId/margins': row(office, 'show'),
  'GET /v1/classes/:classId/agreement': row(office, 'show'),
  'POST /v1/classes/:classId/postings': row(office, 'show'),
  'GET /v1/classes/:classId/postings': row(everyone, 'anywhere'),
  'GET /v1/classes/:classId/result': row(everyone, 'anywhere'),
  'GET /v1/classes/:classId/result.csv': row(everyone, 'anywhere'),
  'GET /v1/classes/:classId/result/entries/:backNumber': row(everyone, 'anywhere'),
  'GET /v1/postings/:postingId': row(everyone, 'anywhere'),

  // Signing in and pairing begin without a pass.
  'POST /v1/sessions': row(everyone, 'anywhere'),
  'POST /v1/account-setups': row(everyone, 'anywhere'),
  'POST /v1/account-setups/completions': row(everyone, 'anywhere'),
  'POST /v1/pairings': row(everyone, 'anywhere'),
  'POST /v1/phone-tokens': row(everyone, 'anywhere'),
};
