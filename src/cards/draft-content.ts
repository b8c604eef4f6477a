/** The card as it is put together from what was saved go by go, and how it differs from what a phone sends whole. */

import type { CardContent } from '../engine/sheets/card-types.ts';
import { contentFromDrafts as contentOfGoing } from '../engine/sheets/content-from-drafts.ts';
import { scoreGo } from '../engine/sheets/score-go.ts';
import type { Go } from '../engine/sheets/types.ts';
import { isGoing } from '../office/index.ts';
import { sameContent } from '../platform/canonical-json.ts';
import type { CardRecord, Draft, DraftGo, EntryRecord } from './card-record.ts';
import type { CardOrder } from './card-schemas.ts';

export interface DraftParts {
  readonly entries: readonly EntryRecord[];
  readonly goes: readonly DraftGo[];
  readonly order: Draft<CardOrder> | undefined;
}

export function contentFromDrafts({ entries, goes, order }: DraftParts): CardContent {
  const going = new Set(entries.filter(({ status }) => isGoing(status)).map(({ id }) => id));
  return contentOfGoing({ going, goes, order: order?.content });
}

export type Difference =
  | { readonly classEntryId: string; readonly draft: Go; readonly sent: Go | null }
  | {
      readonly part: 'ownOrder' | 'ranking';
      readonly draft: readonly (readonly string[])[];
      readonly sent: readonly (readonly string[])[] | null;
    };

/**
 * What was saved and is not what the phone sent. A go that only the phone has is no difference: it had not
 * come in yet. A go that only the draft has is one: the judge would sign without it.
 */
export function differencesFromDraft(draft: CardContent, sent: CardContent): Difference[] {
  const goes = Object.entries(draft.goes).flatMap(([classEntryId, go]): Difference[] => {
    const other = sent.goes[classEntryId] ?? null;
    return sameContent(go, other) ? [] : [{ classEntryId, draft: go, sent: other }];
  });
  const orders = (['ownOrder', 'ranking'] as const).flatMap((part): Difference[] => {
    const saved = draft[part];
    if (saved === undefined || sameContent(saved, sent[part] ?? null)) return [];
    return [{ part, draft: saved, sent: sent[part] ?? null }];
  });
  return [...goes, ...orders];
}

/** The goes on which nothing is missing or wrong. */
export function finishedGoes(
  { sheet, maneuvers }: Pick<CardRecord, 'sheet' | 'maneuvers'>,
  goes: CardContent['goes'],
): CardContent['goes'] {
  return Object.fromEntries(Object.entries(goes).filter(([, go]) => scoreGo(sheet, maneuvers, go).ok));
}
