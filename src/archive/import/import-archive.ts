/** A show comes in with its whole history, or not at all. */
import { appendLine, takeHead } from '../../ledger/index.ts';
import type { AppParts } from '../../platform/app-parts.ts';
import { inSqlTransaction, type SqlTransaction } from '../../platform/database.ts';
import { type Problem, problem } from '../../platform/problems/index.ts';
import type { Statement } from '../../platform/sql.ts';
import type { Archive } from '../form/archive.ts';
import type { Fault } from '../verify/fault.ts';
import { verifyArchive } from '../verify/verify-archive.ts';
import { writeShow } from './write-show.ts';

export interface Imported {
  readonly showId: string;
  /** `false`: it was here already, with this history. */
  readonly isNew: boolean;
  /** The head of the archive. */
  readonly head: Archive['head'];
  /** Thumbprints of the keys that the archive was signed by, to be compared with those that its service publishes. */
  readonly keys: readonly string[];
}

/**
 * Checks the archive as `verify` does and writes it in one transaction. The ledger goes on behind the head that came.
 * Throws archive_form_unknown, archive_altered, archive_without_names, archive_of_other_history, archive_conflicts.
 */
export async function importArchive(parts: AppParts, value: unknown): Promise<Imported> {
  const { archive, faults } = await verifyArchive(value);
  const [first] = faults;
  if (archive === undefined || first !== undefined) throw refusal(first, faults.length);
  if (archive.names !== 'full') throw problem('archive_without_names');
  const isNew = await inSqlTransaction(parts.db, (tx) => bringIn(parts, tx, archive));
  return { showId: archive.show.id, isNew, head: archive.head, keys: archive.keys.map(({ kid }) => kid) };
}

function refusal(first: Fault | undefined, count: number): Problem {
  const isForm = first === undefined || first.code === 'form_unknown' || first.code === 'form_broken';
  const errors = first === undefined ? [] : [{ field: first.at, message: first.message }];
  const more = first === undefined ? {} : { fault: first.code };
  return problem(isForm ? 'archive_form_unknown' : 'archive_altered', {
    detail: `Faults found: ${count}. The first: ${first?.message ?? 'it cannot be read.'}`,
    errors,
    more,
  });
}

const findLine: Statement = {
  name: 'archive.find-line',
  text: 'SELECT hash FROM ledger_line WHERE ledger_id = $1::uuid AND sequence = $2',
};

/** Holds the ledger of the show first: two who bring the same archive come one after the other. */
async function bringIn(parts: AppParts, tx: SqlTransaction, archive: Archive): Promise<boolean> {
  const { show, head } = archive;
  const here = await takeHead(tx, show.id);
  if (here.sequence > 0) {
    const line = await tx.sql.row<{ hash: string }>(findLine, [show.id, head.sequence]);
    if (line?.hash === head.hash) return false;
    throw problem('archive_of_other_history', {
      detail: `Here the ledger ends with line ${here.sequence}; the archive's ends with line ${head.sequence}.`,
      more: { here, archive: head },
    });
  }
  await writeShow(parts, tx, archive);
  const body = { showId: show.id, head: head.sequence, headHash: head.hash };
  await appendLine(parts, tx, { showId: show.id, type: 'show.imported', body, at: parts.clock.now() });
  return true;
}
