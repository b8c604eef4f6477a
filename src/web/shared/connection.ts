/** How a page hears of what happens at its show, for the line that says so. */
import { createContext } from 'preact';

export interface Connection {
  /** `live`: at once. `looking`: it asks every few seconds. `lost`: the service does not answer. */
  readonly kind: 'live' | 'looking' | 'lost';
  /** When the service was last heard of, by the clock of this device. */
  readonly heardAt: Date;
}

/** `undefined`: nothing is known yet, or there is no script. */
export const ConnectionContext = createContext<Connection | undefined>(undefined);
