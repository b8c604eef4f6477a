/** Two phones wrote about the same go: both versions side by side, what differs marked; the judge chooses. */
import { useSignal } from '@preact/signals';
import { useLocation } from 'wouter-preact';
import { runningScore } from '../../../engine/sheets/score-go.ts';
import type { Go } from '../../../engine/sheets/types.ts';
import type { CardOrder, DayClass } from '../desk/day-types.ts';
import type { Choice, Conflict, GoConflict, OrderConflict } from '../desk/desk-types.ts';
import { maneuversOf } from '../entries.ts';
import { shownScore } from '../go/score-parts.ts';
import { stepsOf } from '../go/steps.ts';
import { outcomeWords } from '../outcome-words.ts';
import { useParts } from '../parts.tsx';
import { Screen } from '../screen.tsx';
import { useTimeZone } from '../show.ts';
import { timeOf } from '../state-words.ts';
import { partsOf, pickedGo, type Side } from './differences.ts';
import { partName, partWords } from './part-words.ts';

export function DifferencesScreen() {
  const { t, desk } = useParts();
  const conflicts = desk.conflicts.value;
  return (
    <Screen title={t('judge-differences')} back={{ href: '/', label: t('judge-day') }}>
      {conflicts.length === 0 ? (
        <p class="empty">{t('judge-differences-none')}</p>
      ) : (
        <p>{t('judge-differences-what')}</p>
      )}
      {conflicts.map((conflict) => (
        <Difference key={keyOf(conflict)} conflict={conflict} />
      ))}
    </Screen>
  );
}

const keyOf = (conflict: Conflict): string =>
  `${conflict.classId}/${conflict.kind === 'go' ? conflict.classEntryId : 'order'}/${conflict.foundAt}`;

function Difference({ conflict }: { readonly conflict: Conflict }) {
  const { desk, t, words, speech } = useParts();
  const [, go] = useLocation();
  const timeZone = useTimeZone();
  const refused = useSignal('');
  const dayClass = desk.classOf(conflict.classId).value;
  if (dayClass === undefined) return null;
  const settle = async (choice: Choice) => {
    const outcome = await desk.settle(conflict, choice);
    refused.value = outcome.ok ? '' : outcomeWords(outcome, { words, speech, dayClass });
    if (outcome.ok && desk.conflicts.value.length === 0) go(`/classes/${conflict.classId}`);
  };
  const { theirSavedAt } = conflict;
  const title =
    conflict.kind === 'go'
      ? t('judge-difference-go', { number: conflict.backNumber, class: dayClass.number })
      : t('judge-difference-order', { class: dayClass.number });
  return (
    <section class="difference" aria-label={title}>
      <h2>{title}</h2>
      {theirSavedAt === null ? null : (
        <p class="note">{t('judge-difference-when', { time: timeOf(theirSavedAt, { words, timeZone }) })}</p>
      )}
      {conflict.kind === 'go' ? (
        <OfGo conflict={conflict} dayClass={dayClass} settle={settle} />
      ) : (
        <OfOrder conflict={conflict} dayClass={dayClass} settle={settle} />
      )}
      <div role="alert">{refused.value === '' ? null : <p class="fault">{refused.value}</p>}</div>
    </section>
  );
}

interface ChoiceProps<Kind> {
  readonly conflict: Kind;
  readonly dayClass: DayClass;
  readonly settle: (choice: Choice) => Promise<void>;
}

