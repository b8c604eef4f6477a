import { useState } from 'preact/hooks';
import { Link } from 'wouter-preact';
import type { Answer, Part } from '../../shared/api.ts';
import { useWords } from '../../shared/words.tsx';
import { concernsClass } from '../office-state.ts';
import { paths } from '../paths.ts';
import { RuledTable } from '../pieces/ruled-table.tsx';
import { ScreenHead } from '../pieces/screen-head.tsx';
import { Shown } from '../pieces/shown.tsx';
import { useAsked } from '../use-asked.ts';
import './paper.css';
import type { PaperCard } from './paper-card.ts';
import { stageOf } from './paper-state.tsx';
import { TakeUp } from './take-up.tsx';

type Panel = Answer<'/v1/shows/{showId}/classes/{classId}/panel'>;
type Seat = Panel['seats'][number];
type Progress = Part<'CardProgress'>;

interface Address {
  readonly showId: string;
  readonly classId: string;
}

/** The cards of a class that came on paper, seat by seat. */
export function ClassPaperScreen({ showId, classId }: Address) {
  const { t } = useWords();
  const on = concernsClass(classId);
  const base = `/v1/shows/${showId}/classes/${classId}`;
  const ofClass = useAsked<Answer<'/v1/shows/{showId}/classes/{classId}'>>(base, { on });
  const panel = useAsked<Panel>(`${base}/panel`, { on });
  const cards = useAsked<Answer<'/v1/classes/{classId}/cards'>>(`/v1/classes/${classId}/cards`, { on });
  const papers = useAsked<Answer<'/v1/classes/{classId}/paper-cards'>>(`/v1/classes/${classId}/paper-cards`, {
    on,
  });
  return (
    <div class="paper-card">
      <ScreenHead title={t('office-paper-title', { number: ofClass.body?.number ?? 0 })}>
        {ofClass.body !== undefined && (
          <p class="note">
            <Link href={paths.class(showId, classId)}>{ofClass.body.name}</Link>
          </p>
        )}
        <p>{t('office-paper-what')}</p>
      </ScreenHead>
      <Shown asked={panel}>
        {({ seats }) => (
          <Shown asked={papers}>
            {({ items }) => (
              <SeatTable {...{ showId, classId, seats, papers: items, progress: cards.body?.items ?? [] }} />
            )}
          </Shown>
        )}
      </Shown>
    </div>
  );
}

interface TableParts extends Address {
  readonly seats: readonly Seat[];
  readonly papers: readonly PaperCard[];
  readonly progress: readonly Progress[];
}

function SeatTable({ showId, classId, seats, papers, progress }: TableParts) {
  const { t } = useWords();
  const [takingUp, setTakingUp] = useState<string | undefined>(undefined);
  const judging = seats.filter(({ withdrawnAt }) => withdrawnAt === null);
  if (judging.length === 0) return <p class="note">{t('office-paper-no-panel')}</p>;
  const chosen = judging.find(({ id }) => id === takingUp);
  return (
    <>
      <RuledTable caption={t('office-paper-seats')}>
        <thead>
          <tr>
            <th scope="col">{t('office-paper-judge')}</th>
            <th scope="col">{t('office-paper-card')}</th>
            <th scope="col">{t('office-paper-paper')}</th>
          </tr>
        </thead>
        <tbody>
          {judging.map((seat) => (
            <SeatRow
              key={seat.id}
              {...{ showId, seat, onTakeUp: () => setTakingUp(seat.id) }}
              papers={papers.filter(({ seatId }) => seatId === seat.id)}
              signed={progress.find(({ seatId }) => seatId === seat.id)?.signed ?? null}
            />
          ))}
        </tbody>
      </RuledTable>
      {chosen !== undefined && (
        <TakeUp
          key={chosen.id}
          {...{ showId, classId, seat: chosen, onClose: () => setTakingUp(undefined) }}
          progress={progress.find(({ seatId }) => seatId === chosen.id)}
        />
      )}
    </>
  );
}

interface RowParts {
  readonly showId: string;
  readonly seat: Seat;
  readonly papers: readonly PaperCard[];
  readonly signed: Progress['signed'];
  readonly onTakeUp: () => void;
}

function SeatRow({ showId, seat, papers, signed, onTakeUp }: RowParts) {
  const { t } = useWords();
  const isOpen = papers.some(({ status }) => status === 'open');
  return (
    <tr>
      <th scope="row">{t('office-paper-seat', { seat: seat.seatOrder, name: seat.name })}</th>
      <td>
        {signed === null
          ? t('office-paper-not-signed')
          : t(`office-paper-signed-${signed.origin}`, { revision: signed.revision })}
      </td>
      <td>
        {papers.length > 0 && (
          <ul class="papers">
            {papers.map((paper) => (
              <li key={paper.id}>
                <Link href={paths.paper(showId, paper.id)}>
                  {t(`office-paper-brief-${stageOf(paper)}`, { revision: paper.revision })}
                </Link>
              </li>
            ))}
          </ul>
        )}
        {!isOpen && (
          <button type="button" onClick={onTakeUp}>
            {t(signed === null ? 'office-paper-take-up-of' : 'office-paper-amend', { name: seat.name })}
          </button>
        )}
      </td>
    </tr>
  );
}
