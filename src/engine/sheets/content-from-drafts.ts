/** A card as it is put together from what was written go by go: the same at the service and on the phone. */
import type { CardContent } from './card-types.ts';
import type { Go } from './types.ts';

export interface WrittenCard {
  /** Entered or checked in. */
  readonly going: ReadonlySet<string>;
  readonly goes: readonly { readonly classEntryId: string; readonly content: Go }[];
  readonly order: Pick<CardContent, 'ownOrder' | 'ranking'> | undefined;
}

/** A go that says nothing yet, or nothing any more. */
export const isBlank = (go: Go): boolean => Object.keys(go).length === 0;

/** A go that was written before its entry was scratched stays in the drafts and off the card. */
export function contentFromDrafts({ going, goes, order }: WrittenCard): CardContent {
  const written = goes.filter(({ classEntryId, content }) => going.has(classEntryId) && !isBlank(content));
  return {
    goes: Object.fromEntries(written.map(({ classEntryId, content }) => [classEntryId, content])),
    ...orderOfGoing(order ?? {}, going),
  };
}

/** The order without those who do not go any more; groups of one that are left of a tie are no tie. */
function orderOfGoing(
  { ownOrder, ranking }: Pick<CardContent, 'ownOrder' | 'ranking'>,
  going: ReadonlySet<string>,
): Pick<CardContent, 'ownOrder' | 'ranking'> {
  const keep = (groups: readonly (readonly string[])[], least: number) =>
    groups.map((group) => group.filter((entry) => going.has(entry))).filter((group) => group.length >= least);
  const ties = keep(ownOrder ?? [], 2);
  return {
    ...(ties.length === 0 ? {} : { ownOrder: ties }),
    ...(ranking === undefined ? {} : { ranking: keep(ranking, 1) }),
  };
}
