/** What was done last, said once, and how it is taken back. */
import { signal } from '@preact/signals';

interface Said {
  readonly text: string;
  readonly undo?: () => Promise<void>;
}

export const said = signal<Said | undefined>(undefined);

export function say(text: string, undo?: () => Promise<void>): void {
  said.value = undo === undefined ? { text } : { text, undo };
}
