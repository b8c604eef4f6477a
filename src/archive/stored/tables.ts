/** The tables of an archive, in the order in which they can be written: what is named comes before what names it. */
import type { Archive } from '../form/archive.ts';
import type { StoredTable } from './table.ts';

/** Lists of an archive that are rows of one table as they stand; `lines`, `sheets` and `keys` are not the show's alone. */
type List = Exclude<
  { [Name in keyof Archive]: Archive[Name] extends readonly object[] ? Name : never }[keyof Archive],
  'lines' | 'sheets' | 'keys'
>;
type Rows = { readonly [Name in List]: StoredTable<Archive[Name][number]> };

const ofShow = 'show_id = $1::uuid';
const ofClasses = 'class_id IN (SELECT id FROM show_class WHERE show_id = $1::uuid)';
const ofPaper = `paper_card_id IN (SELECT id FROM paper_card WHERE ${ofClasses})`;
const orderBy = 'id';
const named = { id: 'uuid', showId: 'uuid', name: 'text', createdAt: 'instant' } as const;

export const showTable: StoredTable<Archive['show']> = {
  table: 'show',
  columns: {
    ...{ id: 'uuid', name: 'text', place: 'text', timeZone: 'text', firstDay: 'day', lastDay: 'day' },
    ...{ minorPublicName: 'text', kind: 'text', rehearsalOfId: 'uuid', version: 'int', createdAt: 'instant' },
  },
  ofShow: 'id = $1::uuid',
  orderBy,
};

