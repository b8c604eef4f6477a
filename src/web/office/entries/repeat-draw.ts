/** How anybody repeats a draw: here in the browser by the same engine, and elsewhere by one line of a shell. Pure. */
import { drawOrder } from '../../../engine/order-of-go/draw.ts';
import type { Answer } from '../../shared/api.ts';

export type Draw = Answer<'/v1/shows/{showId}/classes/{classId}/order-of-go/draws'>['items'][number];

export interface Drawn {
  readonly id: string;
  readonly backNumber: number;
  /** Whoever rides two horses: the draw keeps her goes apart. */
  readonly rider: string;
}

/**
 * `same`: the draw comes out as it is stored. `not-here`: an entry of it has left the class or its number since, so
 * it cannot be repeated with what is known now.
 */
export type Repeated = 'same' | 'differs' | 'not-here';

export function repeated({ seed, order, enoughGap }: Draw, entries: readonly Drawn[]): Repeated {
  if (seed === null) return 'not-here';
  const drawn = order.map((id) => entries.find((entry) => entry.id === id));
  const all = drawn.filter((entry) => entry !== undefined);
  if (all.length !== drawn.length) return 'not-here';
  const again = drawOrder({
    seed,
    entries: all.map(({ id, backNumber, rider }) => ({ id, rider, lotName: String(backNumber) })),
    ...(enoughGap === null ? {} : { enough: enoughGap }),
  });
  return again.order.every((id, index) => id === order[index]) ? 'same' : 'differs';
}

/** Prints each number behind its lot, the smallest lot first: the order in which the numbers are drawn. */
export function shellLine({ seed }: Pick<Draw, 'seed'>, backNumbers: readonly number[]): string {
  const numbers = backNumbers.toSorted((a, b) => a - b).join(' ');
  return `for n in ${numbers}; do printf '%s %s\\n' "$(printf '${seed}:%s' $n | sha256sum | cut -c1-64)" $n; done | sort`;
}
