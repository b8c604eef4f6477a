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
 * - `no-pass`: the route looks at no pass at all.
 */
export type Within = 'anywhere' | 'show' | 'service' | 'seat' | 'no-pass';

export type Role = 'manager' | 'secretary' | 'points-secretary' | 'judge' | 'scribe' | 'gate' | 'everyone';

export interface Row {
  readonly open: readonly Role[];
  readonly within: Within;
  /** Who is let in once the card is signed, where that is more. */
  readonly onceSigned?: readonly Role[];
}

/** There is nothing at these until the card is signed, also for who is let in. */
export const emptyUntilSigned = ['GET /v1/cards/:cardId/revisions/:revision'];

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
  'PUT /v1/shows/:showId/classes/:classId/entries/:classEntryId/video': row(office, 'show'),
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
  'PATCH /v1/shows/:showId/horses/:horseId': row(office, 'show'),
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
  'GET /v1/classes/:classId/tabulation': row(reading, 'show'),
  'GET /v1/classes/:classId/rulings': row(reading, 'show'),
  'POST /v1/classes/:classId/rulings': row(office, 'show'),
  'GET /v1/classes/:classId/margins': row(reading, 'show'),
  'GET /v1/classes/:classId/agreement': row(reading, 'show'),
  'POST /v1/classes/:classId/postings': row(office, 'show'),
  'GET /v1/classes/:classId/postings': row(everyone, 'anywhere'),
  'GET /v1/classes/:classId/announcement': row([...reading, 'gate'], 'show'),
  'GET /v1/classes/:classId/result': row(everyone, 'anywhere'),
  'GET /v1/classes/:classId/result.csv': row(everyone, 'anywhere'),
  'GET /v1/classes/:classId/result/entries/:backNumber': row(everyone, 'anywhere'),
  'GET /v1/postings/:postingId': row(everyone, 'anywhere'),

  // The pattern hangs at the gate once the class is drawn or called.
  'GET /v1/classes/:classId/pattern': row(everyone, 'anywhere'),

  // A family finds its entry, asks, and follows by a code what the office answers. No pass is looked at for a code.
  'GET /v1/shows/:showId/look-up': row(everyone, 'show'),
  'GET /v1/shows/:showId/numbers/:backNumber': row(everyone, 'show'),
  'GET /v1/shows/:showId/numbers/:backNumber/results': row(everyone, 'show'),
  'POST /v1/classes/:classId/queries': row(everyone, 'anywhere'),
  'GET /v1/queries/followed': row(everyone, 'anywhere'),
  'POST /v1/queries/followed/withdrawals': row(everyone, 'anywhere'),
  'GET /v1/shows/:showId/queries': row(office, 'show'),
  'POST /v1/queries/:queryId/answers': row(office, 'show'),
  'POST /v1/queries/:queryId/erasures': row(office, 'show'),

  // A paper card is entered by the office; its judge may look at the picture of her own.
  'POST /v1/classes/:classId/paper-cards': row(office, 'show'),
  'GET /v1/classes/:classId/paper-cards': row(office, 'show'),
  'GET /v1/paper-cards/:paperCardId': row(office, 'show'),
  'PUT /v1/paper-cards/:paperCardId/entries/mine': row(office, 'show'),
  'POST /v1/paper-cards/:paperCardId/withdrawals': row(office, 'show'),
  'PUT /v1/paper-cards/:paperCardId/photo': row(office, 'show'),
  'GET /v1/paper-cards/:paperCardId/photo': row([...office, 'judge'], 'seat'),

  // What a family decided, and asks to be forgotten.
  'POST /v1/shows/:showId/exhibitors/:exhibitorId/consents': row(office, 'show'),
  'GET /v1/shows/:showId/exhibitors/:exhibitorId/consents': row(office, 'show'),
  'POST /v1/shows/:showId/exhibitors/:exhibitorId/erasures': row(['manager'], 'show'),
  'POST /v1/shows/:showId/rehearsals': row(office, 'show'),

  // The record, and the whole show as one document.
  'GET /v1/shows/:showId/ledger': row(office, 'show'),
  'GET /v1/shows/:showId/ledger/head': row(everyone, 'show'),
  'GET /v1/ledger': row(['manager'], 'service'),
  'GET /v1/shows/:showId/archive': row(office, 'show'),
  'POST /v1/archives': row(['manager'], 'service'),

  // Phones are invited and taken back by the office.
  'POST /v1/shows/:showId/invitations': row(office, 'show'),
  'GET /v1/shows/:showId/invitations': row(office, 'show'),
  'DELETE /v1/shows/:showId/invitations/:invitationId': row(office, 'show'),
  'GET /v1/shows/:showId/phones': row(office, 'show'),
  'DELETE /v1/shows/:showId/phones/:phoneId': row(office, 'show'),
  'GET /v1/phones/current': row(phones, 'anywhere'),
  'GET /v1/phones/current/day': row(seat, 'anywhere'),
  'DELETE /v1/phones/current': row(phones, 'anywhere'),

  // Accounts are looked after by managers, each of her own shows; the ids are of an account of this show.
  'GET /v1/accounts': row(['manager'], 'anywhere'),
  'POST /v1/accounts': row(['manager'], 'show'),
  'GET /v1/accounts/:accountId': row(['manager'], 'show'),
  'PATCH /v1/accounts/:accountId': row(['manager'], 'show'),
  'POST /v1/accounts/:accountId/resets': row(['manager'], 'show'),
  'POST /v1/accounts/:accountId/closings': row(['manager'], 'show'),
  'GET /v1/accounts/:accountId/sessions': row(['manager'], 'show'),
  'DELETE /v1/sessions/:sessionId': row(['manager'], 'show'),
  'GET /v1/sessions/current': row(reading, 'anywhere'),
  'DELETE /v1/sessions/current': row(reading, 'anywhere'),
  'POST /v1/accounts/current/passwords': row(reading, 'anywhere'),

  // Signing in and pairing begin without a pass.
  'POST /v1/sessions': row(everyone, 'anywhere'),
  'POST /v1/account-setups': row(everyone, 'anywhere'),
  'POST /v1/account-setups/completions': row(everyone, 'anywhere'),
  'POST /v1/pairings': row(everyone, 'anywhere'),
  'POST /v1/phone-tokens': row(everyone, 'anywhere'),
};

/** Pages and their files look at no pass; those that the service renders ask its own API as anybody would. */
export const isBuiltPage = (name: string): boolean =>
  /^GET \/((assets\/.+|pair|judge|office|gate|sw\.js|favicon\.ico)(\/\*)?|shows\/.+)?$/.test(name);
