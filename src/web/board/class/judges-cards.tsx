/** Each judge's card as it was signed, where the show publishes the cards of the class; where not, since when or why. */
import { useWords } from '../../shared/words.tsx';
import type { PublishCards, Result, Sheet } from './class-answer.ts';
import { JudgeCard } from './judge-card.tsx';

interface CardsToShow {
  readonly result: Result;
  readonly publishCards: PublishCards;
}

export function JudgesCards({ result, publishCards }: CardsToShow) {
  const { t } = useWords();
  const { cards, sheet } = result;
  return (
    <section class="cards" aria-labelledby="cards">
      <h2 id="cards">{t('board-cards')}</h2>
      <p class="note">{t(`board-cards-${cards.length > 0 ? 'are-out' : publishCards}`)}</p>
      {cards.length > 0 && sheet.maneuvers.length > 0 && <Legend sheet={sheet} />}
      {cards.map((card) => (
        <JudgeCard key={card.seatId} {...{ card, sheet }} />
      ))}
    </section>
  );
}

/** The columns of the cards are headed by the numbers of the maneuvers. */
function Legend({ sheet: { maneuvers, kind } }: { readonly sheet: Sheet }) {
  const { t } = useWords();
  return (
    <ol class="maneuvers legend">
      {maneuvers.map(({ position, name, coefficient }) => (
        <li key={position} value={position}>
          {name}
          {kind === 'percentage' && coefficient !== '1' && ` ${t('board-coefficient', { coefficient })}`}
        </li>
      ))}
    </ol>
  );
}
