import type { Signal } from '@preact/signals';

/** What of a go lies open over it. */
export interface OpenParts {
  readonly remark: Signal<boolean>;
  readonly ruling: Signal<boolean>;
  readonly keys: Signal<boolean>;
  readonly line: Signal<boolean>;
}
