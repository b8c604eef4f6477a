/** Every entry of a show as everyone may see it: what a name is looked up in, so that nothing hidden can be found. */
import type { Transaction } from '../../platform/database.ts';
import { namedOf, withLastConsent } from '../consents/last-consent.ts';
import { inYouthClasses } from '../consents/youth.ts';
import { publicName, showsHorse } from '../public-name.ts';
import { dayText } from '../show-time.ts';
import { minorNameFormOf } from '../shows/show-schemas.ts';

export interface ShowEntry {
  readonly entryId: string;
  readonly backNumber: number;
  /** In its public form: "Ada Kessler", "Ada K.", "No. 214". */
  readonly exhibitor: string;
  /** `null`: not public either. */
  readonly horse: string | null;
  /** false: the public form is the back number alone. */
  readonly isNamed: boolean;
}

/** By back number. */
export async function publicEntriesOfShow(
  tx: Pick<Transaction, 'prisma'>,
  showId: string,
): Promise<ShowEntry[]> {
  const rows = await tx.prisma.entry.findMany({
    where: { showId },
    include: {
      exhibitor: { include: withLastConsent },
      horse: { select: { name: true } },
      show: { select: { minorPublicName: true, firstDay: true } },
    },
    orderBy: { backNumber: 'asc' },
  });
  const ofUnknownAge = rows.filter(({ exhibitor }) => exhibitor.bornOn === null);
  const young = await inYouthClasses(
    tx,
    ofUnknownAge.map(({ exhibitorId }) => exhibitorId),
  );
  return rows.map(({ id: entryId, backNumber, exhibitorId, exhibitor: who, horse, show }) => {
    const setting = {
      backNumber,
      minorPublicName: minorNameFormOf(show.minorPublicName),
      firstDay: dayText(show.firstDay),
      inYouthClass: young.has(exhibitorId),
    };
    const named = namedOf(who);
    const isNamed = showsHorse(named, setting);
    const exhibitor = publicName(named, setting);
    return { entryId, backNumber, exhibitor, horse: isNamed ? horse.name : null, isNamed };
  });
}
