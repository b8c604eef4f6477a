/** The card of one class as a screen writes it: the desk's, or an amendment of a signed one that is not signed yet. */
import type { ReadonlySignal } from '@preact/signals';
import type { CardContent } from '../../../engine/sheets/card-types.ts';
import type { Go } from '../../../engine/sheets/types.ts';
import type { CardOrder } from '../desk/day-types.ts';
import type { WriteOutcome } from '../desk/desk-types.ts';

export interface Written<Content> {
  readonly content: Content;
  /** How many changes can be taken back. */
  readonly undoable: number;
}

/** Why nothing can be written now; `null`: it can. */
export type Shut = 'signed' | 'withdrawn' | null;

export interface CardBook {
  readonly amends: boolean;
  readonly shut: ReadonlySignal<Shut>;
  readonly content: ReadonlySignal<CardContent>;
  readonly order: ReadonlySignal<Written<CardOrder>>;
  /** The same signal for the same entry each time. */
  readonly goOf: (classEntryId: string) => ReadonlySignal<Written<Go>>;
  readonly writeGo: (classEntryId: string, change: (kept: Go) => Go) => Promise<WriteOutcome>;
  readonly writeOrder: (change: (kept: CardOrder) => CardOrder) => Promise<WriteOutcome>;
  readonly undo: (classEntryId: string) => Promise<WriteOutcome>;
  readonly undoOrder: () => Promise<WriteOutcome>;
}
