/** The ranking of a rail class: the first so many, each once, fewer only where fewer may be placed. */
import { cardFault } from './card-faults.ts';
import type { CardFault, CardToCheck } from './card-types.ts';
import type { JudgeScore } from './types.ts';

export function rankingFaults(
  { sheet, entries, content }: CardToCheck,
  goes: ReadonlyMap<string, JudgeScore>,
): readonly CardFault[] {
  if (sheet.kind !== 'places') return [];
  const ranking = content.ranking ?? [];
  const going = new Map(entries.map((entry) => [entry.id, entry.going]));
  const out = new Set([...goes].filter(([, { tier }]) => tier === 'not-placed').map(([entry]) => entry));
  const seen = new Set<string>();
  const faults: CardFault[] = [];
  for (const [place, group] of ranking.entries()) {
    for (const [index, entry] of group.entries()) {
      const code = rankedFault({ going: going.get(entry), twice: seen.has(entry), out: out.has(entry) });
      if (code !== undefined) {
        faults.push(cardFault(code, entry, { at: `/ranking/${place}/${index}`, written: entry }));
      }
      seen.add(entry);
    }
  }
  const placeable = entries.filter(({ id, going: goes }) => goes && !out.has(id)).length;
  return faults.length > 0 ? faults : lengthFaults(ranking, Math.min(sheet.first, placeable));
}

function rankedFault(entry: { going: boolean | undefined; twice: boolean; out: boolean }) {
  if (entry.going === undefined) return 'entry_unknown';
  if (!entry.going) return 'entry_not_going';
  if (entry.twice) return 'ranked_twice';
  return entry.out ? 'ranked_but_ruled_out' : undefined;
}

/** Only a tie that begins at a place which is given may reach beyond the last one. */
function lengthFaults(ranking: readonly (readonly string[])[], needed: number): readonly CardFault[] {
  const ranked = ranking.flat().length;
  const before = ranked - (ranking.at(-1)?.length ?? 0);
  const allowed = { kind: 'places', first: needed } as const;
  const more = { at: '/ranking', written: String(ranked), allowed };
  if (ranked < needed) return [cardFault('ranking_too_short', undefined, more)];
  const beyond = ranked > needed && before >= needed;
  const empty = ranking.some((group) => group.length === 0);
  return beyond || empty ? [cardFault('ranking_too_long', undefined, more)] : [];
}
