/** One sheet of the screen: large, and nothing on it that needs a hand. */
import { timeAt } from '../../shared/show-times.ts';
import { useWords } from '../../shared/words.tsx';
import type { BoardShow } from '../board-answer.ts';
import { scoreText } from '../class/score-text.ts';
import { Who } from '../class/who.tsx';
import { StateWords } from '../class-line.tsx';
import type { ClassSlide, PostedSlide, Slide } from './slides.ts';

interface SlideToShow {
  readonly slide: Slide;
  readonly show: BoardShow;
}

export function SlideView({ slide, show }: SlideToShow) {
  return slide.kind === 'posted' ? <PostedSheet slide={slide} /> : <ClassSheet {...{ slide, show }} />;
}

function ClassSheet({ slide: { kind, key, classes }, show }: { slide: ClassSlide; show: BoardShow }) {
  const { t, language } = useWords();
  const { timeZone } = show;
  return (
    <section class={`slide ${kind}`} aria-labelledby={`slide-${key}`}>
      <h2 id={`slide-${key}`}>{t(`board-${kind}`)}</h2>
      {classes.length === 0 && <p class="slide-empty">{t(`board-${kind}-empty`)}</p>}
      <ul class="slide-classes">
        {classes.map((of) => (
          <li key={of.id}>
            <span class="class-number figures">{of.number}</span>
            <p class="slide-name">{of.name}</p>
            <p class="class-state">
              {of.ring !== null && <span>{of.ring}</span>}
              {kind === 'next' && of.scheduledAt !== null && (
                <time dateTime={of.scheduledAt}>{timeAt(of.scheduledAt, { language, timeZone })}</time>
              )}
              <StateWords of={of} />
            </p>
          </li>
        ))}
      </ul>
    </section>
  );
}

function PostedSheet({ slide }: { readonly slide: PostedSlide }) {
  const { t, language } = useWords();
  const { key, of, judge, lines, part, parts } = slide;
  const hasTotals = lines.some(({ total }) => total !== null);
  return (
    <section class="slide posted" aria-labelledby={`slide-${key}`}>
      <h2 id={`slide-${key}`}>
        <span class="class-number figures">{of.number}</span> {of.name}
      </h2>
      <p class="slide-state">
        {t(`shared-state-${of.state}`)}
        {judge !== null && ` · ${t('board-places-of-judge', { judge })}`}
        {parts > 1 && ` · ${t('board-screen-part', { part, parts })}`}
      </p>
      <table class="slide-places">
        <thead class="heard">
          <tr>
            <th scope="col">{t('board-place')}</th>
            <th scope="col">{t('board-back-number')}</th>
            <th scope="col">{t('board-who')}</th>
            {hasTotals && <th scope="col">{t('board-total')}</th>}
          </tr>
        </thead>
        <tbody>
          {lines.map(({ backNumber, name, horse, place, tied, total }) => (
            <tr key={backNumber}>
              <td class="place figures">
                {place}
                {tied && <span class="tied">{t('board-tied')}</span>}
              </td>
              <th scope="row" class="figures">
                {backNumber}
              </th>
              <td>
                <Who {...{ name, horse }} />
              </td>
              {hasTotals && (
                <td class="total figures">{total === null ? '–' : scoreText(total, { language })}</td>
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
