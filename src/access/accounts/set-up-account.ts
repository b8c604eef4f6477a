/** Setting an account up with its one-time code: first the second factor is handed out, then both are shown to work. */
import { ofTheService } from '../../evidence/index.ts';
import { appendLine } from '../../ledger/index.ts';
import type { AppParts } from '../../platform/app-parts.ts';
import { inTransaction, type Transaction } from '../../platform/database.ts';
import type { Account } from '../../platform/generated/prisma/client.ts';
import { problem } from '../../platform/problems/index.ts';
import { qrSvg } from '../qr-code.ts';
import { dutyOf, queueForAccounts } from './account-record.ts';
import { beginSession } from './begin-session.ts';
import { newSecret, secretUri, stepOfCode } from './one-time-code.ts';
import { hashPassword } from './password-hash.ts';
import { mustBeUncommon } from './password-strength.ts';
import { seal, unseal } from './sealed-secret.ts';
import type { BegunSession, BegunSetup, SetupCompletion } from './session-schemas.ts';
import { hashOfSetupCode } from './setup-code.ts';

/** Asked again with the same code it answers the same: what was scanned stays good. Throws setup_code_invalid. */
export async function beginSetup(parts: AppParts, setupCode: string): Promise<BegunSetup> {
  const { account, secret } = await inTransaction(parts.db, async (tx) => {
    await queueForAccounts(tx);
    const found = await accountOfCode(parts, tx, setupCode);
    return { account: found, secret: secretOf(parts, found) ?? (await handOutSecret(parts, tx, found)) };
  });
  const { name, signIn, duty } = account;
  const uri = secretUri(secret, signIn);
  return { name, signIn, duty: dutyOf(duty), totp: { secret, uri, qrSvg: await qrSvg(uri) } };
}

/**
 * Sets password and second factor, uses the code up, and signs in. Throws setup_code_invalid, setup_not_begun,
 * password_too_common, totp_code_wrong.
 */
export async function completeSetup(parts: AppParts, asked: SetupCompletion): Promise<BegunSession> {
  const { setupCode, password, totpCode } = asked;
  const { name, signIn } = await accountOfCode(parts, parts.db, setupCode);
  await mustBeUncommon(password, { field: '/password', known: [name, signIn] });
  const passwordHash = await hashPassword(password);
  return inTransaction(parts.db, async (tx) => {
    await queueForAccounts(tx);
    const at = parts.clock.now();
    const account = await accountOfCode(parts, tx, setupCode);
    const totpLastStep = BigInt(mustBeCodeOf(parts, account, { code: totpCode, at }));
    await tx.prisma.account.update({
      where: { id: account.id },
      data: {
        ...{ passwordHash, totpLastStep, setupHash: null, setupEndsAt: null },
        ...{ failedSignIns: 0, slowedUntil: null, version: { increment: 1 } },
      },
    });
    const body = { accountId: account.id };
    await appendLine(parts, tx, { showId: ofTheService, type: 'account.set-up', body, at });
    return beginSession(parts, tx, account.id);
  });
}

async function accountOfCode(
  { clock }: AppParts,
  tx: Pick<Transaction, 'prisma'>,
  setupCode: string,
): Promise<Account> {
  const account = await tx.prisma.account.findUnique({ where: { setupHash: hashOfSetupCode(setupCode) } });
  const endsAt = account?.setupEndsAt ?? null;
  if (account === null || endsAt === null || endsAt <= clock.now()) throw problem('setup_code_invalid');
  return account;
}

function secretOf({ tokenKey }: AppParts, { id: accountId, totpSecret }: Account): string | undefined {
  return totpSecret === null ? undefined : unseal(totpSecret, { tokenKey, accountId });
}

async function handOutSecret({ tokenKey }: AppParts, tx: Transaction, { id }: Account): Promise<string> {
  const secret = newSecret();
  const totpSecret = seal(secret, { tokenKey, accountId: id });
  await tx.prisma.account.update({ where: { id }, data: { totpSecret } });
  return secret;
}

/** The step of the code. Throws setup_not_begun, totp_code_wrong. */
function mustBeCodeOf(
  parts: AppParts,
  account: Account,
  typed: { readonly code: string; readonly at: Date },
): number {
  const secret = secretOf(parts, account);
  if (secret === undefined) throw problem('setup_not_begun');
  const step = stepOfCode({ secret, ...typed, lastStep: null });
  if (step !== undefined) return step;
  const message = 'it is not what the app shows now';
  throw problem('totp_code_wrong', { errors: [{ field: '/totpCode', message }] });
}
