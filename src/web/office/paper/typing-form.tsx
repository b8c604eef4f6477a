import { GoFields } from './go-fields.tsx';
import { moveOn } from './move-on.ts';
import { PenaltyKey } from './penalty-key.tsx';
import { RankingFields } from './ranking-fields.tsx';
import { TieFields } from './tie-fields.tsx';
import type { TypingDesk } from './typing-desk.ts';

interface TypingParts {
  readonly desk: TypingDesk;
  /** Fields, as ids (`fieldId`), in which the two who typed differ. */
  readonly differing: ReadonlySet<string>;
}

/** The whole card: one go under the other, in the order of go, one field for each mark. */
export function TypingForm({ desk, differing }: TypingParts) {
  const { card } = desk;
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the keys are those of the fields inside, caught in one place
    <div class="typing" onKeyDown={moveOn}>
      <PenaltyKey sheet={card.sheet} />
      {card.sheet.kind === 'places' && <RankingFields {...{ desk, differing }} />}
      {card.entries.map((entry, index) => (
        <GoFields key={entry.id} {...{ desk, entry, differing, number: index + 1 }} />
      ))}
      <TieFields desk={desk} />
    </div>
  );
}
