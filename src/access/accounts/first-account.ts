import { ofTheService } from '../../evidence/index.ts';
import { appendLine } from '../../ledger/index.ts';
import type { AppParts } from '../../platform/app-parts.ts';
import { inTransaction } from '../../platform/database.ts';
import { problem } from '../../platform/problems/index.ts';
import { otherManagers, queueForAccounts, withShows } from './account-record.ts';
import type { Invited } from './account-schemas.ts';
import { addAccount, invited, newSetupCode } from './add-account.ts';

interface FirstAccount {
  readonly name: string;
  /** In small letters. */
  readonly signIn: string;
  readonly demo?: boolean;
}

/**
 * The first manager of the whole service, made at the server; asked again before it is set up, it gets a new code. Throws
 * manager_exists where one can sign in, already_exists where the name belongs to an account of another kind.
 */
export function makeFirstAccount(
  parts: AppParts,
  { name, signIn, demo = false }: FirstAccount,
): Promise<Invited> {
  return inTransaction(parts.db, async (tx) => {
    await queueForAccounts(tx);
    if ((await otherManagers(tx, null)) > 0) throw problem('manager_exists');
    const at = parts.clock.now();
    const before = await tx.prisma.account.findUnique({ where: { signIn } });
    const isWaiting = before?.duty === 'manager' && before.wholeService && before.closedAt === null;
    if (before === null || !isWaiting) {
      return addAccount(parts, tx, { name, signIn, duty: 'manager', wholeService: true, showIds: [], demo });
    }
    const code = newSetupCode(at);
    const data = { ...code.stored, totpSecret: null, totpLastStep: null, version: { increment: 1 } };
    const row = await tx.prisma.account.update({ where: { id: before.id }, data, include: withShows });
    const body = { accountId: row.id };
    await appendLine(parts, tx, { showId: ofTheService, type: 'account.reset', body, at });
    return invited(row, code, at);
  });
}
