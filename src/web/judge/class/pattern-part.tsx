/** The pattern in words beside its drawing, and how the class is placed. Open until the first go is written. */
import { ruleSentences } from '../../../engine/sentences/rule-words.ts';
import type { DayClass } from '../desk/day-types.ts';
import { maneuverNote } from '../go/step-words.ts';
import { later } from '../later.tsx';
import { namesIn } from '../outcome-words.ts';
import { useParts } from '../parts.tsx';

const Drawing = later(async () => (await import('../../shared/pattern-drawing.tsx')).PatternDrawingFigure);

export function PatternPart({ dayClass }: { readonly dayClass: DayClass }) {
  const { t, books } = useParts();
  const isBegun = Object.keys(books.of(dayClass.classId).value.content.peek().goes).length > 0;
  const { pattern } = dayClass;
  return (
    <>
      {pattern === null ? null : (
        <details class="pattern" open={!isBegun}>
          <summary>{t('judge-pattern', { name: pattern.name })}</summary>
          <div class="pattern-sheet">
            {pattern.drawing === null ? null : <Drawing drawing={pattern.drawing} />}
            <Maneuvers dayClass={dayClass} />
          </div>
        </details>
      )}
      <HowPlaced dayClass={dayClass} />
    </>
  );
}

function Maneuvers({ dayClass }: { readonly dayClass: DayClass }) {
  const { words } = useParts();
  return (
    <ol class="maneuvers">
      {dayClass.pattern?.maneuvers.map((maneuver) => {
        const note = maneuverNote(maneuver, words);
        return (
          <li key={maneuver.position} value={maneuver.position}>
            <strong>{maneuver.name}</strong>
            {note === '' ? null : <span class="note">{note}</span>}
            {maneuver.description === null ? null : <span class="note">{maneuver.description}</span>}
          </li>
        );
      })}
    </ol>
  );
}

/** In words of the engine, so that she knows what her card does. */
function HowPlaced({ dayClass }: { readonly dayClass: DayClass }) {
  const { t, speech } = useParts();
  const names = {
    ...namesIn({ speech, dayClass }),
    judge: (seatId: string) => {
      const seat = dayClass.panel.find((one) => one.seatId === seatId);
      if (seat === undefined) return speech.say('name-judge-gone');
      if (seatId === dayClass.seatId) return t('judge-you');
      return speech.say('name-judge', { number: seat.seatOrder });
    },
    decision: () => speech.say('name-decision'),
  };
  return (
    <details class="rule">
      <summary>{t('judge-rule')}</summary>
      <ul>
        {ruleSentences(dayClass.rule, { speech, names }).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
        <li>{t(dayClass.tiesMustBeBroken ? 'judge-rule-ties-must' : 'judge-rule-ties-may')}</li>
      </ul>
      <p class="note">
        {dayClass.sheet.title} · {dayClass.sheet.source}
      </p>
    </details>
  );
}
