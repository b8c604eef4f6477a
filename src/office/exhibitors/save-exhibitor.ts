import { appendLine } from '../../ledger/index.ts';
import type { AppParts } from '../../platform/app-parts.ts';
import type { Transaction } from '../../platform/database.ts';
import { mustBeCurrent } from '../../platform/http/versions.ts';
import { problem } from '../../platform/problems/index.ts';
import { withoutUndefined } from '../schemas/common.ts';
import { dayDate } from '../show-time.ts';
import { lockShow } from '../store/locks.ts';
import { mustNotBeErased } from './erased.ts';
import {
  type ExhibitorBody,
  type ExhibitorChange,
  exhibitorOf,
  type NewExhibitor,
} from './exhibitor-schemas.ts';
import { tellNamesChanged } from './names-changed.ts';

type Born = { readonly bornOn: string | null };
const bornDate = ({ bornOn }: Born) => (bornOn === null ? null : dayDate(bornOn));

/** Throws not_found, invalid_request for someone born in the future. */
export async function addExhibitor(
  parts: AppParts,
  tx: Transaction,
  asked: NewExhibitor & { showId: string },
): Promise<ExhibitorBody> {
  const at = parts.clock.now();
  const { showId, name, spokenAs } = asked;
  mustBeBorn(asked, at);
  await lockShow(tx, showId);
  const row = await tx.prisma.exhibitor.create({
    data: { id: parts.ids.next(), showId, name, spokenAs, bornOn: bornDate(asked), createdAt: at },
  });
  await appendLine(parts, tx, { showId, type: 'exhibitor.created', body: { exhibitorId: row.id }, at });
  return exhibitorOf(row);
}

interface Change {
  readonly showId: string;
  readonly exhibitorId: string;
  readonly versionRead: number;
  readonly change: ExhibitorChange;
}

/** Throws not_found, exhibitor_erased, stale_version, invalid_request for someone born in the future. */
export async function changeExhibitor(
  parts: AppParts,
  tx: Transaction,
  asked: Change,
): Promise<ExhibitorBody> {
  const at = parts.clock.now();
  const { showId, exhibitorId, versionRead, change } = asked;
  await lockShow(tx, showId);
  const before = await tx.prisma.exhibitor.findFirst({ where: { id: exhibitorId, showId } });
  if (before === null) throw problem('not_found');
  mustNotBeErased(before);
  mustBeCurrent(before.version, versionRead);
  const after = { ...exhibitorOf(before), ...withoutUndefined(change) };
  mustBeBorn(after, at);
  const row = await tx.prisma.exhibitor.update({
    where: { id: exhibitorId },
    data: {
      ...{ name: after.name, spokenAs: after.spokenAs, bornOn: bornDate(after) },
      version: { increment: 1 },
    },
  });
  await tellNamesChanged(parts, tx, { showId, at });
  await appendLine(parts, tx, {
    showId,
    type: 'exhibitor.changed',
    body: { exhibitorId, version: row.version },
    at,
  });
  return exhibitorOf(row);
}

function mustBeBorn(exhibitor: Born, at: Date): void {
  const born = bornDate(exhibitor);
  if (born !== null && born > at) {
    throw problem('invalid_request', {
      errors: [{ field: '/bornOn', message: 'it must not be in the future' }],
    });
  }
}
