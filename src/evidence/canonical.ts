/** One spelling for one content (RFC 8785): what is signed and hashed, on the phone, at the service and by the verifier. */
import canonicalize from 'canonicalize';

/** Canonical JSON. Throws for what JSON cannot hold. */
export function canonicalText(value: unknown): string {
  const text = canonicalize(value);
  if (text === undefined) throw new TypeError('this has no canonical JSON form');
  return text;
}

/** The value that `text` spells; `undefined` where it is not JSON, or spelled in another way than the canonical one. */
export function readCanonical(text: string): unknown {
  try {
    const value: unknown = JSON.parse(text);
    return canonicalText(value) === text ? value : undefined;
  } catch {
    return undefined;
  }
}
