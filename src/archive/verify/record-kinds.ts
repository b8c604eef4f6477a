/** How records are named: by which member of a line or of another record, and which lines tell that one was made. */
import type { Archive } from '../form/archive.ts';

type Lists = {
  [Name in keyof Archive as Archive[Name] extends readonly { id: string }[] ? Name : never]: true;
};

interface RecordKind {
  readonly list: keyof Lists | 'show';
  /** Members whose value is the id of such a record. */
  readonly namedBy: readonly string[];
  /** Lines of these types, by which member, tell that it was made; none: it came together with another record. */
  readonly madeBy: readonly { readonly type: string; readonly member: string }[];
}

const made = (member: string, ...types: readonly string[]) => types.map((type) => ({ type, member }));

export const recordKinds: readonly RecordKind[] = [
  { list: 'show', namedBy: ['showId'], madeBy: made('showId', 'show.created') },
  { list: 'rings', namedBy: ['ringId'], madeBy: made('ringId', 'ring.created') },
  { list: 'people', namedBy: ['personId'], madeBy: made('personId', 'person.created') },
  { list: 'sheets', namedBy: ['sheetId'], madeBy: [] },
  { list: 'patterns', namedBy: ['patternId'], madeBy: made('patternId', 'pattern.created') },
  {
    list: 'classes',
    namedBy: ['classId', 'fromClassId', 'toClassId', 'intoClassId', 'intoClassIds'],
    madeBy: made('classId', 'class.created'),
  },
  {
    list: 'seats',
    namedBy: ['seatId', 'seatIds', 'signedBySeatId', 'replacesId'],
    madeBy: [...made('seatIds', 'panel.changed'), ...made('seatId', 'panel.seated')],
  },
  {
    list: 'exhibitors',
    namedBy: ['exhibitorId'],
    madeBy: made('exhibitorId', 'exhibitor.created'),
  },
  { list: 'horses', namedBy: ['horseId'], madeBy: made('horseId', 'horse.created') },
  { list: 'owners', namedBy: ['ownerId', 'ownerIds'], madeBy: made('ownerId', 'owner.created') },
  { list: 'entries', namedBy: ['entryId'], madeBy: made('entryId', 'entry.created') },
  {
    list: 'classEntries',
    namedBy: ['classEntryId', 'classEntryIds'],
    madeBy: made('classEntryId', 'class-entry.added'),
  },
  { list: 'draws', namedBy: ['orderDrawId'], madeBy: made('orderDrawId', 'order.drawn') },
  { list: 'consents', namedBy: ['consentId'], madeBy: made('consentId', 'consent.recorded') },
  { list: 'phones', namedBy: ['phoneId'], madeBy: made('phoneId', 'phone.paired') },
  { list: 'cards', namedBy: ['cardId'], madeBy: made('cardId', 'card.opened') },
  { list: 'paperCards', namedBy: ['paperCardId'], madeBy: made('paperCardId', 'card.paper-opened') },
  {
    list: 'revisions',
    namedBy: ['revisionId', 'cardRevisionIds'],
    madeBy: made('revisionId', 'card.signed', 'card.amended', 'card.paper-accepted'),
  },
  { list: 'rulings', namedBy: ['rulingId'], madeBy: made('rulingId', 'ruling.made') },
  {
    list: 'postings',
    namedBy: ['postingId'],
    madeBy: made('postingId', 'result.posted', 'result.corrected'),
  },
];
