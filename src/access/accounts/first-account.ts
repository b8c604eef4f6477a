import type { AppParts } from '../../platform/app-parts.ts';
import { inTransaction, type Transaction } from '../../platform/database.ts';
import { problem } from '../../platform/problems/index.ts';
import { managerOfAll, queueForAccounts } from './account-record.ts';
import type { Invited } from './account-schemas.ts';
import { addAccount } from './add-account.ts';
import { unseal } from './sealed-secret.ts';
import { setUpAnew } from './void-account.ts';

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
    if (await someoneCanSignIn(parts, tx)) throw problem('manager_exists');
    const at = parts.clock.now();
    const before = await tx.prisma.account.findUnique({ where: { signIn } });
    const isOne = before?.duty === 'manager' && before.wholeService && before.closedAt === null;
    if (before !== null && isOne) return setUpAnew(parts, tx, { accountId: before.id, at });
    return addAccount(parts, tx, { name, signIn, duty: 'manager', wholeService: true, showIds: [], demo });
  });
}

/** A second factor that was sealed under another TOKEN_SECRET opens no more: its owner is locked out like everybody else. */
async function someoneCanSignIn({ tokenKey }: AppParts, tx: Transaction): Promise<boolean> {
  const managers = await tx.prisma.account.findMany({
    where: managerOfAll,
    select: { id: true, totpSecret: true },
  });
  return managers.some(
    ({ id: accountId, totpSecret }) =>
      totpSecret !== null && unseal(totpSecret, { tokenKey, accountId }) !== undefined,
  );
}