function OfGo({ conflict, dayClass, settle }: ChoiceProps<GoConflict>) {
  const parts = useParts();
  const { t, words } = parts;
  const picks = useSignal<Readonly<Record<string, Side>>>({});
  const { mine, together } = conflict;
  const theirs = conflict.theirs ?? {};
  const steps = stepsOf(dayClass.sheet, maneuversOf(dayClass));
  const goParts = partsOf(steps, mine, theirs).filter(({ step, differs }) => step !== undefined || differs);
  const differing = goParts.filter(({ differs }) => differs);
  const isPicked = differing.every(({ key }) => picks.value[key] !== undefined);
  const totalOf = (go: Go) =>
    shownScore(dayClass.sheet, runningScore(dayClass.sheet, maneuversOf(dayClass), go), words).total;
  const cell = (key: string, side: Side, text: string, differs: boolean) =>
    differs ? (
      <button
        type="button"
        aria-pressed={picks.value[key] === side}
        onClick={() => (picks.value = { ...picks.value, [key]: side })}
      >
        {text}
      </button>
    ) : (
      text
    );
  return (
    <>
      <table class="versions">
        <thead>
          <tr>
            <th scope="col">{t('judge-difference-part')}</th>
            <th scope="col">{t('judge-difference-mine')}</th>
            <th scope="col">{t('judge-difference-theirs')}</th>
          </tr>
        </thead>
        <tbody>
          {goParts.map((part) => (
            <tr key={part.key} data-differs={part.differs}>
              <th scope="row">{partName(part, parts)}</th>
              <td>{cell(part.key, 'mine', partWords(mine, part, { ...parts, dayClass }), part.differs)}</td>
              <td>
                {cell(part.key, 'theirs', partWords(theirs, part, { ...parts, dayClass }), part.differs)}
              </td>
            </tr>
          ))}
          <tr class="sum">
            <th scope="row">{t('judge-part-total')}</th>
            <td>{totalOf(mine)}</td>
            <td>{totalOf(theirs)}</td>
          </tr>
        </tbody>
      </table>
      <div class="reach">
        {together === null || conflict.theirsIsSigned ? null : (
          <button type="button" class="main" onClick={() => void settle({ take: 'merged', go: together })}>
            {t('judge-difference-together')}
          </button>
        )}
        <Either conflict={conflict} settle={settle} />
        {differing.length < 2 || conflict.theirsIsSigned ? null : (
          <button
            type="button"
            disabled={!isPicked}
            onClick={() =>
              void settle({
                take: 'merged',
                go: pickedGo({ parts: goParts, mine, theirs, picks: picks.value }),
              })
            }
          >
            {t('judge-difference-take-picked')}
          </button>
        )}
      </div>
    </>
  );
}

function OfOrder({ conflict, dayClass, settle }: ChoiceProps<OrderConflict>) {
  const { t } = useParts();
  const numberOf = (id: string) =>
    dayClass.entries.find(({ classEntryId }) => classEntryId === id)?.backNumber ?? '?';
  const told = ({ ranking, ownOrder }: CardOrder) =>
    (ranking ?? ownOrder ?? []).map((level) =>
      level.map(numberOf).join(ranking === undefined ? ' › ' : ' = '),
    );
  const column = (side: Side, order: CardOrder) => (
    <td>
      <ol>
        {told(order).map((text, index) => (
          <li key={`${side}${index}`}>{text}</li>
        ))}
      </ol>
    </td>
  );
  return (
    <>
      <table class="versions">
        <thead>
          <tr>
            <th scope="col">{t('judge-difference-mine')}</th>
            <th scope="col">{t('judge-difference-theirs')}</th>
          </tr>
        </thead>
        <tbody>
          <tr>
            {column('mine', conflict.mine)}
            {column('theirs', conflict.theirs ?? {})}
          </tr>
        </tbody>
      </table>
      <Either conflict={conflict} settle={settle} />
    </>
  );
}

/** What is signed already is changed by an amendment only. */
function Either({ conflict, settle }: Pick<ChoiceProps<Conflict>, 'conflict' | 'settle'>) {
  const { t } = useParts();
  return (
    <>
      {conflict.theirsIsSigned ? <p class="heed">{t('judge-difference-signed')}</p> : null}
      <div class="pair">
        {conflict.theirsIsSigned ? null : (
          <button type="button" onClick={() => void settle({ take: 'mine' })}>
            {t('judge-difference-take-mine')}
          </button>
        )}
        <button type="button" onClick={() => void settle({ take: 'theirs' })}>
          {t('judge-difference-take-theirs')}
        </button>
      </div>
    </>
  );
}
