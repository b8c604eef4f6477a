/** The penalties of the sheet, each against the maneuver in hand in one tap. */
import { exact } from '../../../engine/numbers/exact.ts';
import { labelWords } from '../../../engine/sentences/score-sentences.ts';
import type { ScoreSheet } from '../../../engine/sheets/types.ts';
import { useDerived } from '../derived.ts';
import { figure } from '../numbers.ts';
import { useParts } from '../parts.tsx';
import { type Designator, designatorsOf } from '../shorthand/designators.ts';
import type { GoModel } from './go-model.ts';
import { penaltiesAt } from './write-go.ts';

export const penaltiesOf = (sheet: ScoreSheet) => ('penalties' in sheet ? sheet.penalties : []);

export function PenaltyKeys({ model }: { readonly model: GoModel }) {
  const { t } = useParts();
  const { sheet } = model.dayClass;
  const position = useDerived(() => model.position, [model]);
  if (sheet.kind === 'percentage') return <ErrorsOfCourse model={model} />;
  const penalties = designatorsOf(penaltiesOf(sheet));
  if (penalties.length === 0) return null;
  return (
    <section class="penalties" aria-labelledby="penalties">
      <h3 id="penalties">
        {position === undefined ? t('judge-penalties-of-go') : t('judge-penalties-at', { position })}
      </h3>
      <ul>
        {penalties.map((one) => (
          <li key={one.penalty.code}>
            <PenaltyKey model={model} one={one} />
          </li>
        ))}
      </ul>
    </section>
  );
}

function PenaltyKey({ model, one }: { readonly model: GoModel; readonly one: Designator }) {
  const { words, speech, t } = useParts();
  const { code, points, label, weight } = one.penalty;
  const count = useDerived(() => penaltiesAt(model.go.value, code, model.position), [model, code]);
  const called = labelWords(label, speech);
  return (
    <button
      type="button"
      class="penalty"
      data-weight={weight}
      data-taken={count > 0}
      aria-label={t('judge-penalty-said', { points: figure(exact(points), words), label: called, count })}
      onClick={() => void model.penalize(code)}
    >
      <span class="points">
        {figure(exact(points), words)}
        {one.letter === null ? null : <small>{one.letter}</small>}
      </span>
      <span class="label">{called}</span>
      {count > 0 ? <span class="count">×{count}</span> : null}
    </button>
  );
}

/** In dressage: how often the rider went wrong, and what that takes off. */
function ErrorsOfCourse({ model }: { readonly model: GoModel }) {
  const { t, words } = useParts();
  const count = useDerived(() => model.go.value.errorsOfCourse ?? 0, [model]);
  const { sheet } = model.dayClass;
  if (sheet.kind !== 'percentage') return null;
  const { takes } = sheet.errorsOfCourse;
  const next = takes[count];
  return (
    <section class="errors" aria-labelledby="errors">
      <h3 id="errors">{t('judge-errors', { count })}</h3>
      <p class="note">
        {next === undefined
          ? t('judge-errors-next-eliminates')
          : t('judge-errors-next', { points: figure(exact(next), words) })}
      </p>
      <div class="pair">
        <button type="button" disabled={count === 0} onClick={() => void model.err(count - 1)}>
          {t('judge-errors-less')}
        </button>
        <button type="button" onClick={() => void model.err(count + 1)}>
          {t('judge-errors-more')}
        </button>
      </div>
    </section>
  );
}
