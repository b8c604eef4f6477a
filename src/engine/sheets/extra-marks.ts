/** Marks beside the maneuvers: form and effectiveness, collective marks. */
import { type Exact, zero } from '../numbers/exact.ts';
import { allowedRange, isFault, readMark, readRange, times } from './mark.ts';
import { fault, pointer, written } from './reading.ts';
import type { ExtraMark, Go, GoFault, ScoreParts } from './types.ts';

export interface ExtraReading {
  readonly parts: ScoreParts['extras'];
  readonly faults: readonly GoFault[];
  /** What the marks that were given could have reached. */
  readonly maximum: Exact;
}

/** Each extra mark of the sheet must be given, and no other. */
export function readExtras(extras: readonly ExtraMark[], marks: Go['extras']): ExtraReading {
  const given = written(marks);
  const parts: ScoreParts['extras'][number][] = [];
  const codes = extras.map(({ code }) => code);
  const faults: GoFault[] = [...given.keys()]
    .filter((code) => !codes.includes(code))
    .map((code) =>
      fault('extra_unknown', `/extras/${pointer(code)}`, {
        written: code,
        allowed: { kind: 'codes', codes },
      }),
    );
  let maximum = zero;
  for (const { code, range, coefficient } of extras) {
    const at = `/extras/${pointer(code)}`;
    const text = given.get(code);
    if (text === undefined) {
      faults.push(fault('extra_missing', at, { allowed: allowedRange(range) }));
      continue;
    }
    const mark = readMark(text, readRange(range), { at, position: undefined });
    if (isFault(mark)) {
      faults.push(mark);
      continue;
    }
    parts.push({ code, mark, counts: times(mark, coefficient) });
    maximum = maximum.add(times(readRange(range).high, coefficient));
  }
  return { parts, faults, maximum };
}
