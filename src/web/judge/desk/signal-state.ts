/** Is the service heard, since when not, and does this phone's clock go wrong? It is told and never relied on. */
import { signal } from '@preact/signals';
import type { SignalState } from './desk-types.ts';
import type { Sign } from './service.ts';

/** Less is the coarseness of the header Date and a slow network. */
const worthTellingSeconds = 60;

export class Hearing {
  readonly state = signal<Omit<SignalState, 'unsent'>>({
    is: 'asking',
    lastHeardAt: null,
    clockAheadSeconds: null,
  });

  take({ heard, serviceTime, phoneTime }: Sign): void {
    const before = this.state.peek();
    if (!heard) {
      this.state.value = { ...before, is: 'no-answer' };
      return;
    }
    const ahead = serviceTime === null ? null : Math.round((phoneTime - serviceTime) / 1_000);
    this.state.value = {
      is: 'heard',
      lastHeardAt: new Date().toISOString(),
      clockAheadSeconds:
        ahead === null ? before.clockAheadSeconds : Math.abs(ahead) < worthTellingSeconds ? null : ahead,
    };
  }

  /** The device itself says that it has no network. */
  lost(): void {
    this.state.value = { ...this.state.peek(), is: 'no-answer' };
  }
}
