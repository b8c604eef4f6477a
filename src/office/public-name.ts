/** What the public sees of an exhibitor's name. The only place that decides it. */

export const publicNameForms = ['full', 'first-name-and-initial', 'back-number'] as const;
export type PublicNameForm = (typeof publicNameForms)[number];

/** What a show may do with a child of whom the family said nothing: never the full name. */
export const minorNameForms = ['first-name-and-initial', 'back-number'] as const;
export type MinorNameForm = (typeof minorNameForms)[number];

export const consentGivers = ['exhibitor', 'parent', 'guardian'] as const;
export type ConsentGiver = (typeof consentGivers)[number];

export interface NamedExhibitor {
  readonly name: string;
  /** Calendar day `yyyy-mm-dd`; `null`: not known. */
  readonly bornOn: string | null;
  /** The form that the last consent names; `null`: none is recorded. */
  readonly publicName: PublicNameForm | null;
  /** Whose word it is; `null`: nobody's that is on record. */
  readonly consent: ConsentWord | null;
  /** Whose name was erased goes by back number for good. */
  readonly erased: boolean;
}

export interface ConsentWord {
  readonly givenBy: ConsentGiver;
  /** Calendar day `yyyy-mm-dd`. */
  readonly givenOn: string;
}

export interface NameSetting {
  readonly backNumber: number;
  /** How the show has minors' names shown where the family did not say. */
  readonly minorPublicName: MinorNameForm;
  /** First day of the show, `yyyy-mm-dd`: who is under 18 on it is a minor. */
  readonly firstDay: string;
  /** Entered in any youth class of the show: who is of unknown age is then taken for a minor, in every class. */
  readonly inYouthClass: boolean;
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
      return firstNameAndInitial(exhibitor.name) ?? backNumberOf(setting);
    case 'back-number':
      return backNumberOf(setting);
  }
}

/** At a home show the horse gives its rider away: who goes by back number alone goes without its name. */
export function showsHorse(exhibitor: NamedExhibitor, setting: NameSetting): boolean {
  switch (formOf(exhibitor, setting)) {
    case 'full':
      return true;
    case 'first-name-and-initial':
      return firstNameAndInitial(exhibitor.name) !== undefined;
    case 'back-number':
      return false;
  }
}

/**
 * How the name is spoken, as far as it is shown. Where that is "Ada K." the note would give the rest of the name away:
 * only its first word is left, and that only of a note that goes word for word ("AY-da KESS-ler").
 */
export function shownSpokenAs(
  exhibitor: NamedExhibitor,
  { spokenAs, ...setting }: NameSetting & { readonly spokenAs: string | null },
): string | null {
  if (spokenAs === null) return null;
  switch (formOf(exhibitor, setting)) {
    case 'full':
      return spokenAs;
    case 'first-name-and-initial':
      return firstSpokenWord(exhibitor.name, spokenAs);
    case 'back-number':
      return null;
  }
}

function firstSpokenWord(name: string, spokenAs: string): string | null {
  const [written, spoken] = [name.split(/\s+/u), spokenAs.split(/\s+/u)];
  return written.length > 1 && written.length === spoken.length ? (spoken[0] ?? null) : null;
}

/** Under 18 on that day, or of unknown age in a youth class. Both days are `yyyy-mm-dd`. */
export function isMinor(
  { bornOn }: Pick<NamedExhibitor, 'bornOn'>,
  { day, inYouthClass }: { readonly day: string; readonly inYouthClass: boolean },
): boolean {
  return bornOn === null ? inYouthClass : eighteenOn(bornOn) > day;
}

/**
 * Childhood ends with 18 years (Convention on the Rights of the Child, article 1; from memory). Compared as text:
 * who was born on 29 February 2008 is of age from 1 March 2026, since "2026-02-29" comes after the 28th.
 */
const eighteenOn = (bornOn: string): string => `${Number(bornOn.slice(0, 4)) + 18}${bornOn.slice(4)}`;

const backNumberOf = ({ backNumber }: NameSetting) => `No. ${backNumber}`;

function formOf(exhibitor: NamedExhibitor, setting: NameSetting): PublicNameForm {
  const { publicName: chosen, erased } = exhibitor;
  const { firstDay: day, inYouthClass, minorPublicName } = setting;
  if (erased) return 'back-number';
  if (!isMinor(exhibitor, { day, inYouthClass })) return chosen ?? 'full';
  if (chosen === null) return minorPublicName;
  return isBinding(exhibitor, setting) ? chosen : moreCareful(chosen, minorPublicName);
}

/**
 * A child's own word may hide more of the name and never show more. It is looked at again here, because a date of
 * birth may be put right, or a youth class entered, after the word was taken down.
 */
function isBinding({ bornOn, consent }: NamedExhibitor, { inYouthClass }: NameSetting): boolean {
  if (consent === null) return false;
  const { givenBy, givenOn: day } = consent;
  return givenBy !== 'exhibitor' || !isMinor({ bornOn }, { day, inYouthClass });
}

const moreCareful = (one: PublicNameForm, other: PublicNameForm): PublicNameForm =>
  publicNameForms.indexOf(one) > publicNameForms.indexOf(other) ? one : other;

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
