/** Refuses what no archive holds, before anything walks through it: endless nesting, names that reach prototypes. */

/** A posting's reasons are the deepest part: some dozen levels. */
const deepest = 40;
const forbidden = new Set(['__proto__', 'constructor', 'prototype']);

/** Looks at every value once, without recursion. */
export function isPlain(value: unknown): boolean {
  let level: unknown[] = [value];
  for (let depth = 0; level.length > 0; depth += 1) {
    if (depth > deepest) return false;
    const next: unknown[] = [];
    for (const one of level) {
      if (typeof one !== 'object' || one === null) continue;
      if (!Array.isArray(one) && Object.keys(one).some((name) => forbidden.has(name))) return false;
      for (const inner of Object.values(one)) next.push(inner);
    }
    level = next;
  }
  return true;
}
