/**
 * The chain: each line is hashed over its canonical form (RFC 8785), which holds the hash of the line before, and
 * sealed by the service's key, which is not in the database. A changed, removed, added or moved line breaks the
 * chain; a chain that was computed anew has no seals.
 */
import type { CryptoKey } from 'jose';
import {
  attached,
  type ChainedLine,
  canonicalText,
  detached,
  evidenceTypes,
  kidOf,
  readJws,
} from '../evidence/index.ts';
import { hashOfText } from '../platform/canonical-json.ts';
import type { ServiceKeys } from '../platform/service-keys.ts';

export interface SealedLine extends ChainedLine {
  readonly hash: string;
  /** JWS with detached payload (RFC 7515, appendix F). */
  readonly seal: string;
}

export async function sealLine(keys: Pick<ServiceKeys, 'sign'>, line: ChainedLine): Promise<SealedLine> {
  const text = canonicalText(line);
  return { ...line, hash: hashOfText(text), seal: detached(await keys.sign(evidenceTypes.line, text)) };
}

export type ChainFault = 'gap' | 'does-not-follow' | 'hash-wrong' | 'seal-unknown-key' | 'seal-wrong';

export interface BrokenLine {
  /** The number that the line has, or should have. */
  readonly sequence: number;
  readonly fault: ChainFault;
}

/** Keys by their thumbprint. */
export type KnownKeys = ReadonlyMap<string, CryptoKey>;

/** What is wrong with one line, if anything; `before` is the line that it must follow, `undefined` for the first. */
export async function checkLine(
  line: SealedLine,
  { before, keys }: { readonly before: SealedLine | undefined; readonly keys: KnownKeys },
): Promise<BrokenLine | undefined> {
  const sequence = (before?.sequence ?? 0) + 1;
  if (line.sequence !== sequence) return { sequence, fault: 'gap' };
  if (line.previousHash !== (before?.hash ?? null)) return { sequence, fault: 'does-not-follow' };
  const { hash, seal, ...chained } = line;
  const text = canonicalText(chained);
  if (hashOfText(text) !== hash) return { sequence, fault: 'hash-wrong' };
  const fault = await sealFault({ seal, text }, keys);
  return fault === undefined ? undefined : { sequence, fault };
}

async function sealFault(
  { seal, text }: { readonly seal: string; readonly text: string },
  keys: KnownKeys,
): Promise<ChainFault | undefined> {
  const jws = attached(seal, text);
  const kid = kidOf(jws);
  const key = kid === undefined ? undefined : keys.get(kid);
  if (kid === undefined || key === undefined) return 'seal-unknown-key';
  const read = await readJws(jws, { key, kid, typ: evidenceTypes.line });
  return read.ok ? undefined : 'seal-wrong';
}

/** The first line that breaks the chain, from the first line on; `undefined`: it holds. */
export async function firstBreak(
  lines: Iterable<SealedLine>,
  keys: KnownKeys,
): Promise<BrokenLine | undefined> {
  let before: SealedLine | undefined;
  for (const line of lines) {
    const broken = await checkLine(line, { before, keys });
    if (broken !== undefined) return broken;
    before = line;
  }
  return undefined;
}
