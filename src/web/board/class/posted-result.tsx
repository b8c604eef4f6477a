/** A posted result: places with the reasons, who has no place and why, the rule, the cards, and every posting before. */
import { dayAndTimeAt } from '../../shared/show-times.ts';
import { useWords } from '../../shared/words.tsx';
import { CheckIt } from './check-it.tsx';
import type { ClassGiven, Result } from './class-answer.ts';
import { JudgesCards } from './judges-cards.tsx';
import { PlacingSheet } from './placing-sheet.tsx';
import { Postings } from './postings.tsx';

export function PostedResult(seen: ClassGiven & { readonly result: Result }) {
  const { t, language } = useWords();
  const { show, result, postings, publishCards } = seen;
  const { posting, results, didNotGo, rule } = result;
  const time = dayAndTimeAt(posting.postedAt, { language, timeZone: show.timeZone });
  return (
    <>
      <p class="posted-line">
        {t('board-posted-line', { time, version: posting.version, of: posting.version })}
      </p>
      {posting.reason !== null && (
        <p class="heed">{t('board-changed-because', { reason: posting.reason })}</p>
      )}
      {results.map((one) => (
        <PlacingSheet key={one.judge?.seatId ?? ''} {...{ one, result }} />
      ))}
      {didNotGo.length > 0 && <DidNotGo didNotGo={didNotGo} />}
      <section aria-labelledby="rule">
        <h2 id="rule">{t('board-rule')}</h2>
        <ul class="rule">
          {rule.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      </section>
      <JudgesCards {...{ result, publishCards }} />
      <Postings {...{ show, of: seen.of, postings, shown: posting.id }} />
      <CheckIt result={result} />
    </>
  );
}

function DidNotGo({ didNotGo }: Pick<Result, 'didNotGo'>) {
  const { t } = useWords();
  return (
    <section aria-labelledby="did-not-go">
      <h2 id="did-not-go">{t('board-did-not-go')}</h2>
      <ul class="lines plain">
        {didNotGo.map(({ backNumber, name, horse, status }) => (
          <li key={backNumber}>
            <span class="figures">{backNumber}</span> {name}
            {horse !== null && `, ${horse}`}: {t(`shared-status-${status}`)}
          </li>
        ))}
      </ul>
    </section>
  );
}
