/**
 * A request for each route that is right in its form, so that what is refused is refused for who sends it. Ids are
 * given from outside: those of the sender's show, or of another one.
 */
import { readFileSync } from 'node:fs';

/** Real ids of one show; `classId`, `cardId`, `seatId`, `classEntryId` belong together. */
export type Ids = Readonly<Record<string, string>>;

export interface Example {
  readonly body?: unknown;
  readonly headers?: Readonly<Record<string, string>>;
  readonly query?: string;
}

const sheet = JSON.parse(
  readFileSync(new URL('../../../seed/sheets/horsemanship.json', import.meta.url), 'utf8'),
) as object;

const firstVersion = { 'if-match': '"1"' };
const rule = {
  merge: { method: 'total', discard: 'none', noScore: 'not-placed' },
  ties: [],
  afterSplit: 'go-on',
  placesGiven: null,
  rulingHolds: null,
};
const maneuvers = [{ name: 'Walk to B' }, { name: 'Jog a circle left' }, { name: 'Lope to C' }];
const go = { measure: '18.001' };
/** Three parts in base64url: what a compact JWS looks like (RFC 7515, 7.1). */
const someJws = 'eyJhbGciOiJFUzI1NiJ9.eyJhIjoxfQ.c2lnbmF0dXJl';

