/** The ledger of the show: without a gap, each line linked to the one before, hashed, and sealed by a known key. */
import { kidOf } from '../../evidence/index.ts';
import { type ChainFault, checkLine, type SealedLine } from '../../ledger/offline.ts';
import { type Fault, type FaultCode, fault } from './fault.ts';
import type { Line, Reading } from './reading.ts';

/** A line that somebody wrote down, e.g. off a printed result. */
export interface HeadWrittenDown {
  readonly sequence: number;
  readonly hash: string;
}

const codes = {
  gap: 'line_missing',
  'does-not-follow': 'line_not_linked',
  'hash-wrong': 'line_hash_wrong',
  'seal-unknown-key': 'line_key_unknown',
  'seal-wrong': 'line_seal_wrong',
} as const satisfies Record<ChainFault, FaultCode>;

export async function checkLedger(reading: Reading, head: HeadWrittenDown | undefined): Promise<Fault[]> {
  return [
    ...(await chainFaults(reading)),
    ...importFaults(reading),
    ...archiveHeadFaults(reading),
    ...headFaults(reading, head),
  ];
}

/** Goes on behind a fault with the line that is there, so that one changed line is one fault and not all that follow. */
async function chainFaults({ archive, keys }: Reading): Promise<Fault[]> {
  const faults: Fault[] = [];
  let before: SealedLine | undefined;
  for (const line of archive.lines) {
    const sealed = sealedLine(line, archive.show.id);
    const broken = await checkLine(sealed, { before, keys });
    if (broken !== undefined) faults.push(fault(codes[broken.fault], `line ${broken.sequence}`));
    before = sealed;
  }
  return faults;
}

function sealedLine(line: Line, ledgerId: string): SealedLine {
  // Who acted is hashed as it stands; what it may be is the ledger's business.
  return { ...line, ledgerId, actor: line.actor as unknown as SealedLine['actor'] };
}

/** What the show brought along was sealed where it came from; what was added here, here. */
function importFaults({ archive }: Reading): Fault[] {
  const last = archive.lines.findLast(({ type }) => type === 'show.imported')?.sequence ?? 0;
  const imported = new Set(archive.keys.filter(({ source }) => source === 'imported').map(({ kid }) => kid));
  return archive.lines
    .filter(({ sequence, seal }) => sequence >= last && imported.has(kidOf(seal) ?? ''))
    .map(({ sequence }) => fault('line_sealed_by_import', `line ${sequence}`));
}

function archiveHeadFaults({ archive: { lines, head } }: Reading): Fault[] {
  const last = lines.at(-1);
  const same = last?.sequence === head.sequence && last.hash === head.hash;
  return same ? [] : [fault('archive_head_wrong', `line ${head.sequence}`)];
}

function headFaults({ archive: { lines } }: Reading, head: HeadWrittenDown | undefined): Fault[] {
  if (head === undefined) return [];
  const at = `line ${head.sequence}`;
  const line = lines.find(({ sequence }) => sequence === head.sequence);
  if (line === undefined) return [fault('head_missing', at)];
  return line.hash === head.hash ? [] : [fault('head_differs', at)];
}
