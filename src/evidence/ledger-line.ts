/** One line of a ledger as it is hashed and sealed: each carries the hash of the one before. */

export interface ChainedLine {
  /** The show; the nil UUID: the service itself. */
  readonly ledgerId: string;
  /** 1, 2, 3 ... without a gap. */
  readonly sequence: number;
  readonly type: string;
  /** RFC 3339 in UTC with milliseconds. */
  readonly at: string;
  readonly actor: LineActor;
  /** Ids and numbers, never names. */
  readonly body: Readonly<Record<string, unknown>>;
  /** `null`: it is the first. */
  readonly previousHash: string | null;
}

/** Who did it, by ids. */
export type LineActor =
  | { readonly as: 'office'; readonly account: string; readonly session: string }
  | { readonly as: 'judge' | 'scribe'; readonly phone: string; readonly person: string }
  | { readonly as: 'gate'; readonly phone: string }
  /** Somebody without a pass, e.g. a phone while it is being paired. */
  | { readonly as: 'everyone' }
  /** The service itself: a command, a start. */
  | { readonly as: 'service' };

/** RFC 9562, the nil UUID: the ledger of the service itself, which holds what belongs to no show. */
export const ofTheService = '00000000-0000-0000-0000-000000000000';
