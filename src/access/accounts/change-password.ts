import { ofTheService } from '../../evidence/index.ts';
import { appendLine } from '../../ledger/index.ts';
import type { AppParts } from '../../platform/app-parts.ts';
import { inSqlTransaction, type SqlTransaction } from '../../platform/database.ts';
import { problem } from '../../platform/problems/index.ts';
import type { Office } from '../actor.ts';
import { beginSession } from './begin-session.ts';
import { endSessionsOf } from './end-sessions.ts';
import {
  accountById,
  type GuardedAccount,
  keepFactors,
  lockAccount,
  mustNotBeSlowed,
  tellFailure,
} from './guarded-account.ts';
import { hashPassword, isPassword } from './password-hash.ts';
import { mustBeUncommon } from './password-strength.ts';
import type { BegunSession, PasswordChange } from './session-schemas.ts';

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
  const { id: accountId, passwordHash } = account;
  const isRight = await isPassword(currentPassword, passwordHash);
  const newHash = isRight ? await hashOfUncommon(newPassword, account) : undefined;
  const change = { accountId, passwordHash, newHash };
  const begun = await inSqlTransaction(parts.db, (tx) => decide(parts, tx, change));
  if (begun !== undefined) return begun;
  const message = 'it is not the password of this account';
  throw problem('password_wrong', { errors: [{ field: '/currentPassword', message }] });
}

/** Throws password_too_common. */
async function hashOfUncommon(newPassword: string, { name, signIn }: GuardedAccount): Promise<string> {
  await mustBeUncommon(newPassword, { field: '/newPassword', known: [name, signIn] });
  return hashPassword(newPassword);
}

interface CheckedChange {
  readonly accountId: string;
  /** What the present password was checked against. */
  readonly passwordHash: string | null;
  /** `undefined`: it was not the present password. */
  readonly newHash: string | undefined;
}

/** The new session, or `undefined`: the failure is counted and told, and must be committed. */
async function decide(
  parts: AppParts,
  tx: SqlTransaction,
  { accountId, passwordHash, newHash }: CheckedChange,
): Promise<BegunSession | undefined> {
  const at = parts.clock.now();
  const account = await lockAccount(tx, accountId);
  if (account === undefined) throw new Error('an account was removed');
  mustNotBeSlowed(account, at);
  if (newHash === undefined || account.passwordHash !== passwordHash) {
    await tellFailure(parts, tx, { account, at });
    return undefined;
  }
  await keepFactors(tx, { ...account, passwordHash: newHash });
  await endSessionsOf(parts, tx, { accountId, why: 'password-changed', at });
  const body = { accountId };
  await appendLine(parts, tx, { showId: ofTheService, type: 'account.password-changed', body, at });
  return beginSession(parts, tx, accountId);
}
