import type { Answer } from '../../shared/api.ts';
import type { Show } from './gate-types.ts';

type CurrentPhone = Answer<'/v1/phones/current'>;
type ShowBody = Pick<CurrentPhone['show'], 'id' | 'name' | 'timeZone' | 'kind'>;

export const showFrom = ({ id, name, timeZone, kind }: ShowBody): Show => ({
  ...{ id, name, timeZone },
  isPractice: kind === 'practice',
});

/** Of what a phone is told about itself; `undefined`: it is not the gate's. */
export function showOf(body: unknown): Show | undefined {
  const { role, show } = body as CurrentPhone;
  return role === 'gate' ? showFrom(show) : undefined;
}
