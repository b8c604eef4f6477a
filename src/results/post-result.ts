/** Posting a result: provisional, official, corrected. Nothing is posted that was not looked at first. */
import { evidenceTypes, type SignedPosting, signedPostingForm } from '../evidence/index.ts';
import { english, told } from '../language/index.ts';
import { appendLine, type LineType, takeHead } from '../ledger/index.ts';
import type { AppParts } from '../platform/app-parts.ts';
import { canonicalText, hashOfText } from '../platform/canonical-json.ts';
import type { Transaction } from '../platform/database.ts';
import { problem } from '../platform/problems/index.ts';
import { type ClassRecords, type PostingOnRecord, takeClassRecords } from './class-records.ts';
import { ruleFingerprint } from './posting-body.ts';
import { isOfPreview, openTiesOf } from './read-tabulation.ts';
import { addPosting } from './statements.ts';
import { type Tabulation, tabulateClass } from './tabulate-class.ts';

export interface NewPosting {
  readonly classId: string;
  readonly state: PostingOnRecord['state'];
  readonly reason: string | undefined;
  /** ETag of the preview that was looked at. */
  readonly ifMatch: string;
}

const eventOf = {
  provisional: 'result.posted',
  official: 'result.posted',
  corrected: 'result.corrected',
} as const satisfies Record<PostingOnRecord['state'], LineType>;

/**
 * Posts the tabulation as it stands. Throws stale_version where the preview has changed since, cards_missing,
 * ties_open, and what the state asks for: class_not_posted, class_already_official, posting_out_of_date,
 * correction_reason_missing, correction_changes_nothing.
 */
export async function postResult(
  tx: Transaction,
  parts: AppParts,
  wanted: NewPosting,
): Promise<PostingOnRecord> {
  const tabulation = tabulateClass(await takeClassRecords(tx, wanted.classId));
  if (!isOfPreview(wanted.ifMatch, tabulation)) {
    throw problem('stale_version', { detail: 'The preview has changed since you read it.' });
  }
  mustBeComplete(tabulation);
  mustFollow(tabulation, wanted);
  return append(tx, { parts, tabulation, wanted });
}

function mustBeComplete(tabulation: Tabulation): void {
  const { missing } = tabulation;
  if (missing.length > 0 || tabulation.cards.length === 0) {
    throw problem('cards_missing', {
      errors: missing.map(({ seat, why }) => ({
        field: `/seats/${seat.seatOrder}`,
        message: told((speech) => speech.say(`card-${why}`)),
      })),
    });
  }
  const ties = openTiesOf(tabulation, english);
  if (ties.length === 0) return;
  throw problem('ties_open', {
    errors: ties.map(({ place }, index) => ({
      field: `/places/${place}`,
      message: told((speech) => openTiesOf(tabulation, speech)[index]?.sentence ?? ''),
    })),
  });
}

/** provisional -> (provisional ...) -> official -> corrected -> corrected ...; a provisional one may be posted anew. */
function mustFollow({ records, changedSincePosting }: Tabulation, { state, reason }: NewPosting): void {
  const last = records.lastPosting;
  const isFinal = last?.state === 'official' || last?.state === 'corrected';
  switch (state) {
    case 'provisional':
      if (isFinal) throw problem('class_already_official');
      if (last !== undefined) mustSayWhy(changedSincePosting, reason);
      return;
    case 'official':
      if (last === undefined)
        throw problem('class_not_posted', { detail: 'A result is posted provisional first.' });
      if (isFinal) throw problem('class_already_official');
      if (changedSincePosting) throw problem('posting_out_of_date');
      return;
    case 'corrected':
      if (last === undefined) throw problem('class_not_posted');
      mustSayWhy(changedSincePosting, reason);
  }
}

/** What was posted once does not change without a word. */
function mustSayWhy(changedSincePosting: boolean, reason: string | undefined): void {
  if (!changedSincePosting) throw problem('correction_changes_nothing');
  if (reason !== undefined) return;
  throw problem('correction_reason_missing', {
    errors: [{ field: '/reason', message: told((speech) => speech.say('reason-missing')) }],
  });
}

async function append(
  tx: Transaction,
  { parts, tabulation, wanted }: { parts: AppParts; tabulation: Tabulation; wanted: NewPosting },
): Promise<PostingOnRecord> {
  const { body, bodyHash, records } = tabulation;
  const { showId } = records.ofClass;
  const ledger = await takeHead(tx, showId);
  if (ledger.hash === null) throw new Error('a show with a result and without a ledger');
  const unsigned = {
    id: parts.ids.next(),
    classId: wanted.classId,
    version: (records.lastPosting?.version ?? 0) + 1,
    state: wanted.state,
    reason: wanted.reason ?? null,
    postedAt: parts.clock.now(),
    ruleHash: ruleFingerprint(body),
    bodyHash,
    body,
    ledger: { sequence: ledger.sequence, hash: ledger.hash },
  };
  const posting = { ...unsigned, jws: await signed(parts, records, unsigned) };
  const { id, classId, version, state, reason, postedAt, ruleHash, jws } = posting;
  const revisions = body.cards.map(({ revisionId }) => revisionId);
  await tx.sql.rows(addPosting, [
    id,
    classId,
    version,
    state,
    canonicalText(body),
    ruleHash,
    bodyHash,
    revisions,
    ...[reason, postedAt, ledger.sequence, ledger.hash, jws],
  ]);
  await appendLine(parts, tx, {
    showId,
    type: eventOf[state],
    body: { classId, postingId: id, version, state, bodyHash, jwsHash: hashOfText(jws) },
    at: postedAt,
  });
  return posting;
}

/** What the service vouches for: which result, made by which rule, and where the ledger stood. */
function signed(
  { keys }: Pick<AppParts, 'keys'>,
  { ofClass }: ClassRecords,
  { id, postedAt, body: _body, ...posting }: Omit<PostingOnRecord, 'jws'>,
): Promise<string> {
  const { showId, practice } = ofClass;
  const statement: SignedPosting = {
    ...{ form: signedPostingForm, practice, showId, postingId: id },
    ...{ ...posting, postedAt: postedAt.toISOString() },
  };
  return keys.sign(evidenceTypes.posting, canonicalText(statement));
}
