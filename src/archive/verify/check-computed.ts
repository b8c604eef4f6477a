/** A posting computed anew, from the cards as they were signed, by the same code that posts: byte for byte. */
import { canonicalText } from '../../platform/canonical-json.ts';
import { recompute } from '../../results/offline.ts';
import { revisionLines } from './check-cards.ts';
import { type Fault, fault } from './fault.ts';
import { onlyLine, type Posting, type Reading } from './reading.ts';

interface Posted {
  readonly posting: Posting;
  readonly at: string;
  /** Number of the posting's own line. */
  readonly upTo: number;
}

export function computedFaults(reading: Reading, posted: Posted): Fault[] {
  const { at, posting } = posted;
  return [
    ...(hasLastCards(reading, posted) ? [] : [fault('posting_cards_wrong', at)]),
    ...(hasRulings(reading, posted) ? [] : [fault('posting_decisions_wrong', at)]),
    ...recomputedFaults(reading, { at, body: posting.snapshot }),
  ];
}

/** Each card on it is the last revision that had come in for its seat. */
function hasLastCards(reading: Reading, { posting, upTo }: Posted): boolean {
  const { cards, panel, classId } = posting.snapshot;
  const seated = panel.map(({ seatId }) => seatId);
  if (canonicalText(cards.map(({ seatId }) => seatId)) !== canonicalText(seated)) return false;
  return cards.every(({ seatId, revisionId, revision, contentHash }) => {
    const signed = reading.revisions.get(revisionId);
    const card = signed === undefined ? undefined : reading.cards.get(signed.cardId);
    if (signed === undefined || card?.seatId !== seatId || card.classId !== classId) return false;
    const came = reading.linesNaming('cardId', card.id);
    const last = came.findLast(({ type, sequence }) => revisionLines.includes(type) && sequence < upTo);
    const isLast = last?.body.revisionId === revisionId;
    return isLast && signed.revision === revision && signed.contentHash === contentHash;
  });
}

/** All rulings on the class that had been recorded, in their order, and no other. */
function hasRulings(reading: Reading, { posting, upTo }: Posted): boolean {
  const { classId, decisions } = posting.snapshot;
  const recorded = reading.archive.rulings
    .filter((ruling) => ruling.classId === classId)
    .filter(({ id }) => {
      const line = onlyLine(reading, { types: ['ruling.made'], member: 'rulingId', id });
      return line !== undefined && line.sequence < upTo;
    })
    .sort((a, b) => (`${a.ruledAt} ${a.id}` < `${b.ruledAt} ${b.id}` ? -1 : 1))
    .map(({ id, kind, decision }) => ({ id, kind, order: decision.order }));
  return canonicalText(recorded) === canonicalText(decisions);
}

interface Made {
  readonly at: string;
  readonly body: Posting['snapshot'];
}

function recomputedFaults(reading: Reading, { at, body }: Made): Fault[] {
  const made = computeAgain(reading, body);
  if (made === undefined) return [fault('posting_not_computable', at)];
  return canonicalText(made) === canonicalText(body) ? [] : [fault('posting_recomputed_differs', at)];
}

function computeAgain({ archive, classes, revisions }: Reading, body: Posting['snapshot']) {
  const { code, version, hash } = body.sheet;
  const sheet = archive.sheets.find(
    (one) => one.code === code && one.version === version && one.hash === hash,
  );
  const patternId = classes.get(body.classId)?.patternId;
  if (sheet === undefined) return undefined;
  const maneuvers = archive.maneuvers
    .filter((maneuver) => maneuver.patternId === patternId)
    .sort((a, b) => a.position - b.position)
    .map(({ position, name, coefficient }) => ({ position, name, coefficient }));
  const contents = new Map([...revisions].map(([id, { content }]) => [id, content]));
  try {
    return recompute(body, { sheet, maneuvers, contents });
  } catch {
    // What cannot be placed at all: an altered rule or card brings the engine to what it takes for impossible.
    return undefined;
  }
}
