/** Who is in a class, as everyone may see it: the names in their public form. */
import type { Transaction } from '../../platform/database.ts';
import type { ClassEntryStatus } from '../class-entries/status.ts';
import { namedOf, withLastConsent } from '../consents/last-consent.ts';
import { inYouthClasses } from '../consents/youth.ts';
import { publicName, showsHorse } from '../public-name.ts';
import { dayText } from '../show-time.ts';
import { minorNameFormOf } from '../shows/show-schemas.ts';

export interface PublicEntry {
  readonly classEntryId: string;
  readonly goPosition: number | null;
  readonly backNumber: number;
  /** In its public form. */
  readonly exhibitor: string;
  /** `null`: not public either. */
  readonly horse: string | null;
  readonly status: ClassEntryStatus;
}

/** In the order of go, those not drawn last by back number; without those who were moved to another class. */
export async function publicEntries(
  tx: Pick<Transaction, 'prisma'>,
  classId: string,
): Promise<PublicEntry[]> {
  const rows = await tx.prisma.classEntry.findMany({
    where: { classId, status: { not: 'moved' } },
    include: {
      entry: { include: { exhibitor: { include: withLastConsent }, horse: { select: { name: true } } } },
      show: { select: { minorPublicName: true, firstDay: true } },
    },
    orderBy: [{ goPosition: { sort: 'asc', nulls: 'last' } }, { entry: { backNumber: 'asc' } }],
  });
  const ofUnknownAge = rows.filter(({ entry }) => entry.exhibitor.bornOn === null);
  const young = await inYouthClasses(
    tx,
    ofUnknownAge.map(({ entry }) => entry.exhibitorId),
  );
  return rows.map(({ id, goPosition, status, entry, show }) => {
    const setting = {
      backNumber: entry.backNumber,
      minorPublicName: minorNameFormOf(show.minorPublicName),
      firstDay: dayText(show.firstDay),
      inYouthClass: young.has(entry.exhibitorId),
    };
    const exhibitor = namedOf(entry.exhibitor);
    return {
      ...{ classEntryId: id, goPosition, backNumber: entry.backNumber },
      exhibitor: publicName(exhibitor, setting),
      horse: showsHorse(exhibitor, setting) ? entry.horse.name : null,
      status: status as ClassEntryStatus,
    };
  });
}
