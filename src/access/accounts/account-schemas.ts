/** What is asked of, and heard about, accounts of the office. No hash, secret or code of an account is among it. */
import { z } from 'zod';
import { id } from '../../platform/http/id.ts';
import { nameText } from '../../platform/http/text.ts';
import { duties } from '../actor.ts';

const instant = z.iso.datetime();
export const accountParams = z.object({ accountId: id });

const duty = z
  .enum(duties)
  .describe(
    'manager: also looks after accounts. secretary: the show office. points-secretary: reads there, and keeps the points.',
  );
const name = nameText.describe('As colleagues know the person.');
const wholeService = z.boolean().describe('May it work at every show? Otherwise only at those of "showIds".');
const showIds = z.array(id).max(200).describe('The shows at which it may work; empty for the whole service.');

export const signInName = z
  .string()
  .trim()
  .toLowerCase()
  .regex(
    /^[a-z0-9]([a-z0-9._@+-]{0,98}[a-z0-9])?$/,
    'it must have 1 to 100 letters a to z, digits, or . _ @ + - between them',
  )
  .describe('What is typed to sign in; small letters. No two are the same, and it stays.');

/** Does it say where the account may work, and only once? */
export function reachFault(reach: {
  readonly wholeService: boolean;
  readonly showIds: readonly string[];
}): string | undefined {
  const { wholeService: whole, showIds: shows } = reach;
  if (whole && shows.length > 0) return 'an account of the whole service names no shows';
  if (!whole && shows.length === 0) return 'name at least one show, or the whole service';
  return undefined;
}

export const newAccount = z
  .strictObject({
    name,
    signIn: signInName,
    duty,
    wholeService: wholeService.default(false),
    showIds: showIds.default([]),
  })
  .superRefine((asked, { addIssue }) => {
    const message = reachFault(asked);
    if (message !== undefined) addIssue({ code: 'custom', path: ['showIds'], message });
  });
export type NewAccount = z.output<typeof newAccount>;

export const accountChange = z
  .strictObject({
    name: name.optional(),
    duty: duty.optional(),
    wholeService: wholeService.optional(),
    showIds: showIds.optional(),
  })
  .refine((change) => Object.keys(change).length > 0, 'name at least one field to change');
export type AccountChange = z.output<typeof accountChange>;

export const accountStates = ['invited', 'set-up-ended', 'active', 'closed'] as const;

export const accountBody = z
  .strictObject({
    id,
    name: z.string(),
    signIn: z.string(),
    duty,
    wholeService,
    showIds: z.array(id),
    state: z
      .enum(accountStates)
      .describe(
        'invited: the set-up code is out. set-up-ended: it was not used in time; reset the account for a new one.',
      ),
    createdAt: instant,
    closedAt: instant.nullable(),
    version: z.int(),
  })
  .meta({ id: 'Account' });
export type AccountBody = z.output<typeof accountBody>;

export const invitedBody = z.strictObject({
  account: accountBody,
  setupCode: z
    .string()
    .describe('Hand it to the person, and to nobody else. Good once; shown once; it is not kept.'),
  setupEndsAt: instant,
});
export type Invited = z.output<typeof invitedBody>;
