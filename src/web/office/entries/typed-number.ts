/** A back number or class number as it is typed: 1 to 99999, else `undefined`. Pure. */
export function numberIn(text: string): number | undefined {
  const digits = text.trim();
  return /^[1-9]\d{0,4}$/.test(digits) ? Number(digits) : undefined;
}