export const examples: Readonly<Record<string, (ids: Ids) => Example>> = {
  'POST /v1/score-sheets': () => ({ body: { ...sheet, code: 'matrix-sheet', version: 1 } }),
  'POST /v1/shows': () => ({
    body: {
      ...{ name: 'Alder Creek Show', place: 'Alder Creek', timeZone: 'America/Chicago' },
      ...{ firstDay: '2026-06-06', lastDay: '2026-06-07' },
    },
  }),
  'PATCH /v1/shows/:showId': () => ({ body: { name: 'Renamed' }, headers: firstVersion }),
  'GET /v1/shows/:showId/combined-placing': ({ classId, otherClassId }) => ({
    query: `phase=${classId}:1&phase=${otherClassId}:1`,
  }),
  'POST /v1/shows/:showId/classes': ({ patternId }) => ({
    body: {
      ...{ number: 77, name: 'Class 77', discipline: 'Horsemanship', sheet: { code: 'horsemanship' } },
      ...{ patternId, placingRule: rule },
    },
  }),
  'PATCH /v1/shows/:showId/classes/:classId': () => ({ body: { name: 'Renamed' }, headers: firstVersion }),
  'POST /v1/shows/:showId/classes/:classId/cancellation': () => ({ body: { reason: 'rain' } }),
  'POST /v1/shows/:showId/classes/:classId/combinations': ({ otherClassId }) => ({
    body: { reason: 'few entries', classIds: [otherClassId] },
  }),
  'POST /v1/shows/:showId/classes/:classId/splits': ({ classEntryId }) => ({
    body: { reason: 'many entries', into: [{ number: 78, name: 'Class 78', classEntryIds: [classEntryId] }] },
  }),
  'POST /v1/shows/:showId/classes/:classId/entries': ({ entryId }) => ({ body: { entryId } }),
  'PUT /v1/shows/:showId/classes/:classId/entries/:classEntryId/status': () => ({
    body: { status: 'scratched', reason: 'lame' },
  }),
  'PUT /v1/shows/:showId/classes/:classId/entries/:classEntryId/video': () => ({
    body: { url: 'https://video.example/goes/101' },
  }),
  'PUT /v1/shows/:showId/classes/:classId/order-of-go': ({ classEntryId }) => ({
    body: { order: [classEntryId], reason: 'a loose shoe' },
  }),
  'POST /v1/shows/:showId/classes/:classId/order-of-go/draws': () => ({ body: { reason: 'again' } }),
  'PUT /v1/shows/:showId/classes/:classId/panel': ({ personId }) => ({
    body: { seats: [{ personId }] },
    headers: firstVersion,
  }),
  'POST /v1/shows/:showId/classes/:classId/panel/:seatId/withdrawal': () => ({ body: { reason: 'ill' } }),
  'POST /v1/shows/:showId/people': () => ({ body: { name: 'Matrix Judge' } }),
  'POST /v1/shows/:showId/rings': () => ({ body: { name: 'Matrix Ring' } }),
  'POST /v1/shows/:showId/owners': () => ({ body: { name: 'Matrix Owner' } }),
  'POST /v1/shows/:showId/horses': () => ({ body: { name: 'Matrix Horse' } }),
  'PATCH /v1/shows/:showId/horses/:horseId': () => ({ body: { spokenAs: 'KOP-per lark' } }),
  'POST /v1/shows/:showId/exhibitors': () => ({ body: { name: 'Matrix Rider' } }),
  'PATCH /v1/shows/:showId/exhibitors/:exhibitorId': () => ({
    body: { name: 'Renamed Rider' },
    headers: firstVersion,
  }),
  'POST /v1/shows/:showId/entries': ({ exhibitorId, horseId }) => ({
    body: { backNumber: 777, exhibitorId, horseId },
  }),
  'PATCH /v1/shows/:showId/entries/:entryId': () => ({ body: { backNumber: 778 }, headers: firstVersion }),
  'POST /v1/shows/:showId/patterns': () => ({ body: { name: 'Matrix Pattern', maneuvers } }),
  'PUT /v1/shows/:showId/patterns/:patternId': () => ({
    body: { name: 'Matrix Pattern', maneuvers },
    headers: firstVersion,
  }),
  'POST /v1/classes/:classId/cards': ({ seatId }) => ({ body: { seatId } }),
  'PUT /v1/cards/:cardId/goes/:classEntryId': () => ({ body: go, headers: firstVersion }),
  'DELETE /v1/cards/:cardId/goes/:classEntryId': () => ({ headers: firstVersion }),
  'PUT /v1/cards/:cardId/order': () => ({ body: { ownOrder: [] } }),
  'POST /v1/cards/:cardId/signatures': () => ({ body: { jws: someJws } }),
  'POST /v1/cards/:cardId/amendments': () => ({ body: { jws: someJws } }),
  'POST /v1/classes/:classId/rulings': ({ classEntryId }) => ({
    body: { kind: 'coin', order: [[classEntryId]], decidedBy: 'the steward', why: 'a tie' },
  }),
  'POST /v1/classes/:classId/postings': () => ({
    body: { state: 'provisional' },
    headers: { 'if-match': '"x"' },
  }),
  'GET /v1/shows/:showId/look-up': () => ({ query: 'words=101' }),
  'POST /v1/classes/:classId/queries': () => ({
    body: { about: 'place', words: 'We counted another place.' },
  }),
  'POST /v1/queries/followed/withdrawals': () => ({}),
  'POST /v1/queries/:queryId/answers': () => ({ body: { words: 'We counted again.', outcome: 'stands' } }),
  'POST /v1/queries/:queryId/erasures': () => ({}),
  'POST /v1/shows/:showId/classes/:classId/calls': () => ({}),
  'POST /v1/shows/:showId/rehearsals': () => ({ body: {} }),
  'POST /v1/shows/:showId/exhibitors/:exhibitorId/consents': () => ({
    body: { publicName: 'full', givenBy: 'parent', givenOn: '2026-04-01', how: 'signed-form' },
  }),
  'POST /v1/shows/:showId/exhibitors/:exhibitorId/erasures': ({ exhibitorId }) => ({
    body: { reason: 'asked-by-family', exhibitorId },
  }),
  'POST /v1/classes/:classId/paper-cards': ({ seatId }) => ({
    body: { seatId, reason: 'the phone was wet' },
  }),
  'PUT /v1/paper-cards/:paperCardId/entries/mine': ({ classEntryId = '' }) => ({
    body: { goes: { [classEntryId]: { measure: '18.001' } } },
    headers: { 'if-none-match': '*' },
  }),
  'POST /v1/paper-cards/:paperCardId/withdrawals': () => ({ body: { reason: 'a wrong seat' } }),
  'PUT /v1/paper-cards/:paperCardId/photo': () => ({
    body: 'not a picture',
    headers: { 'content-type': 'image/jpeg' },
  }),
  'GET /v1/shows/:showId/archive': () => ({ query: 'names=full' }),
  'POST /v1/archives': () => ({ body: { form: 'ringledger show archive 1' } }),
  'POST /v1/shows/:showId/invitations': () => ({ body: { role: 'gate' } }),
  'DELETE /v1/shows/:showId/phones/:phoneId': () => ({ query: 'why=lost' }),
  'POST /v1/accounts': ({ showId }) => ({
    body: { name: 'Matrix Account', signIn: 'matrix-account', duty: 'secretary', showIds: [showId] },
  }),
  'PATCH /v1/accounts/:accountId': () => ({ body: { name: 'Renamed' }, headers: firstVersion }),
  'POST /v1/accounts/:accountId/resets': () => ({ body: {} }),
  'POST /v1/accounts/:accountId/closings': () => ({ body: {} }),
  'POST /v1/accounts/current/passwords': () => ({
    body: { password: 'a wrong password', newPassword: 'another long password of words' },
  }),
  'POST /v1/sessions': () => ({ body: { signIn: 'nobody', password: 'nothing', totpCode: '000000' } }),
  'POST /v1/account-setups': () => ({ body: { setupCode: 'nothing' } }),
  'POST /v1/account-setups/completions': () => ({
    body: { setupCode: 'nothing', password: 'a long password of words', totpCode: '000000' },
  }),
  'POST /v1/pairings': () => ({ body: { code: 'AAAA-AAAA' } }),
  'POST /v1/phone-tokens': () => ({}),
};
