/** An archive opened for checking: its records by id, and what the ledger says about each. */
import type { KnownKeys } from '../../ledger/offline.ts';
import type { Archive } from '../form/archive.ts';

export type Line = Archive['lines'][number];
export type Revision = Archive['revisions'][number];
export type PaperCard = Archive['paperCards'][number];
export type Posting = Archive['postings'][number];

export interface Reading {
  readonly archive: Archive;
  /** The service's keys that are believed, by thumbprint. */
  readonly keys: KnownKeys;
  readonly seats: ReadonlyMap<string, Archive['seats'][number]>;
  readonly classes: ReadonlyMap<string, Archive['classes'][number]>;
  readonly sheets: ReadonlyMap<string, Archive['sheets'][number]>;
  readonly phones: ReadonlyMap<string, Archive['phones'][number]>;
  readonly cards: ReadonlyMap<string, Archive['cards'][number]>;
  readonly revisions: ReadonlyMap<string, Revision>;
  /** Lines whose body holds the id in that member, in their order. */
  readonly linesNaming: (member: string, id: string) => readonly Line[];
}

export function openForReading(archive: Archive, keys: KnownKeys): Reading {
  const lines = linesByName(archive.lines);
  return {
    archive,
    keys,
    seats: byId(archive.seats),
    classes: byId(archive.classes),
    sheets: byId(archive.sheets),
    phones: byId(archive.phones),
    cards: byId(archive.cards),
    revisions: byId(archive.revisions),
    linesNaming: (member, id) => lines.get(`${member} ${id}`) ?? [],
  };
}

export const byId = <Row extends { readonly id: string }>(rows: readonly Row[]): ReadonlyMap<string, Row> =>
  new Map(rows.map((row) => [row.id, row]));

function linesByName(lines: readonly Line[]): ReadonlyMap<string, readonly Line[]> {
  const found = new Map<string, Line[]>();
  for (const line of lines) {
    for (const { member, id } of idsIn(line.body)) {
      const key = `${member} ${id}`;
      const before = found.get(key);
      if (before === undefined) found.set(key, [line]);
      else before.push(line);
    }
  }
  return found;
}

/** The ids that a line or a record names: `classId` one, `seatIds` several. */
export function idsIn(record: Readonly<Record<string, unknown>>): { member: string; id: string }[] {
  return Object.entries(record).flatMap(([member, value]) => {
    if (member.endsWith('Id') && typeof value === 'string') return [{ member, id: value }];
    if (!member.endsWith('Ids') || !Array.isArray(value)) return [];
    return value.filter((id) => typeof id === 'string').map((id: string) => ({ member, id }));
  });
}

/** The only line of these types that names the record; `undefined`: there is none, or there are several. */
export function onlyLine(
  { linesNaming }: Reading,
  { types, member, id }: { readonly types: readonly string[]; readonly member: string; readonly id: string },
): Line | undefined {
  const found = linesNaming(member, id).filter(({ type }) => types.includes(type));
  return found.length === 1 ? found[0] : undefined;
}
