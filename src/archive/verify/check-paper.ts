/** Each card that came in on paper: entered the same by two different people, as its line seals it. */
import { createHash } from 'node:crypto';
import { hashWithSalt } from '../../cards/offline.ts';
import { canonicalText, fingerprint } from '../../platform/canonical-json.ts';
import { difference, missingFrom } from './differing.ts';
import { type Fault, fault } from './fault.ts';
import { onlyLine, type PaperCard, type Reading, type Revision } from './reading.ts';

export function checkPaper(reading: Reading): Fault[] {
  const { paperCards, revisions } = reading.archive;
  const papers = new Map(paperCards.map((paper) => [paper.id, paper]));
  const accepted = revisions.flatMap((revision) => {
    if (revision.paperCardId === null) return [];
    const paper = papers.get(revision.paperCardId);
    const at = `paper card ${revision.paperCardId}`;
    if (paper === undefined || revision.jws !== null) return [fault('paper_differs', at)];
    return acceptedFaults(reading, { paper, revision, at });
  });
  return [...accepted, ...unacceptedFaults(reading), ...photoFaults(reading)];
}

interface Accepted {
  readonly paper: PaperCard;
  readonly revision: Revision;
  readonly at: string;
}

function acceptedFaults(reading: Reading, { paper, revision, at }: Accepted): Fault[] {
  const faults: Fault[] = [];
  const entries = reading.archive.paperEntries.filter(({ paperCardId }) => paperCardId === paper.id);
  const people = entries.map(({ accountId }) => accountId);
  if (entries.length !== 2 || new Set(people).size !== 2) faults.push(fault('paper_one_account', at));
  const isSame = entries.every(
    ({ content, contentHash }) =>
      contentHash === revision.contentHash && fingerprint(content) === revision.contentHash,
  );
  if (!isSame) faults.push(fault('paper_entries_differ', at));
  const wrong = cardDifference(reading, { paper, revision, at });
  if (wrong !== undefined) faults.push(fault('paper_differs', at, wrong));
  const onLine = lineDifference(reading, { paper, revision, at, people });
  if (onLine !== undefined) faults.push(fault('paper_line_differs', at, onLine));
  return faults;
}

function cardDifference({ cards }: Reading, { paper, revision }: Accepted): string | undefined {
  const card = cards.get(revision.cardId);
  const { classId, seatId, previousHash, status } = paper;
  // Why a first card came on paper is told with the paper alone: only an amendment keeps its reason.
  const reason = previousHash === null ? null : paper.reason;
  return difference(
    { classId, seatId, revision: paper.revision, previousHash, reason, status },
    {
      ...{ classId: card?.classId, seatId: card?.seatId, revision: revision.revision },
      ...{ previousHash: revision.previousHash, reason: revision.amendmentReason, status: 'accepted' },
    },
  );
}

/** The line names who entered and who checked, and seals the content under the salt. */
function lineDifference(
  reading: Reading,
  { paper, revision, people }: Accepted & { readonly people: readonly string[] },
): string | undefined {
  const named = { types: ['card.paper-accepted'], member: 'revisionId', id: revision.id };
  const line = onlyLine(reading, named);
  if (line === undefined) return 'there is no such line, or more than one';
  const { enteredBy, checkedBy } = line.body;
  const entered = [...people].sort();
  const told = [enteredBy, checkedBy].map(String).sort();
  const saltedHash = hashWithSalt({ content: revision.content, salt: paper.salt });
  const wrong = missingFrom(line.body, { paperCardId: paper.id, saltedHash });
  return canonicalText(entered) === canonicalText(told) ? wrong : (wrong ?? 'enteredBy, checkedBy');
}

/** Accepted means that it became a revision. */
function unacceptedFaults({ archive }: Reading): Fault[] {
  const became = new Set(archive.revisions.map(({ paperCardId }) => paperCardId));
  return archive.paperCards
    .filter(({ id, status }) => status === 'accepted' && !became.has(id))
    .map(({ id }) => fault('paper_differs', `paper card ${id}`, 'it was accepted and is no revision'));
}

/** A photo may have been taken anew: the last line about it holds its fingerprint. */
function photoFaults({ archive, linesNaming }: Reading): Fault[] {
  const photos = new Map(archive.paperPhotos.map((photo) => [photo.paperCardId, photo]));
  return archive.paperCards.flatMap(({ id }) => {
    const at = `photo of paper card ${id}`;
    const photo = photos.get(id);
    const told = linesNaming('paperCardId', id).findLast(({ type }) => type === 'card.photo-stored');
    if (photo === undefined && told === undefined) return [];
    if (photo === undefined) return [fault('paper_line_differs', at, 'there is no photo')];
    const isPicture = photo.bytes === null || hashOfBytes(photo.bytes) === photo.hash;
    return [
      ...(isPicture ? [] : [fault('paper_photo_altered', at)]),
      ...(told?.body.hash === photo.hash ? [] : [fault('paper_line_differs', at, 'hash')]),
    ];
  });
}

const hashOfBytes = (base64: string): string =>
  createHash('sha256').update(Buffer.from(base64, 'base64')).digest('hex');
