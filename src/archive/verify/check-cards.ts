/** Every signed card: by the key of that judge's phone, unchanged, in its chain, with its line. */
import {
  evidenceTypes,
  readCanonical,
  readJws,
  type SignedCard,
  signedCardForm,
} from '../../evidence/index.ts';
import { canonicalText, fingerprint, hashOfText } from '../../platform/canonical-json.ts';
import { difference, missingFrom } from './differing.ts';
import { type Fault, fault } from './fault.ts';
import { readKey } from './known-keys.ts';
import { onlyLine, type Reading, type Revision } from './reading.ts';

export async function checkCards(reading: Reading): Promise<Fault[]> {
  const faults: Fault[] = [];
  for (const chain of chainsOf(reading)) {
    for (const [index, revision] of chain.entries()) {
      const at = revisionName(revision);
      if (fingerprint(revision.content) !== revision.contentHash) faults.push(fault('card_hash_wrong', at));
      if (!follows(revision, { index, before: chain[index - 1] }))
        faults.push(fault('card_chain_broken', at));
      if (revision.paperCardId === null) faults.push(...(await signatureFaults(reading, revision)));
      const wrong = lineDifference(reading, revision);
      if (wrong !== undefined) faults.push(fault('card_line_differs', at, wrong));
    }
  }
  return faults;
}

export const revisionName = ({ cardId, revision }: Revision): string => `card ${cardId} revision ${revision}`;

/** The revisions of each card, the first one first. */
function chainsOf({ archive }: Reading): Revision[][] {
  const chains = new Map<string, Revision[]>();
  for (const revision of archive.revisions) {
    chains.set(revision.cardId, [...(chains.get(revision.cardId) ?? []), revision]);
  }
  return [...chains.values()].map((chain) => chain.sort((a, b) => a.revision - b.revision));
}

function follows(
  { revision, previousHash, amendmentReason }: Revision,
  { index, before }: { readonly index: number; readonly before: Revision | undefined },
): boolean {
  const says = (revision === 1) === (amendmentReason === null);
  return says && revision === index + 1 && previousHash === (before?.contentHash ?? null);
}

async function signatureFaults(reading: Reading, revision: Revision): Promise<Fault[]> {
  const at = revisionName(revision);
  const { jws, phoneId } = revision;
  if (jws === null || phoneId === null) return [fault('card_unsigned', at)];
  const phone = reading.phones.get(phoneId);
  if (phone === undefined) return [fault('card_phone_unknown', at)];
  const faults = holderFaults(reading, { revision, phone });
  const { key, thumbprint: kid } = await readKey(phone.publicKey);
  if (key === undefined || kid === undefined) return [...faults, fault('card_signature_wrong', at)];
  const read = await readJws(jws, { key, kid, typ: evidenceTypes.card });
  if (!read.ok) return [...faults, fault('card_signature_wrong', at)];
  const wrong = statementDifference(reading, { revision, payload: read.payload });
  return wrong === undefined ? faults : [...faults, fault('card_differs', at, wrong)];
}

interface Held {
  readonly revision: Revision;
  readonly phone: Reading['archive']['phones'][number];
}

/** A phone holds all seats of its judge, and signs from its pairing until it is revoked. */
function holderFaults(reading: Reading, { revision, phone }: Held): Fault[] {
  const at = revisionName(revision);
  const seatId = reading.cards.get(revision.cardId)?.seatId;
  const seat = seatId === undefined ? undefined : reading.seats.get(seatId);
  const { receivedAt } = revision;
  const isHers = phone.role === 'judge' && seat !== undefined && phone.personId === seat.personId;
  const isPaired = phone.pairedAt <= receivedAt && (phone.revokedAt === null || phone.revokedAt > receivedAt);
  return [
    ...(isHers ? [] : [fault('card_phone_of_another', at)]),
    ...(isPaired ? [] : [fault('card_phone_not_paired', at)]),
  ];
}

/** What she signed against what is on record, member by member; `undefined`: it is the same, letter for letter. */
function statementDifference(
  reading: Reading,
  { revision, payload }: { readonly revision: Revision; readonly payload: string },
): string | undefined {
  const onRecord = statementOf(reading, revision);
  if (onRecord === undefined) return 'its card, seat, class or sheet is not there';
  if (canonicalText(onRecord) === payload) return undefined;
  const signed = readCanonical(payload);
  if (typeof signed !== 'object' || signed === null) return 'it is not canonical JSON';
  return difference({ ...signed }, { ...onRecord }) ?? 'spelling';
}

function statementOf({ archive, cards, sheets }: Reading, revision: Revision): SignedCard | undefined {
  const card = cards.get(revision.cardId);
  const sheet = card === undefined ? undefined : sheets.get(card.sheetId);
  if (card === undefined || sheet === undefined) return undefined;
  return {
    form: signedCardForm,
    showId: archive.show.id,
    classId: card.classId,
    seatId: card.seatId,
    cardId: card.id,
    sheet: { code: sheet.code, version: sheet.version, hash: sheet.hash },
    revision: revision.revision,
    previousHash: revision.previousHash,
    reason: revision.amendmentReason,
    signedAt: revision.signedAt,
    content: revision.content,
  };
}

/** Lines that tell of a revision that came in. */
export const revisionLines: readonly string[] = ['card.signed', 'card.amended', 'card.paper-accepted'];

function lineDifference(reading: Reading, revision: Revision): string | undefined {
  const { cardId, jws, phoneId, paperCardId } = revision;
  const line = onlyLine(reading, { types: revisionLines, member: 'revisionId', id: revision.id });
  if (line === undefined) return 'there is no such line, or more than one';
  const card = reading.cards.get(cardId);
  const signed = jws === null ? { paperCardId } : { phoneId, jwsHash: hashOfText(jws) };
  const { type, at, body } = line;
  return missingFrom(
    { ...body, type, at, seat: card?.seatId },
    {
      ...{ classId: card?.classId, seatId: card?.seatId, cardId, revision: revision.revision, ...signed },
      ...{ type: typeOf(revision), at: revision.receivedAt, seat: revision.signedBySeatId },
    },
  );
}

function typeOf({ paperCardId, revision }: Revision): string {
  if (paperCardId !== null) return 'card.paper-accepted';
  return revision === 1 ? 'card.signed' : 'card.amended';
}
