/** The word that holds: the consent that was recorded last. */
import type { Prisma } from '../../platform/generated/prisma/client.ts';
import type { NamedExhibitor } from '../public-name.ts';
import { dayText } from '../show-time.ts';
import { publicNameFormOf } from '../shows/show-schemas.ts';
import { consentBody } from './consent-schemas.ts';

/** `include` of an exhibitor for `namedOf`. */
export const withLastConsent = {
  consents: {
    orderBy: [{ recordedAt: 'desc' }, { id: 'desc' }],
    take: 1,
    select: { givenBy: true, givenOn: true },
  },
} satisfies Prisma.ExhibitorInclude;

interface StoredName {
  readonly name: string;
  readonly bornOn: Date | null;
  readonly publicName: string | null;
  readonly erasedAt: Date | null;
  readonly consents: readonly { readonly givenBy: string; readonly givenOn: Date }[];
}

const { givenBy } = consentBody.shape;

export function namedOf({ name, bornOn, publicName, erasedAt, consents }: StoredName): NamedExhibitor {
  const last = consents[0];
  return {
    name,
    bornOn: bornOn === null ? null : dayText(bornOn),
    publicName: publicName === null ? null : publicNameFormOf(publicName),
    consent:
      last === undefined ? null : { givenBy: givenBy.parse(last.givenBy), givenOn: dayText(last.givenOn) },
    erased: erasedAt !== null,
  };
}