export const tables: Rows = {
  rings: { table: 'ring', columns: named, ofShow, orderBy },
  people: { table: 'person', columns: named, ofShow, orderBy },
  patterns: { table: 'pattern', columns: { ...named, version: 'int', drawing: 'json' }, ofShow, orderBy },
  maneuvers: {
    table: 'pattern_maneuver',
    columns: {
      ...{ patternId: 'uuid', position: 'int', name: 'text', description: 'text', startCone: 'text' },
      ...{ endCone: 'text', gait: 'text', leadOrDiagonal: 'text', coefficient: 'decimal' },
    },
    ofShow: `pattern_id IN (SELECT id FROM pattern WHERE ${ofShow})`,
    orderBy: 'pattern_id, position',
  },
  classes: {
    table: 'show_class',
    columns: {
      ...{ id: 'uuid', showId: 'uuid', number: 'int', name: 'text', discipline: 'text', division: 'text' },
      ...{ youth: 'boolean', sheetId: 'uuid', patternId: 'uuid', placingRule: 'json', placesGiven: 'int' },
      ...{ ringId: 'uuid', day: 'day', scheduledAt: 'instant', publishCards: 'text', drawSeed: 'text' },
      ...{ status: 'text', openedAt: 'instant', calledAt: 'instant', version: 'int', createdAt: 'instant' },
    },
    ofShow,
    orderBy,
  },
  seats: {
    table: 'panel_seat',
    columns: {
      ...{ id: 'uuid', showId: 'uuid', classId: 'uuid', personId: 'uuid', seatOrder: 'int', role: 'text' },
      ...{ callOrder: 'int', tieOrder: 'int', withdrawnAt: 'instant', withdrawnWhy: 'text' },
      ...{ replacesId: 'uuid', createdAt: 'instant' },
    },
    ofShow,
    orderBy,
  },
  exhibitors: {
    table: 'exhibitor',
    columns: {
      ...{ id: 'uuid', showId: 'uuid', name: 'text', bornOn: 'day', publicName: 'text', erasedAt: 'instant' },
      ...{ spokenAs: 'text', version: 'int', createdAt: 'instant' },
    },
    ofShow,
    orderBy,
  },
  horses: {
    table: 'horse',
    columns: { ...named, registrationNumber: 'text', spokenAs: 'text' },
    ofShow,
    orderBy,
  },
  owners: { table: 'owner', columns: named, ofShow, orderBy },
  entries: {
    table: 'entry',
    columns: {
      ...{ id: 'uuid', showId: 'uuid', backNumber: 'int', exhibitorId: 'uuid', horseId: 'uuid' },
      ...{ ownerId: 'uuid', version: 'int', createdAt: 'instant' },
    },
    ofShow,
    orderBy,
  },
  classEntries: {
    table: 'class_entry',
    columns: {
      ...{ id: 'uuid', showId: 'uuid', classId: 'uuid', entryId: 'uuid', goPosition: 'int', status: 'text' },
      ...{ statusReason: 'text', addedLate: 'boolean', videoUrl: 'text' },
      ...{ createdAt: 'instant', changedAt: 'instant' },
    },
    ofShow,
    orderBy,
  },
  relations: {
    table: 'class_relation',
    columns: {
      ...{ id: 'uuid', showId: 'uuid', kind: 'text', fromClassId: 'uuid', toClassId: 'uuid' },
      ...{ classEntryIds: 'uuids', reason: 'text', relatedAt: 'instant' },
    },
    ofShow,
    orderBy,
  },
  draws: {
    table: 'order_draw',
    columns: {
      ...{ id: 'uuid', classId: 'uuid', number: 'int', kind: 'text', seed: 'text', enoughGap: 'int' },
      ...{ leastGap: 'int', classEntryIds: 'uuids', reason: 'text', drawnAt: 'instant' },
    },
    ofShow: ofClasses,
    orderBy,
  },
  consents: {
    table: 'exhibitor_consent',
    columns: {
      ...{ id: 'uuid', showId: 'uuid', exhibitorId: 'uuid', publicName: 'text', givenBy: 'text' },
      ...{ givenOn: 'day', how: 'text', recordedBy: 'uuid', recordedAt: 'instant' },
    },
    ofShow,
    orderBy,
  },
  phones: {
    table: 'phone',
    columns: {
      ...{ id: 'uuid', showId: 'uuid', role: 'text', personId: 'uuid', label: 'text', publicKey: 'json' },
      ...{ thumbprint: 'text', pairedAt: 'instant', revokedAt: 'instant', revokedWhy: 'text' },
    },
    ofShow,
    orderBy,
  },
  cards: {
    table: 'card',
    columns: { id: 'uuid', classId: 'uuid', seatId: 'uuid', sheetId: 'uuid', createdAt: 'instant' },
    ofShow: ofClasses,
    orderBy,
  },
  paperCards: {
    table: 'paper_card',
    columns: {
      ...{
        id: 'uuid',
        classId: 'uuid',
        seatId: 'uuid',
        revision: 'int',
        previousHash: 'text',
        reason: 'text',
      },
      ...{ status: 'text', withdrawnWhy: 'text', salt: 'text', createdBy: 'uuid', createdAt: 'instant' },
    },
    ofShow: ofClasses,
    orderBy,
  },
  paperEntries: {
    table: 'paper_entry',
    columns: {
      ...{ paperCardId: 'uuid', accountId: 'uuid', content: 'json', contentHash: 'text', version: 'int' },
      enteredAt: 'instant',
    },
    // What one of the two has entered is hers until it is accepted: the other must not see it, here either.
    ofShow: `paper_card_id IN (SELECT id FROM paper_card WHERE status = 'accepted' AND ${ofClasses})`,
    orderBy: 'paper_card_id, entered_at, account_id',
  },
  paperPhotos: {
    table: 'paper_photo',
    columns: {
      ...{
        paperCardId: 'uuid',
        bytes: 'base64',
        mediaType: 'text',
        hash: 'text',
        width: 'int',
        height: 'int',
      },
      ...{ storedBy: 'uuid', storedAt: 'instant' },
    },
    ofShow: ofPaper,
    orderBy: 'paper_card_id',
  },
  revisions: {
    table: 'card_revision',
    columns: {
      ...{ id: 'uuid', cardId: 'uuid', revision: 'int', content: 'json', contentHash: 'text' },
      ...{ previousHash: 'text', signedBySeatId: 'uuid', signedAt: 'instant', receivedAt: 'instant' },
      ...{ amendmentReason: 'text', jws: 'text', phoneId: 'uuid', paperCardId: 'uuid' },
    },
    ofShow: `card_id IN (SELECT id FROM card WHERE ${ofClasses})`,
    orderBy,
  },
  rulings: {
    table: 'ruling',
    columns: {
      ...{ id: 'uuid', classId: 'uuid', kind: 'text', classEntryIds: 'uuids', decision: 'json' },
      ...{ decidedBy: 'text', why: 'text', ruledAt: 'instant', recordedBy: 'uuid' },
    },
    ofShow: ofClasses,
    orderBy,
  },
  postings: {
    table: 'posting',
    columns: {
      ...{ id: 'uuid', classId: 'uuid', version: 'int', state: 'text', snapshot: 'json', ruleHash: 'text' },
      ...{ bodyHash: 'text', cardRevisionIds: 'uuids', reason: 'text', postedAt: 'instant' },
      ...{ ledgerSequence: 'int', ledgerHash: 'text', jws: 'text' },
    },
    ofShow: ofClasses,
    orderBy,
  },
};

export const sheetTable: StoredTable<Archive['sheets'][number]> = {
  table: 'score_sheet',
  columns: {
    ...{ id: 'uuid', code: 'text', version: 'int', definition: 'json', hash: 'text', origin: 'text' },
    createdAt: 'instant',
  },
  ofShow: `id IN (SELECT sheet_id FROM show_class WHERE ${ofShow}
           UNION SELECT sheet_id FROM card WHERE ${ofClasses})`,
  orderBy: 'code, version',
};

export const lineTable: StoredTable<Archive['lines'][number] & { readonly ledgerId: string }> = {
  table: 'ledger_line',
  columns: {
    ...{ ledgerId: 'uuid', sequence: 'int', type: 'text', at: 'instant', actor: 'json', body: 'json' },
    ...{ previousHash: 'text', hash: 'text', seal: 'text' },
  },
  ofShow: 'ledger_id = $1::uuid',
  orderBy: 'sequence',
};

export const keyTable: StoredTable<Archive['keys'][number]> = {
  table: 'signing_key',
  columns: { kid: 'text', jwk: 'json', source: 'text', addedAt: 'instant' },
  ofShow: 'kid = ANY ($1::text[])',
  orderBy: 'kid',
};
