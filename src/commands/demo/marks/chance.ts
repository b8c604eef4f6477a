/** Made-up marks from a fixed seed: every demo shows the same show, however often it is begun again. */
import { createHash } from 'node:crypto';

/** From 0 (included) to 1 (excluded), one after another. */
export type Chance = () => number;

/** Each call takes 48 bits of SHA-256 over `seed:1`, `seed:2` ... */
export function chanceFrom(seed: string): Chance {
  let drawn = 0;
  return () => {
    drawn += 1;
    return createHash('sha256').update(`${seed}:${drawn}`).digest().readUIntBE(0, 6) / 2 ** 48;
  };
}

/** 0 to limit - 1. */
export const wholeBelow = (chance: Chance, limit: number): number => Math.floor(chance() * limit);

/** Mostly near 0, never outside -1..1: how people differ. */
export const swing = (chance: Chance): number => (2 * (chance() + chance() + chance())) / 3 - 1;
