/** One class on the board: its number, its name, and in words where it stands. */
import { dayAndTimeAt, timeAt } from '../shared/show-times.ts';
import { useWords } from '../shared/words.tsx';
import { type BoardClass, type BoardShow, classAddress, partOf } from './board-answer.ts';

interface Line {
  readonly show: BoardShow;
  readonly of: BoardClass;
  /** Whole dates: the show lasts more than one day. */
  readonly dated: boolean;
  readonly isNew?: boolean;
  /** Left out where the ring stands above the list. */
  readonly withRing?: boolean;
}

export function ClassLine({ show, of, dated, isNew = false, withRing = true }: Line) {
  const { t } = useWords();
  const { number, name, ring } = of;
  return (
    <li class={isNew ? 'class-line fresh' : 'class-line'}>
      <span class="class-number figures">{number}</span>
      <p class="class-name">
        <a href={classAddress(show.id, of)}>
          <span class="heard">{t('board-class-number', { number })} </span>
          {name}
        </a>{' '}
        {isNew && <strong class="new">{t('board-new')}</strong>}
      </p>
      <p class="class-where">
        {withRing && ring !== null && <span>{ring}</span>}
        <When {...{ show, of, dated }} />
      </p>
      <p class={`class-state is-${partOf(of)}`}>
        <StateWords of={of} />
      </p>
    </li>
  );
}

/** The state, and how many of the cards are in where that tells something. */
export function StateWords({ of }: { readonly of: BoardClass }) {
  const { t } = useWords();
  const { state, cardsIn, cardsExpected } = of;
  const counts = partOf(of) === 'now' && cardsExpected > 0 && state !== 'cards-in';
  return (
    <>
      <span>{t(`shared-state-${state}`)}</span>
      {counts && <span>{t('board-cards-in', { in: cardsIn, expected: cardsExpected })}</span>}
    </>
  );
}

function When({ show: { timeZone }, of, dated }: Pick<Line, 'show' | 'of' | 'dated'>) {
  const { t, language } = useWords();
  const at = dated ? dayAndTimeAt : timeAt;
  if (of.postedAt !== null) {
    const time = at(of.postedAt, { language, timeZone });
    return <time dateTime={of.postedAt}>{t('board-posted-at', { time })}</time>;
  }
  if (of.scheduledAt === null) return null;
  return <time dateTime={of.scheduledAt}>{at(of.scheduledAt, { language, timeZone })}</time>;
}
