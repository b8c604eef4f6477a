import { useState } from 'preact/hooks';
import { Link } from 'wouter-preact';
import { useWords } from '../../shared/words.tsx';
import { paths } from '../paths.ts';
import { RuledTable } from '../pieces/ruled-table.tsx';
import { useMayWrite, useShowClock } from '../use-show.ts';
import { cardWords } from './card-words.ts';
import { Chase } from './chase.tsx';
import type { ShowClass } from './class-answers.ts';
import { isMissing, type JudgeLine } from './judge-lines.ts';
import { JudgePhones } from './judge-phones.tsx';
import { TakeUpPaper } from './take-up-paper.tsx';

interface CardsTable {
  readonly ofClass: ShowClass;
  readonly ring: string | undefined;
  readonly lines: readonly JudgeLine[];
}

/** The judges of the class and where each one's card is. */
export function CardsTable({ ofClass, ring, lines }: CardsTable) {
  const { t } = useWords();
  const mayWrite = useMayWrite();
  return (
    <RuledTable caption={t('office-cards-caption', { number: String(ofClass.number) })} class="cards">
      <thead>
        <tr>
          <th scope="col">{t('office-judge')}</th>
          <th scope="col">{t('office-card')}</th>
          {mayWrite && <th scope="col">{t('office-phone')}</th>}
          {mayWrite && <th scope="col">{t('office-to-do')}</th>}
        </tr>
      </thead>
      <tbody>
        {lines.map((line) => (
          <CardRow key={line.seat.id} {...{ ofClass, ring, line, mayWrite }} />
        ))}
      </tbody>
    </RuledTable>
  );
}

interface CardRowParts {
  readonly ofClass: ShowClass;
  readonly ring: string | undefined;
  readonly line: JudgeLine;
  readonly mayWrite: boolean;
}

function CardRow({ ofClass, ring, line, mayWrite }: CardRowParts) {
  const { t } = useWords();
  const { time } = useShowClock();
  const [chasing, chase] = useState(false);
  const { seat, stand } = line;
  return (
    <>
      <tr class={isMissing(line) ? 'awaited' : ''}>
        <th scope="row">
          {seat.name}
          <span class="note">
            {' '}
            {t(seat.role === 'referee' ? 'office-referee' : 'office-judge-seat', { seat: seat.seatOrder })}
          </span>
        </th>
        <td>
          {stand.is === 'on-paper' ? (
            <Link href={paths.paper(ofClass.showId, stand.paperCardId)}>{cardWords(stand, { t, time })}</Link>
          ) : (
            cardWords(stand, { t, time })
          )}
          {stand.is === 'under-way' && (
            <progress
              value={stand.written}
              max={stand.expected}
              aria-label={t('office-card-under-way', { written: stand.written, expected: stand.expected })}
            />
          )}
        </td>
        {mayWrite && (
          <td>
            <JudgePhones {...{ showId: ofClass.showId, line }} />
          </td>
        )}
        {mayWrite && (
          <td>
            {isMissing(line) && (
              <span class="buttons">
                <button type="button" aria-expanded={chasing} onClick={() => chase(!chasing)}>
                  {t('office-chase')}
                  <span class="heard"> {seat.name}</span>
                </button>
                {stand.is !== 'on-paper' && <TakeUpPaper {...{ ofClass, line }} />}
              </span>
            )}
          </td>
        )}
      </tr>
      {chasing && isMissing(line) && (
        <tr>
          <td colSpan={4}>
            <Chase {...{ ofClass, ring, line }} />
          </td>
        </tr>
      )}
    </>
  );
}
