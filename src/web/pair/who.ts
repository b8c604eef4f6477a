/** What a paired phone is, in words. */

/** As far as the page shows it: what `GET /v1/phones/current` answers. */
export interface PhoneView {
  readonly role: 'judge' | 'scribe' | 'gate';
  /** E.g. "Ring 2 gate". */
  readonly label: string | null;
  /** The judge, or the judge that the scribe writes for; `null`: the gate. */
  readonly judge: { readonly name: string } | null;
  readonly show: { readonly name: string; readonly kind: 'official' | 'practice' };
  readonly seats: readonly SeatView[];
}

export interface SeatView {
  /** Of the class. */
  readonly number: number;
  readonly name: string;
  /** Of the class. */
  readonly state: string;
  readonly withdrawn: boolean;
  /** `null`: the card is not signed. */
  readonly signedRevision: number | null;
}

/** "This phone is Judge Ada Example's" */
export function whoInWords({ role, judge, label }: PhoneView): string {
  const name = judge?.name ?? 'nobody';
  switch (role) {
    case 'judge':
      return `This phone is Judge ${name}’s`;
    case 'scribe':
      return `This phone writes for Judge ${name}`;
    case 'gate':
      return `This phone is at the gate${label === null ? '' : `: ${label}`}`;
  }
}

/** "for practice: Windrow Creek Autumn Show" */
export const showInWords = ({ show: { name, kind } }: PhoneView): string =>
  kind === 'practice' ? `for practice: ${name}` : `for ${name}`;

export function whatForInWords({ role }: PhoneView): string {
  switch (role) {
    case 'judge':
      return 'Cards are written and signed on it.';
    case 'scribe':
      return 'It enters what the judge calls; only the judge’s own phone signs.';
    case 'gate':
      return 'It calls classes and marks who does not come.';
  }
}

const states: Readonly<Record<string, string>> = {
  'setting-up': 'being set up',
  drawn: 'the order of go is drawn',
  called: 'called to the ring',
  'under-way': 'under way',
  'cards-in': 'all cards are in',
  provisional: 'posted, not yet official',
  official: 'official',
  corrected: 'official, corrected',
  cancelled: 'cancelled',
  combined: 'combined into another class',
};

/** "under way; the card is signed". A state that this page does not know yet is shown as the service spells it. */
export function seatInWords({ state, withdrawn, signedRevision }: SeatView): string {
  if (withdrawn) return 'this judge left the panel';
  const ofClass = states[state] ?? state.replaceAll('-', ' ');
  return signedRevision === null ? ofClass : `${ofClass}; the card is signed`;
}
