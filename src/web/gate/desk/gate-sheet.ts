/** The gate sheet of a class: what is not sent yet laid over what the service said, and who is in the ring. Pure. */
import type { EntryLine, GivenStatus, GoneByHand, Outgoing, Sheet, Status } from './gate-types.ts';

const isGoing = ({ status }: EntryLine): boolean => status === 'entered' || status === 'checked-in';

/** From which status the service lets one come to which; who went to another class is the office's business. */
const mayFollow: Readonly<Record<Status, readonly GivenStatus[]>> = {
  entered: ['checked-in', 'scratched', 'no-show', 'excused'],
  'checked-in': ['entered', 'scratched', 'no-show', 'excused'],
  scratched: ['entered', 'no-show'],
  'no-show': ['checked-in', 'entered', 'scratched'],
  excused: ['entered'],
  moved: [],
};

export const nextStatuses = (status: Status): readonly GivenStatus[] => mayFollow[status];

export const needsReason = (from: Status, to: GivenStatus): boolean =>
  to !== 'checked-in' && !(from === 'checked-in' && to === 'entered');

/** Undoes a change of status: the way back may lead over `entered`. */
export function wayBack(from: Status, to: Status): readonly GivenStatus[] {
  if (to === 'moved' || from === to) return [];
  if (mayFollow[from].includes(to)) return [to];
  return mayFollow[from].includes('entered') && mayFollow.entered.includes(to) ? ['entered', to] : [];
}

/** As it will be once everything is sent. Refused changes are left out. */
export function withOutgoing(sheet: Sheet, outgoing: readonly Outgoing[]): Sheet {
  let entries = sheet.entries;
  for (const { change, refused } of outgoing) {
    if (refused !== null) continue;
    if (change.kind === 'status') {
      const { classEntryId, status, reason: statusReason } = change;
      entries = entries.map((entry) =>
        entry.id === classEntryId ? { ...entry, status, statusReason } : entry,
      );
    }
    if (change.kind === 'order') entries = inOrder(entries, change.order);
  }
  return { ...sheet, entries };
}

function inOrder(entries: readonly EntryLine[], order: readonly string[]): readonly EntryLine[] {
  const placed = entries.map((entry) => {
    const index = order.indexOf(entry.id);
    return index < 0 ? { ...entry, goPosition: null } : { ...entry, goPosition: index + 1 };
  });
  const last = Number.MAX_SAFE_INTEGER;
  return placed.sort((one, other) => (one.goPosition ?? last) - (other.goPosition ?? last));
}

/** Everybody of the class but those whom the office moved away. */
export const listed = ({ entries }: Sheet): readonly EntryLine[] =>
  entries.filter(({ status }) => status !== 'moved');

/** Those who go, in their order. */
export const goers = (sheet: Sheet): readonly EntryLine[] => sheet.entries.filter(isGoing);

export const isDrawn = ({ entries }: Sheet): boolean => entries.some(({ goPosition }) => goPosition !== null);

/** How many goes the judge who is farthest has written, as far as her phone has sent them. */
export const judgedGoes = ({ cards }: Sheet): number =>
  Math.max(0, ...cards.filter(({ withdrawn }) => !withdrawn).map(({ goesWritten }) => goesWritten));

/** How many have gone: what the gate said by hand holds until the judges are farther. */
export function goneCount(sheet: Sheet, byHand: GoneByHand | undefined): number {
  const going = goers(sheet);
  const judged = Math.min(judgedGoes(sheet), going.length);
  if (byHand === undefined) return judged;
  const index = going.findIndex(({ id }) => id === byHand.gone);
  const handed = index + 1;
  return judgedGoes(sheet) > byHand.judgedThen ? Math.max(handed, judged) : handed;
}

export interface AtTheGate {
  readonly inRing: EntryLine | undefined;
  readonly onDeck: EntryLine | undefined;
  readonly inTheHole: EntryLine | undefined;
  readonly gone: number;
  readonly going: number;
}

export function atTheGate(sheet: Sheet, byHand: GoneByHand | undefined): AtTheGate {
  const going = goers(sheet);
  const gone = goneCount(sheet, byHand);
  const [inRing, onDeck, inTheHole] = going.slice(gone, gone + 3);
  return { inRing, onDeck, inTheHole, gone, going: going.length };
}

/** Said by hand: so many have gone. */
export function sayGone(sheet: Sheet, count: number): GoneByHand {
  return { gone: goers(sheet)[count - 1]?.id ?? null, judgedThen: judgedGoes(sheet) };
}
