import { useState } from 'preact/hooks';
import type { Answer } from '../../shared/api.ts';
import { useWords, type Words } from '../../shared/words.tsx';
import { Part } from '../pieces/part.tsx';
import { ScreenHead } from '../pieces/screen-head.tsx';
import { Shown } from '../pieces/shown.tsx';
import { useAsked } from '../use-asked.ts';
import { useShowClock } from '../use-show.ts';

type Head = Answer<'/v1/shows/{showId}/ledger/head'>;
type Ledger = Answer<'/v1/shows/{showId}/ledger'>;
type Line = Ledger['items'][number];

const linesOfPage = 50;

/** What was done at the show, line by line, the last first. */
export function LedgerScreen({ showId }: { readonly showId: string }) {
  const { t } = useWords();
  const head = useAsked<Head>(`/v1/shows/${showId}/ledger/head`);
  const [back, goBack] = useState(0);
  return (
    <>
      <ScreenHead title={t('office-ledger')}>
        <p class="note">{t('office-ledger-what')}</p>
      </ScreenHead>
      <Shown asked={head}>
        {({ sequence, hash }) => (
          <Part
            title={t('office-ledger-lines')}
            aside={
              <p class="note">
                {t('office-ledger-head', { line: String(sequence), hash: hash?.slice(0, 12) ?? '' })}
              </p>
            }
          >
            <Lines {...{ showId, after: Math.max(0, sequence - (back + 1) * linesOfPage) }} />
            <p class="buttons">
              {back > 0 && (
                <button type="button" onClick={() => goBack(back - 1)}>
                  {t('office-ledger-later')}
                </button>
              )}
              {sequence > (back + 1) * linesOfPage && (
                <button type="button" onClick={() => goBack(back + 1)}>
                  {t('office-ledger-earlier')}
                </button>
              )}
            </p>
          </Part>
        )}
      </Shown>
    </>
  );
}

function Lines({ showId, after }: { readonly showId: string; readonly after: number }) {
  const words = useWords();
  const { moment } = useShowClock();
  const page = useAsked<Ledger>(`/v1/shows/${showId}/ledger?after=${after}&limit=${linesOfPage}`);
  const board = useAsked<Answer<'/v1/shows/{showId}/board'>>(`/v1/shows/${showId}/board`, {
    on: ({ type }) => type === undefined || type.startsWith('class.'),
  });
  const classWords = (id: unknown) => {
    const number = board.body?.classes.find((one) => one.id === id)?.number;
    return number === undefined ? '' : ` (${words.t('office-ledger-class', { number: String(number) })})`;
  };
  return (
    <Shown asked={page}>
      {({ items }) => (
        <ol class="lines ledger" reversed>
          {[...items].reverse().map((line) => (
            <li key={line.sequence}>
              <span class="figures">{line.sequence}</span> {moment(line.at)} · {whatWords(line, words)}
              {classWords(line.body.classId)}{' '}
              <span class="note">{words.t(`office-ledger-by-${line.actor.as}`)}</span>
            </li>
          ))}
        </ol>
      )}
    </Shown>
  );
}

/** `card.paper-opened` -> `office-event-card-paper-opened` */
const whatWords = ({ type, what }: Line, { find }: Words): string =>
  find(`office-event-${type.replace('.', '-')}`) ?? what;
