/** Every record is there once, names only records that are there, and has its line; every line finds its records. */
import { type Fault, fault } from './fault.ts';
import { idsIn, type Line, type Reading } from './reading.ts';
import { recordKinds } from './record-kinds.ts';

type Named = Readonly<Record<string, unknown>>;
type Known = ReadonlyMap<string, ReadonlySet<string>>;

export function checkRecords(reading: Reading): Fault[] {
  const known = knownIds(reading);
  return [
    ...doubledFaults(reading),
    ...referenceFaults(reading, known),
    ...unknownRecords(reading),
    ...relationFaults(reading),
    ...emptyLines(reading, known),
  ];
}

type Kind = (typeof recordKinds)[number];

const rowsOf = ({ archive }: Reading, { list }: Kind): readonly (Named & { readonly id: string })[] =>
  list === 'show' ? [archive.show] : archive[list];

/** The ids that may stand in each member. */
function knownIds(reading: Reading): Known {
  return new Map(
    recordKinds.flatMap((kind) => {
      const ids = new Set(rowsOf(reading, kind).map(({ id }) => id));
      return kind.namedBy.map((member) => [member, ids] as const);
    }),
  );
}

function doubledFaults(reading: Reading): Fault[] {
  return recordKinds.flatMap((kind) => {
    const seen = new Set<string>();
    return rowsOf(reading, kind).flatMap(({ id }) => {
      const isNew = !seen.has(id);
      seen.add(id);
      return isNew ? [] : [fault('record_doubled', `${kind.list} ${id}`)];
    });
  });
}

function referenceFaults(reading: Reading, known: Known): Fault[] {
  const { maneuvers, paperEntries, paperPhotos } = reading.archive;
  const parts: readonly Named[] = [...maneuvers, ...paperEntries, ...paperPhotos];
  const records = [...recordKinds.flatMap((kind) => rowsOf(reading, kind)), ...parts];
  return records.flatMap((record) =>
    namesNothing(record, known).map(({ member, id }) =>
      fault('record_refers_to_nothing', `${member} ${id}`, `record ${String(record.id ?? 'without id')}`),
    ),
  );
}

const namesNothing = (record: Named, known: Known) =>
  idsIn(record).filter(({ member, id }) => known.get(member)?.has(id) === false);

function unknownRecords(reading: Reading): Fault[] {
  return recordKinds.flatMap((kind) => {
    if (kind.madeBy.length === 0) return [];
    return rowsOf(reading, kind)
      .filter((row) => !isTold(reading, kind, row) && !cameWithOther(reading, kind, row))
      .map(({ id }) => fault('record_without_line', `${kind.list} ${id}`));
  });
}

const isTold = ({ linesNaming }: Reading, { madeBy }: Kind, { id }: { readonly id: string }): boolean =>
  madeBy.some(({ type, member }) => linesNaming(member, id).some((line) => line.type === type));

const cameWithOther = (reading: Reading, kind: Kind, row: Named): boolean =>
  cameWithClass(reading, kind, row) || cameWithRehearsal(reading, kind, row);

/** A rehearsal is filled at once, and one line tells of it. */
function cameWithRehearsal({ archive }: Reading, { list }: Kind, { createdAt }: Named): boolean {
  if (isEvidence.has(list)) return false;
  return archive.lines.some(({ type, at }) => type === 'rehearsal.filled' && at === createdAt);
}

const isEvidence: ReadonlySet<Kind['list']> = new Set([
  ...(['consents', 'phones', 'cards', 'paperCards', 'revisions', 'rulings', 'postings'] as const),
]);

/** A split makes seats and entries of the new class, a combination entries of the one that was joined. */
function cameWithClass({ linesNaming }: Reading, { list }: Kind, { classId }: Named): boolean {
  if ((list !== 'seats' && list !== 'classEntries') || typeof classId !== 'string') return false;
  const split = linesNaming('intoClassIds', classId).some(({ type }) => type === 'class.split');
  const joined = linesNaming('intoClassId', classId).some(({ type }) => type === 'class.combined');
  return split || (list === 'classEntries' && joined);
}

function relationFaults({ archive, linesNaming }: Reading): Fault[] {
  return archive.relations
    .filter(({ kind, fromClassId, toClassId }) => {
      const told = linesNaming('classId', fromClassId).some((line) =>
        kind === 'split'
          ? line.type === 'class.split' && [line.body.intoClassIds].flat().includes(toClassId)
          : line.type === 'class.combined' && line.body.intoClassId === toClassId,
      );
      return !told;
    })
    .map(({ id }) => fault('record_without_line', `relations ${id}`));
}

function emptyLines(reading: Reading, known: Known): Fault[] {
  return reading.archive.lines
    .filter((line) => !isSuperseded(reading, line) && !isErased(reading, line))
    .flatMap((line) => {
      return namesNothing(line.body, known).map(({ member, id }) =>
        fault('line_names_nothing', `line ${line.sequence}`, `${member} ${id}`),
      );
    });
}

/** Before a card is opened the panel may be put anew, and who is no longer on it leaves no seat. */
function isSuperseded({ linesNaming }: Reading, { type, sequence, body }: Line): boolean {
  if (type !== 'panel.changed' || typeof body.classId !== 'string') return false;
  return linesNaming('classId', body.classId).some(
    (later) => later.type === 'panel.changed' && later.sequence > sequence,
  );
}

/** What a family agreed to goes with the name; the line that it was recorded stays. */
function isErased({ linesNaming }: Reading, { type, sequence, body }: Line): boolean {
  if (type !== 'consent.recorded' || typeof body.exhibitorId !== 'string') return false;
  return linesNaming('exhibitorId', body.exhibitorId).some(
    (later) => later.type === 'exhibitor.erased' && later.sequence > sequence,
  );
}
