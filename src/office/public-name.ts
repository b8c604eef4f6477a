/** What the public sees of an exhibitor's name. The only place that decides it. */
import { DateTime } from 'luxon';

export const publicNameForms = ['full', 'first-name-and-initial', 'back-number'] as const;
export type PublicNameForm = (typeof publicNameForms)[number];

export interface NamedExhibitor {
  readonly name: string;
  /** Calendar day `yyyy-mm-dd`; `null`: not known. */
  readonly bornOn: string | null;
  /** What the exhibitor or the family chose; `null`: not said. */
  readonly publicName: PublicNameForm | null;
}

export interface NameSetting {
  readonly backNumber: number;
  /** How the show has minors' names shown where the family did not say. */
  readonly minorPublicName: PublicNameForm;
  /** First day of the show, `yyyy-mm-dd`: who is under 18 on it is a minor. */
  readonly firstDay: string;
  /** An exhibitor of unknown age in a youth class is taken for a minor. */
  readonly youthClass: boolean;
}

/**
 * The family's choice goes before all; else a minor is shown as the show says, and an adult by full name.
 * Shows: the full name, "Ada K.", or "No. 214".
 */
export function publicName(exhibitor: NamedExhibitor, setting: NameSetting): string {
  switch (formOf(exhibitor, setting)) {
    case 'full':
      return exhibitor.name;
    case 'first-name-and-initial':
      return firstNameAndInitial(exhibitor.name) ?? `No. ${setting.backNumber}`;
    case 'back-number':
      return `No. ${setting.backNumber}`;
  }
}

/** At a home show the horse gives its rider away: who goes by back number alone goes without its name. */
export function showsHorse(exhibitor: NamedExhibitor, setting: NameSetting): boolean {
  return formOf(exhibitor, setting) !== 'back-number';
}

const formOf = (exhibitor: NamedExhibitor, setting: NameSetting): PublicNameForm =>
  exhibitor.publicName ?? (isMinor(exhibitor, setting) ? setting.minorPublicName : 'full');

function isMinor({ bornOn }: NamedExhibitor, { firstDay, youthClass }: NameSetting): boolean {
  if (bornOn === null) return youthClass;
  return DateTime.fromISO(bornOn).plus({ years: 18 }) > DateTime.fromISO(firstDay);
}

const segmenter = new Intl.Segmenter(undefined, { granularity: 'grapheme' });

/** "Ada Mae Kessler" is "Ada K."; `undefined` where the name is one word and nothing can be held back. */
function firstNameAndInitial(name: string): string | undefined {
  const words = name.split(/\s+/u);
  const first = words[0];
  const last = words.at(-1);
  if (words.length < 2 || first === undefined || last === undefined) return undefined;
  const [initial] = segmenter.segment(last);
  return initial === undefined ? undefined : `${first} ${initial.segment}.`;
}
