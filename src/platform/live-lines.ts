/** Says, across processes, that a show's ledger has a new line. */

export interface LiveLines {
  /** `heard` is called after every commit that appended to the show's ledger; returns how to stop. */
  readonly subscribe: (showId: string, heard: () => void) => () => void;
  readonly close: () => Promise<void>;
}
