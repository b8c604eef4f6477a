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

interface CardsTableParts {
  readonly ofClass: ShowClass;
  readonly ring: string | undefined;
  readonly lines: readonly JudgeLine[];
}

/** The judges of the class and where each one's card is. */
export function CardsTable({ ofClass, ring, lines }: CardsTableParts) {
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

/** What is opened under the row of a judge. */
type Opened = 'chase' | 'phones' | undefined;

function CardRow({ ofClass, ring, line, mayWrite }: CardRowParts) {
  const [opened, open] = useState<Opened>(undefined);
  const chasing = opened === 'chase' && isMissing(line);
  return (
    <>
      <tr class={isMissing(line) ? 'awaited' : ''}>
        <JudgeCells line={line} showId={ofClass.showId} />
        {mayWrite && <td>{usePhoneWords(line)}</td>}
        {mayWrite && (
          <td>
            <RowActs {...{ line, opened, open }} />
          </td>
        )}
      </tr>
      {(chasing || opened === 'phones') && (
        <tr class="opened">
          <td colSpan={4}>
            {chasing ? (
              <Chase {...{ ofClass, ring, line }} />
            ) : (
              <JudgePhones {...{ showId: ofClass.showId, line }} />
            )}
          </td>
        </tr>
      )}
    </>
  );
}

function JudgeCells({ line, showId }: { readonly line: JudgeLine; readonly showId: string }) {
  const { t } = useWords();
  const { time } = useShowClock();
  const { seat, stand } = line;
  const words = cardWords(stand, { t, time });
  const role =
    seat.role === 'referee' ? t('office-referee') : t('office-judge-seat', { seat: seat.seatOrder });
  return (
    <>
      <th scope="row">
        {seat.name} <span class="note">{role}</span>
      </th>
      <td>
        {stand.is === 'on-paper' ? <Link href={paths.paper(showId, stand.paperCardId)}>{words}</Link> : words}
        {stand.is === 'under-way' && (
          <progress value={stand.written} max={stand.expected} aria-label={words} />
        )}
      </td>
    </>
  );
}

function usePhoneWords({ judgePhones, scribePhones }: JudgeLine): string {
  const { t } = useWords();
  const { time } = useShowClock();
  const phones = [...judgePhones, ...scribePhones];
  if (phones.length === 0) return t('office-phone-none');
  return phones
    .map(({ role, pairedAt }) => t(`office-phone-of-${role}`, { time: time(pairedAt) }))
    .join('; ');
}

interface RowActsParts {
  readonly line: JudgeLine;
  readonly opened: Opened;
  readonly open: (what: Opened) => void;
}

function RowActs({ line, opened, open }: RowActsParts) {
  const { t } = useWords();
  const acts = isMissing(line) ? (['chase', 'phones'] as const) : (['phones'] as const);
  return (
    <span class="buttons">
      {acts.map((act) => (
        <button
          key={act}
          type="button"
          class="small"
          aria-expanded={opened === act}
          onClick={() => open(opened === act ? undefined : act)}
        >
          {t(`office-open-${act}`)}
          <span class="heard"> {line.seat.name}</span>
        </button>
      ))}
    </span>
  );
}
