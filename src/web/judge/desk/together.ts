/**
 * Both versions of a go put together, where they contradict each other nowhere: she marked one to three, her scribe
 * wrote the fourth. It is only offered; she decides.
 */

import type { Go, ManeuverMark } from '../../../engine/sheets/types.ts';
import { canonicalText } from '../../../evidence/index.ts';

interface Three<Value> {
  /** What both began with. */
  readonly from: Value | undefined;
  readonly mine: Value | undefined;
  readonly theirs: Value | undefined;
}

class Contradiction extends Error {}

/** `null`: they contradict each other. */
export function together(from: Go, mine: Go, theirs: Go): Go | null {
  try {
    return merged({ from, mine, theirs });
  } catch (error) {
    if (error instanceof Contradiction) return null;
    throw error;
  }
}

function merged({ from, mine, theirs }: Record<keyof Three<Go>, Go>): Go {
  const member = <Name extends keyof Go>(name: Name): Partial<Go> => {
    const value = either({ from: from[name], mine: mine[name], theirs: theirs[name] });
    return value === undefined ? {} : { [name]: value };
  };
  const maneuvers = byKey({
    from: byPosition(from),
    mine: byPosition(mine),
    theirs: byPosition(theirs),
  });
  const extras = byKey({ from: from.extras ?? {}, mine: mine.extras ?? {}, theirs: theirs.extras ?? {} });
  return {
    ...(Object.keys(maneuvers).length === 0 ? {} : { maneuvers: Object.values(maneuvers) }),
    ...(Object.keys(extras).length === 0 ? {} : { extras }),
    ...member('penalties'),
    ...member('errorsOfCourse'),
    ...member('mark'),
    ...member('measure'),
    ...member('ruling'),
    ...member('remark'),
  };
}

/** Numbers as keys of an object come in their order. */
const byPosition = ({ maneuvers = [] }: Go): Record<string, ManeuverMark> =>
  Object.fromEntries(maneuvers.map((one) => [one.position, one]));

function byKey<Value>(all: Record<keyof Three<Value>, Record<string, Value>>): Record<string, Value> {
  const { from, mine, theirs } = all;
  const keys = [...new Set([...Object.keys(from), ...Object.keys(mine), ...Object.keys(theirs)])];
  return Object.fromEntries(
    keys
      .sort((a, b) => a.localeCompare(b, 'en', { numeric: true }))
      .flatMap((key) => {
        const value = either({ from: from[key], mine: mine[key], theirs: theirs[key] });
        return value === undefined ? [] : [[key, value] as const];
      }),
  );
}

/** Who left it as it was gives way to the other. */
function either<Value>({ from, mine, theirs }: Three<Value>): Value | undefined {
  if (same(mine, theirs) || same(theirs, from)) return mine;
  if (same(mine, from)) return theirs;
  throw new Contradiction();
}

const same = (one: unknown, other: unknown): boolean =>
  canonicalText(one ?? null) === canonicalText(other ?? null);
