/** Whom this window noted as called, and when: a pencil mark of the office's own, with ids and times only. */
import { signal } from '@preact/signals';

const storedAs = 'ringledger-called';

type Called = Readonly<Record<string, string>>;

const called = signal<Called>(kept());

function kept(): Called {
  try {
    return JSON.parse(sessionStorage.getItem(storedAs) ?? '{}') as Called;
  } catch {
    return {};
  }
}

export const calledAt = (seatId: string): string | undefined => called.value[seatId];

export const noteCalled = (seatId: string): void =>
  keep({ ...called.value, [seatId]: new Date().toISOString() });

export function strikeCalled(seatId: string): void {
  const { [seatId]: _struck, ...others } = called.value;
  keep(others);
}

function keep(next: Called): void {
  called.value = next;
  sessionStorage.setItem(storedAs, JSON.stringify(next));
}
