/** JSON Web Signatures (RFC 7515) as they are used here: ES256 only, one fixed `typ` for each kind of evidence. */
import { base64url, type CryptoKey, compactVerify, decodeProtectedHeader } from 'jose';

export const evidenceAlgorithm = 'ES256';

/** What is signed, by the `typ` of its header: a signature over one kind is never taken for another. */
export const evidenceTypes = {
  card: 'ringledger-card+jws',
  posting: 'ringledger-posting+jws',
  line: 'ringledger-line+jws',
  archive: 'ringledger-archive+jws',
} as const;
export type EvidenceType = (typeof evidenceTypes)[keyof typeof evidenceTypes];

export type JwsFault =
  /** Not a compact JWS with exactly the header that is asked for. */
  | 'not-of-this-form'
  /** Well formed, but the key did not sign this. */
  | 'signature-wrong';

export type JwsRead =
  | { readonly ok: true; readonly payload: string }
  | { readonly ok: false; readonly fault: JwsFault };

/** Thumbprint (RFC 7638) of the key that a JWS says it was signed by; `undefined` where it says none. */
export function kidOf(jws: string): string | undefined {
  try {
    return decodeProtectedHeader(jws).kid;
  } catch {
    return undefined;
  }
}

/** The payload as text, where `key` signed it as evidence of this type. Members of the header beside ours are refused. */
export async function readJws(
  jws: string,
  { key, typ, kid }: { readonly key: CryptoKey; readonly typ: EvidenceType; readonly kid: string },
): Promise<JwsRead> {
  if (!hasHeader(jws, { alg: evidenceAlgorithm, kid, typ })) return { ok: false, fault: 'not-of-this-form' };
  try {
    const { payload } = await compactVerify(jws, key, { algorithms: [evidenceAlgorithm] });
    return { ok: true, payload: new TextDecoder('utf-8', { fatal: true }).decode(payload) };
  } catch {
    return { ok: false, fault: 'signature-wrong' };
  }
}

function hasHeader(jws: string, wanted: Readonly<Record<string, string>>): boolean {
  try {
    const header: Record<string, unknown> = decodeProtectedHeader(jws);
    const names = Object.keys(header);
    return (
      names.length === Object.keys(wanted).length && names.every((name) => header[name] === wanted[name])
    );
  } catch {
    return false;
  }
}

/** RFC 7515, appendix F: the payload is left out, because whoever checks has it already. */
export function detached(jws: string): string {
  const [header = '', , signature = ''] = jws.split('.');
  return `${header}..${signature}`;
}

/** The whole JWS again; `text` is what was signed. */
export function attached(seal: string, text: string): string {
  const [header = '', , signature = ''] = seal.split('.');
  return `${header}.${base64url.encode(text)}.${signature}`;
}
