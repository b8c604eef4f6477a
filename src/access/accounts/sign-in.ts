/**
 * Signing in by name, password and one-time code. No such name, wrong password, wrong code: the answer is the same, and
 * so is the work, down to the line in the ledger, so that neither words nor time tell who has an account or which of the
 * three was right (OWASP ASVS 5.0, 6.3.8).
 */
import { ofTheService } from '../../evidence/index.ts';
import type { AppParts } from '../../platform/app-parts.ts';
import { inSqlTransaction, type SqlTransaction } from '../../platform/database.ts';
import { problem } from '../../platform/problems/index.ts';
import { beginSession } from './begin-session.ts';
import {
  accountBySignIn,
  type GuardedAccount,
  keepFactors,
  lockAccount,
  mustNotBeSlowed,
  tellFailure,
} from './guarded-account.ts';
import type { GuessesOfStrangers } from './guesses-of-strangers.ts';
import { newSecret, stepOfCode } from './one-time-code.ts';
import { isPassword } from './password-hash.ts';
import { unseal } from './sealed-secret.ts';
import type { BegunSession, TypedSignIn } from './session-schemas.ts';

interface SignInParts {
  readonly parts: AppParts;
  readonly strangers: GuessesOfStrangers;
}

/** Throws sign_in_refused, sign_in_slowed. */
export async function signIn({ parts, strangers }: SignInParts, typed: TypedSignIn): Promise<BegunSession> {
  const at = parts.clock.now();
  const found = await accountBySignIn(parts.db.sql, typed.signIn);
  mustNotBeSlowed(found ?? strangers.of(typed.signIn), at);
  const passwordFits = await isPassword(typed.password, found?.passwordHash ?? null);
  const begun = await inSqlTransaction(parts.db, (tx) =>
    decide(parts, tx, { found, passwordFits, code: typed.totpCode, at }),
  );
  if (begun !== undefined) return begun;
  if (found === undefined) strangers.fail(typed.signIn, at);
  throw problem('sign_in_refused');
}

interface Guess {
  /** As it stood when the password was checked. */
  readonly found: GuardedAccount | undefined;
  readonly passwordFits: boolean;
  readonly code: string;
  readonly at: Date;
}

/** The session, or `undefined`: the failure is counted and told, and must be committed. */
async function decide(
  parts: AppParts,
  tx: SqlTransaction,
  { found, passwordFits, code, at }: Guess,
): Promise<BegunSession | undefined> {
  const account = await lockAccount(tx, found?.id ?? ofTheService);
  if (account !== undefined) mustNotBeSlowed(account, at);
  const step = stepFor(parts, { account, code, at });
  const isUnchanged = account !== undefined && account.passwordHash === found?.passwordHash;
  if (!passwordFits || !isUnchanged || step === undefined) {
    await tellFailure(parts, tx, { account, at });
    return undefined;
  }
  await keepFactors(tx, { ...account, totpLastStep: step });
  return beginSession(parts, tx, account.id);
}

const secretOfNobody = newSecret();

function stepFor(
  { tokenKey }: AppParts,
  { account, code, at }: Pick<Guess, 'code' | 'at'> & { readonly account: GuardedAccount | undefined },
): number | undefined {
  const sealed = account?.totpSecret;
  const opened = sealed && unseal(sealed, { tokenKey, accountId: account.id });
  const step = stepOfCode({
    secret: opened || secretOfNobody,
    ...{ code, at, lastStep: account?.totpLastStep ?? null },
  });
  return opened ? step : undefined;
}
