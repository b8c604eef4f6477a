/** What a paired phone is, in words. */
import type { Answer } from '../shared/api.ts';
import type { Words } from '../shared/words.tsx';

type CurrentPhone = Answer<'/v1/phones/current'>;

/** As far as the page shows it. */
export type PhoneView = Pick<CurrentPhone, 'role' | 'label' | 'seats'> & {
  readonly judge: Pick<NonNullable<CurrentPhone['judge']>, 'name'> | null;
  readonly show: Pick<CurrentPhone['show'], 'name' | 'kind'>;
};

export type SeatView = Pick<
  CurrentPhone['seats'][number],
  'seatId' | 'number' | 'name' | 'withdrawn' | 'signedRevision'
> & { readonly state: string };

/** "This phone is Judge Ada Example's" */
export function whoInWords(
  { role, judge, label }: Pick<PhoneView, 'role' | 'judge' | 'label'>,
  { t }: Words,
): string {
  if (role !== 'gate') return t(`pair-who-${role}`, { name: judge?.name ?? '' });
  return label === null ? t('pair-who-gate') : t('pair-who-gate-called', { label });
}

/** "for practice: Windrow Creek Autumn Show" */
export const showInWords = ({ show: { name, kind } }: Pick<PhoneView, 'show'>, { t }: Words): string =>
  kind === 'practice' ? t('pair-for-practice', { show: name }) : t('pair-for', { show: name });

/** "under way; the card is signed". A state that this page does not know yet is shown as the service spells it. */
export function seatInWords(
  { state, withdrawn, signedRevision }: Pick<SeatView, 'state' | 'withdrawn' | 'signedRevision'>,
  { t, find }: Words,
): string {
  if (withdrawn) return t('pair-seat-left');
  const ofClass = find(`shared-state-${state}`) ?? state.replaceAll('-', ' ');
  return signedRevision === null ? ofClass : t('pair-seat-signed', { state: ofClass });
}
