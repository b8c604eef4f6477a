import { ofTheService } from '../../evidence/index.ts';
import { appendLine } from '../../ledger/index.ts';
import type { AppParts } from '../../platform/app-parts.ts';
import { inSqlTransaction, type SqlTransaction } from '../../platform/database.ts';
import { problem } from '../../platform/problems/index.ts';
import type { Office } from './account-record.ts';
import { beginSession } from './begin-session.ts';
import { endSessionsOf } from './end-sessions.ts';
import { accountById, keepFactors, lockAccount, mustNotBeSlowed, tellFailure } from './guarded-account.ts';
import { hashPassword, isPassword } from './password-hash.ts';
import type { BegunSession, PasswordChange } from './session-schemas.ts';
import { mustBeUncommon } from './set-up-account.ts';

interface Asked extends PasswordChange {
  readonly actor: Office;
}

/**
 * By the owner, who knows the present password; guesses at it count as failed sign-ins. All sessions end, and she goes on
 * under a new one. Throws password_wrong, password_too_common, sign_in_slowed.
 */
export async function changePassword(parts: AppParts, asked: Asked): Promise<BegunSession> {
  const { actor, currentPassword, newPassword } = asked;
  const account = await accountById(parts.db.sql, actor.accountId);
  if (account === undefined) throw new Error('a session without an account');
  mustNotBeSlowed(account, parts.clock.now());
  const { passwordHash } = account;
  const isRight = await isPassword(currentPassword, passwordHash);
  if (isRight) {
    await mustBeUncommon(newPassword, { field: '/newPassword', known: [account.name, account.signIn] });
  }
  const newHash = await hashPassword(newPassword);
  const change = { accountId: account.id, checked: isRight ? passwordHash : undefined, newHash };
  const begun = await inSqlTransaction(parts.db, (tx) => decide(parts, tx, change));
  if (begun !== undefined) return begun;
  const message = 'it is not the password of this account';
  throw problem('password_wrong', { errors: [{ field: '/currentPassword', message }] });
}

interface CheckedChange {
  readonly accountId: string;
  /** The hash that the present password fitted; `undefined`: it did not. */
  readonly checked: string | null | undefined;
  readonly newHash: string;
}

/** The new session, or `undefined`: the failure is counted and told, and must be committed. */
async function decide(
  parts: AppParts,
  tx: SqlTransaction,
  { accountId, checked, newHash }: CheckedChange,
): Promise<BegunSession | undefined> {
  const at = parts.clock.now();
  const account = await lockAccount(tx, accountId);
  if (account === undefined) throw new Error('an account was removed');
  mustNotBeSlowed(account, at);
  if (checked === undefined || account.passwordHash !== checked) {
    await tellFailure(parts, tx, { account, at });
    return undefined;
  }
  await keepFactors(tx, { ...account, passwordHash: newHash });
  await endSessionsOf(parts, tx, { accountId, why: 'password-changed', at });
  const body = { accountId };
  await appendLine(parts, tx, { showId: ofTheService, type: 'account.password-changed', body, at });
  return beginSession(parts, tx, accountId);
}
