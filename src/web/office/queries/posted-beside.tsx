import type { Answer } from '../../shared/api.ts';
import { useWords } from '../../shared/words.tsx';
import { FaultNote } from '../pieces/fault-note.tsx';
import { useAsked } from '../use-asked.ts';
import type { Query } from './inbox.ts';

type EntryResult = Answer<'/v1/classes/{classId}/result/entries/{backNumber}'>;

/** What the family reads: the posted place with its sentences, and what each judge gave where that is published. */
export function PostedBeside({ query }: { readonly query: Query }) {
  const { t } = useWords();
  const { backNumber, lastPostingVersion } = query;
  return (
    <section class="posted">
      <h4>{t('office-queries-posted')}</h4>
      {lastPostingVersion === null && <p class="note">{t('office-queries-not-posted')}</p>}
      {lastPostingVersion !== null && backNumber === null && (
        <p class="note">{t('office-queries-whole-class')}</p>
      )}
      {lastPostingVersion !== null && backNumber !== null && (
        <PostedEntry path={`/v1/classes/${query.class.id}/result/entries/${backNumber}`} />
      )}
    </section>
  );
}

function PostedEntry({ path }: { readonly path: string }) {
  const { t } = useWords();
  const { body, refused, again } = useAsked<EntryResult>(path, {
    on: ({ type }) => type === undefined || type.startsWith('result.') || type === 'names.changed',
  });
  if (refused?.code === 'not_found') return <p class="note">{t('office-queries-not-in-posting')}</p>;
  if (body === undefined) {
    return refused === undefined ? null : <FaultNote words={refused.words} again={() => void again()} />;
  }
  return (
    <>
      <p class="note">
        {t(`office-queries-posting-${body.posting.state}`, { version: body.posting.version })}
      </p>
      {body.results.map(({ judge, because }) => (
        <div key={judge?.seatId ?? 'merged'}>
          {judge !== null && <p>{t('office-queries-by-judge', { name: judge.name })}</p>}
          <ul class="because">
            {because.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </div>
      ))}
      <CardsBeside cards={body.cards} />
    </>
  );
}

function CardsBeside({ cards }: Pick<EntryResult, 'cards'>) {
  const { t } = useWords();
  if (cards.length === 0) return null;
  return (
    <details>
      <summary>{t('office-queries-cards')}</summary>
      {cards.map(({ seatId, judge, goes }) => (
        <div key={seatId}>
          <h5>{judge}</h5>
          <ul class="because">
            {goes.flatMap(({ parts, remarks }) =>
              [...parts, ...remarks].map((line, index) => <li key={`${index}-${line}`}>{line}</li>),
            )}
          </ul>
        </div>
      ))}
    </details>
  );
}
