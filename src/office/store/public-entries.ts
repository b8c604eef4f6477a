/** Who is in a class, as everyone may see it: the names in their public form. */
import type { Transaction } from '../../platform/database.ts';
import type { ClassEntryStatus } from '../class-entries/status.ts';
import { namedOf, withLastConsent } from '../consents/last-consent.ts';
import { inYouthClasses } from '../consents/youth.ts';
import { publicName, shownSpokenAs, showsHorse } from '../public-name.ts';
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
  const rows = await namedEntries(tx, classId);
  return rows.map(({ row, exhibitor, setting }) => ({
    ...{ classEntryId: row.id, goPosition: row.goPosition, backNumber: setting.backNumber },
    exhibitor: publicName(exhibitor, setting),
    horse: showsHorse(exhibitor, setting) ? row.entry.horse.name : null,
    status: row.status as ClassEntryStatus,
  }));
}

/** How names are spoken, for the announcer alone: as much of it as is shown of the name. */
export interface SpokenNote {
  readonly classEntryId: string;
  readonly spokenAs: string | null;
  readonly horseSpokenAs: string | null;
}

/** In the order of `publicEntries`. */
export async function spokenNotes(tx: Pick<Transaction, 'prisma'>, classId: string): Promise<SpokenNote[]> {
  const rows = await namedEntries(tx, classId);
  return rows.map(({ row, exhibitor, setting }) => ({
    classEntryId: row.id,
    spokenAs: shownSpokenAs(exhibitor, { ...setting, spokenAs: row.entry.exhibitor.spokenAs }),
    horseSpokenAs: showsHorse(exhibitor, setting) ? row.entry.horse.spokenAs : null,
  }));
}

/** Each class entry with its exhibitor, and what decides how her name is shown. */
async function namedEntries(tx: Pick<Transaction, 'prisma'>, classId: string) {
  const rows = await tx.prisma.classEntry.findMany({
    where: { classId, status: { not: 'moved' } },
    include: {
      entry: {
        include: {
          exhibitor: { include: withLastConsent },
          horse: { select: { name: true, spokenAs: true } },
        },
      },
      show: { select: { minorPublicName: true, firstDay: true } },
    },
    orderBy: [{ goPosition: { sort: 'asc', nulls: 'last' } }, { entry: { backNumber: 'asc' } }],
  });
  const ofUnknownAge = rows.filter(({ entry }) => entry.exhibitor.bornOn === null);
  const young = await inYouthClasses(
    tx,
    ofUnknownAge.map(({ entry }) => entry.exhibitorId),
  );
  return rows.map((row) => ({
    row,
    exhibitor: namedOf(row.entry.exhibitor),
    setting: {
      backNumber: row.entry.backNumber,
      minorPublicName: minorNameFormOf(row.show.minorPublicName),
      firstDay: dayText(row.show.firstDay),
      inYouthClass: young.has(row.entry.exhibitorId),
    },
  }));
}
