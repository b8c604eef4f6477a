/** Every posting: signed by the service, in its chain, on the head that it names, with its line. */
import {
  evidenceTypes,
  kidOf,
  readCanonical,
  readJws,
  type SignedPosting,
  signedPostingForm,
} from '../../evidence/index.ts';
import { canonicalText, fingerprint, hashOfText } from '../../platform/canonical-json.ts';
import { ruleFingerprint } from '../../results/offline.ts';
import { computedFaults } from './check-computed.ts';
import { difference, missingFrom } from './differing.ts';
import { type Fault, fault } from './fault.ts';
import { type Line, onlyLine, type Posting, type Reading } from './reading.ts';

export async function checkPostings(reading: Reading): Promise<Fault[]> {
  const faults: Fault[] = [];
  for (const postings of byClass(reading.archive.postings)) {
    for (const [index, posting] of postings.entries()) {
      const at = postingName(posting);
      if (posting.version !== index + 1) faults.push(fault('posting_chain_broken', at));
      faults.push(...(await signatureFaults(reading, posting)), ...hashFaults(posting));
      const line = lineOf(reading, posting);
      faults.push(...lineFaults(reading, { posting, line }));
      faults.push(
        ...computedFaults(reading, { posting, at, upTo: line?.sequence ?? Number.POSITIVE_INFINITY }),
      );
    }
  }
  return faults;
}

const postingName = ({ id, version }: Posting): string => `posting ${id} version ${version}`;

function byClass(postings: readonly Posting[]): Posting[][] {
  const found = new Map<string, Posting[]>();
  for (const posting of postings)
    found.set(posting.classId, [...(found.get(posting.classId) ?? []), posting]);
  return [...found.values()].map((list) => list.sort((a, b) => a.version - b.version));
}

async function signatureFaults({ archive, keys }: Reading, posting: Posting): Promise<Fault[]> {
  const at = postingName(posting);
  const { jws } = posting;
  const kid = kidOf(jws);
  const key = kid === undefined ? undefined : keys.get(kid);
  if (kid === undefined || key === undefined) return [fault('posting_key_unknown', at)];
  const read = await readJws(jws, { key, kid, typ: evidenceTypes.posting });
  if (!read.ok) return [fault('posting_signature_wrong', at)];
  const onRecord = statementOf(posting, archive.show);
  if (canonicalText(onRecord) === read.payload) return [];
  const signed = readCanonical(read.payload);
  const wrong =
    typeof signed === 'object' && signed !== null ? difference({ ...signed }, { ...onRecord }) : undefined;
  return [fault('posting_differs', at, wrong ?? 'it is not canonical JSON')];
}

function statementOf(posting: Posting, show: Reading['archive']['show']): SignedPosting {
  const { classId, id, version, state, reason, postedAt, ruleHash, bodyHash } = posting;
  return {
    form: signedPostingForm,
    practice: show.kind === 'practice',
    showId: show.id,
    ...{ classId, postingId: id, version, state, reason, postedAt, ruleHash, bodyHash },
    ledger: { sequence: posting.ledgerSequence, hash: posting.ledgerHash },
  };
}

function hashFaults(posting: Posting): Fault[] {
  const at = postingName(posting);
  const { snapshot, bodyHash, ruleHash, cardRevisionIds } = posting;
  const cards = snapshot.cards.map(({ revisionId }) => revisionId);
  return [
    ...(fingerprint(snapshot) === bodyHash ? [] : [fault('posting_hash_wrong', at)]),
    ...(ruleFingerprint(snapshot) === ruleHash ? [] : [fault('posting_rule_hash_wrong', at)]),
    ...(canonicalText(cards) === canonicalText(cardRevisionIds) ? [] : [fault('posting_cards_wrong', at)]),
    ...(snapshot.classId === posting.classId ? [] : [fault('posting_differs', at, 'classId')]),
  ];
}

function lineOf(reading: Reading, { id, state }: Posting): Line | undefined {
  const types = [state === 'corrected' ? 'result.corrected' : 'result.posted'];
  return onlyLine(reading, { types, member: 'postingId', id });
}

interface WithLine {
  readonly posting: Posting;
  readonly line: Line | undefined;
}

function lineFaults({ archive }: Reading, { posting, line }: WithLine): Fault[] {
  const at = postingName(posting);
  if (line === undefined) {
    return [fault('posting_line_differs', at, 'there is no such line, or more than one')];
  }
  const { classId, version, jws } = posting;
  const wrong = missingFrom(
    { ...line.body, at: line.at },
    { classId, version, jwsHash: hashOfText(jws), at: posting.postedAt },
  );
  const head = archive.lines.find(({ sequence }) => sequence === posting.ledgerSequence);
  const isHead = head?.hash === posting.ledgerHash && line.sequence === posting.ledgerSequence + 1;
  return [
    ...(wrong === undefined ? [] : [fault('posting_line_differs', at, wrong)]),
    ...(isHead ? [] : [fault('posting_head_wrong', at)]),
  ];
}
