/** What an erased exhibitor is called in the office, and what can no longer be done with the record. */
import { problem } from '../../platform/problems/index.ts';

export const erasedName = 'Name erased';

/** Throws exhibitor_erased. */
export function mustNotBeErased({ erasedAt }: { readonly erasedAt: Date | null }): void {
  if (erasedAt !== null) throw problem('exhibitor_erased');
}
