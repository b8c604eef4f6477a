/** What a component reads out of signals, so that it is made again only when this, and not all that it came from, changes. */
import { computed } from '@preact/signals';
import { useMemo, useRef } from 'preact/hooks';

/** `inputs`: what `compute` uses beside signals; another one is another computation. */
export const useDerived = <Value>(compute: () => Value, inputs: readonly unknown[]): Value =>
  useMemo(() => computed(compute), inputs).value;

/** The object of before, as long as `sameAs` tells that nothing that matters has changed. */
export function useSame<Value>(value: Value, sameAs: (value: Value) => string): Value {
  const kept = useRef<{ readonly value: Value; readonly text: string } | null>(null);
  if (kept.current?.value === value) return value;
  const text = sameAs(value);
  if (kept.current === null || kept.current.text !== text) kept.current = { value, text };
  return kept.current.value;
}
