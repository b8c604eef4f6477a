/** The account behind a guess: what it is checked against, and what a failure costs. */
import { ofTheService } from '../../evidence/index.ts';
import { appendLine } from '../../ledger/index.ts';
import type { AppParts } from '../../platform/app-parts.ts';
import type { SqlTransaction } from '../../platform/database.ts';
import { problem } from '../../platform/problems/index.ts';
import type { Sql, Statement } from '../../platform/sql.ts';
import { afterFailure, type Guesses, secondsToWait } from './slowed-guessing.ts';

export interface GuardedAccount extends Guesses {
  readonly id: string;
  readonly name: string;
  readonly signIn: string;
  /** `null`: not set up, or closed. */
  readonly passwordHash: string | null;
  /** Sealed. */
  readonly totpSecret: string | null;
  readonly totpLastStep: number | null;
}

const columns = `id, name, sign_in AS "signIn", password_hash AS "passwordHash", totp_secret AS "totpSecret",
  totp_last_step::double precision AS "totpLastStep", failed_sign_ins AS failures, slowed_until AS "slowedUntil"`;
const bySignIn: Statement = {
  name: 'accounts.by-sign-in',
  text: `SELECT ${columns} FROM account WHERE sign_in = $1`,
};
const byId: Statement = {
  name: 'accounts.by-id',
  text: `SELECT ${columns} FROM account WHERE id = $1::uuid`,
};
const lockById: Statement = {
  name: 'accounts.lock-by-id',
  text: `SELECT ${columns} FROM account WHERE id = $1::uuid FOR NO KEY UPDATE`,
};
const setGuesses: Statement = {
  name: 'accounts.set-guesses',
  text: 'UPDATE account SET failed_sign_ins = $2, slowed_until = $3 WHERE id = $1::uuid',
};
const setFactors: Statement = {
  name: 'accounts.set-factors',
  text: `UPDATE account SET password_hash = $2, totp_last_step = $3, failed_sign_ins = 0, slowed_until = NULL
         WHERE id = $1::uuid`,
};

export const accountBySignIn = (sql: Sql, signIn: string): Promise<GuardedAccount | undefined> =>
  sql.row<GuardedAccount>(bySignIn, [signIn]);
export const accountById = (sql: Sql, id: string): Promise<GuardedAccount | undefined> =>
  sql.row<GuardedAccount>(byId, [id]);
/** Guesses at one account queue up here, so that many at once are no more than many in a row. */
export const lockAccount = (tx: SqlTransaction, id: string): Promise<GuardedAccount | undefined> =>
  tx.sql.row<GuardedAccount>(lockById, [id]);

/** Throws sign_in_slowed with the seconds that are left. */
export function mustNotBeSlowed(guesses: Guesses, at: Date): void {
  const seconds = secondsToWait(guesses, at);
  if (seconds === 0) return;
  throw problem('sign_in_slowed', {
    detail: `Wait ${seconds} seconds.`,
    headers: { 'retry-after': String(seconds) },
  });
}

/** The failure counts, and is told in the ledger: by the id of the account, or by nothing at all, never by what was typed. */
export async function tellFailure(
  parts: AppParts,
  tx: SqlTransaction,
  { account, at }: { readonly account: GuardedAccount | undefined; readonly at: Date },
): Promise<void> {
  const { failures, slowedUntil } = afterFailure(account ?? { failures: 0 }, at);
  await tx.sql.rows(setGuesses, [account?.id ?? ofTheService, failures, slowedUntil]);
  const body = { accountId: account?.id ?? null };
  await appendLine(parts, tx, { showId: ofTheService, type: 'session.refused', body, at });
}

/** What was right: the step of its code is used up, a new password takes the place of the old, failures are forgotten. */
export async function keepFactors(
  tx: SqlTransaction,
  { id, passwordHash, totpLastStep }: Pick<GuardedAccount, 'id' | 'passwordHash' | 'totpLastStep'>,
): Promise<void> {
  await tx.sql.rows(setFactors, [id, passwordHash, totpLastStep]);
}
