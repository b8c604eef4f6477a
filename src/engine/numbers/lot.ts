/** Lots: by chance, but so that anyone who knows the announced seed can draw them again. */
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';

/** SHA-256 of `seed:name` as 64 hex digits; the smallest comes first. `printf '%s:%s' SEED NAME | sha256sum` */
export const lot = (seed: string, name: string): string => bytesToHex(sha256(utf8ToBytes(`${seed}:${name}`)));
