/**
 * What was asked from this device: the codes by which the answers are read. They stand in the browser's storage, and in
 * an address only behind the `#`, which is sent to nobody.
 */

export interface FollowedCode {
  readonly code: string;
  /** Of the page that it is shown on. */
  readonly showId: string;
  readonly backNumber: number;
  /** The class that it is about, once that is known: a link says nothing of it. */
  readonly classId?: string;
}

const place = 'ringledger-followed';
const most = 100;

const isCode = (value: unknown): value is FollowedCode =>
  typeof value === 'object' &&
  value !== null &&
  'code' in value &&
  typeof value.code === 'string' &&
  'showId' in value &&
  'backNumber' in value;

/** The oldest first. Whatever else stands there is nothing that was asked. */
export function followedCodes(): FollowedCode[] {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(place) ?? '[]');
    return Array.isArray(kept) ? kept.filter(isCode) : [];
  } catch {
    return [];
  }
}

/** `false`: this browser keeps nothing. */
export function keepCode(one: FollowedCode): boolean {
  return write([...followedCodes().filter(({ code }) => code !== one.code), one]);
}

export function forgetCode(code: string): void {
  write(followedCodes().filter((one) => one.code !== code));
}

function write(codes: readonly FollowedCode[]): boolean {
  try {
    localStorage.setItem(place, JSON.stringify(codes.slice(-most)));
    return true;
  } catch {
    return false;
  }
}

const marked = /^#query=([A-Za-z0-9_-]{27})$/;

/** The code of a link that was opened, which is then taken out of the address. */
export function takeCodeFromAddress(): string | undefined {
  const [, code] = marked.exec(location.hash) ?? [];
  if (code !== undefined) history.replaceState(history.state, '', location.pathname + location.search);
  return code;
}

export const followLink = ({ showId, backNumber, code }: FollowedCode): string =>
  `${location.origin}/shows/${showId}/numbers/${backNumber}#query=${code}`;
