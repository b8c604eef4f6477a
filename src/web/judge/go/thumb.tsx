/** Under the thumb: undo and what else belongs to a go, then the marks; where all is marked, the next go. */
import { useSignal } from '@preact/signals';
import { useLocation } from 'wouter-preact';
import { scoreGo } from '../../../engine/sheets/score-go.ts';
import { useDerived } from '../derived.ts';
import { isRail, maneuversOf, nextEntry } from '../entries.ts';
import { useParts } from '../parts.tsx';
import type { GoModel } from './go-model.ts';
import { MarkKeys } from './mark-keys.tsx';
import type { OpenParts } from './open-parts.ts';
import { writtenAt } from './steps.ts';

interface ThumbProps {
  readonly model: GoModel;
  readonly open: OpenParts;
}

export function Thumb({ model, open }: ThumbProps) {
  if (model.book.shut.value !== null) {
    return (
      <footer class="thumb">
        <Finished model={model} />
      </footer>
    );
  }
  return (
    <footer class="thumb">
      <Tools model={model} open={open} />
      <Marks model={model} open={open} />
    </footer>
  );
}

function Tools({ model, open }: ThumbProps) {
  const { t } = useParts();
  const step = model.step;
  const isWritten = useDerived(
    () => step !== undefined && writtenAt(model.go.value, step) !== undefined,
    [model, step],
  );
  return (
    <div class="tools">
      <button type="button" disabled={model.undoable.value === 0} onClick={() => void model.undo()}>
        {t('judge-undo')}
      </button>
      {step?.kind === 'maneuver' ? (
        <button type="button" onClick={() => void model.notSeen(step)}>
          {t('judge-not-seen')}
        </button>
      ) : isWritten && step !== undefined ? (
        <button type="button" onClick={() => void model.unmark(step)}>
          {t('judge-unmark')}
        </button>
      ) : null}
      <button type="button" onClick={() => (open.remark.value = true)}>
        {t('judge-remark')}
      </button>
      <button
        type="button"
        aria-pressed={model.go.value.ruling !== undefined}
        onClick={() => (open.ruling.value = true)}
      >
        {t('judge-ruling')}
      </button>
      {isRail(model.dayClass) ? null : (
        <button type="button" onClick={() => (open.line.value = !open.line.value)}>
          {t('judge-line')}
        </button>
      )}
    </div>
  );
}

function Marks({ model, open }: ThumbProps) {
  const { t } = useParts();
  const marksOn = useSignal(false);
  const step = model.step;
  const isBarred = useDerived(() => model.reading.value.tier === 'not-placed', [model]);
  if (isBarred && !marksOn.value) {
    return (
      <>
        <Finished model={model} />
        {model.steps.length === 0 ? null : (
          <button type="button" onClick={() => (marksOn.value = true)}>
            {t('judge-marks-on')}
          </button>
        )}
      </>
    );
  }
  if (step !== undefined) return <MarkKeys model={model} step={step} />;
  return (
    <>
      <StillNeeded model={model} open={open} />
      <Finished model={model} />
    </>
  );
}

/** A maneuver that counts as not shown: only she can say whether the pattern was kept. */
function StillNeeded({ model, open }: ThumbProps) {
  const { t } = useParts();
  const needsRuling = useDerived(() => {
    const { dayClass } = model;
    const scored = scoreGo(dayClass.sheet, maneuversOf(dayClass), model.go.value);
    return !scored.ok && scored.faults.some(({ code }) => code === 'ruling_missing');
  }, [model]);
  return needsRuling ? (
    <div class="heed">
      <p>{t('judge-needs-ruling')}</p>
      <button type="button" onClick={() => (open.ruling.value = true)}>
        {t('judge-ruling')}
      </button>
    </div>
  ) : null;
}

function Finished({ model }: { readonly model: GoModel }) {
  const { t, books } = useParts();
  const [, go] = useLocation();
  const { dayClass, entry } = model;
  const { classId } = dayClass;
  const next = useDerived(() => {
    const { content } = books.of(classId).value;
    const maneuvers = maneuversOf(dayClass);
    const isDone = (id: string) => {
      const written = content.value.goes[id];
      return written !== undefined && scoreGo(dayClass.sheet, maneuvers, written).ok;
    };
    return nextEntry(dayClass, ({ classEntryId }) => isDone(classEntryId), entry.classEntryId);
  }, [books, dayClass, entry]);
  if (isRail(dayClass)) {
    return (
      <button type="button" class="main" onClick={() => go(`/classes/${classId}/places`)}>
        {t('judge-to-places')}
      </button>
    );
  }
  if (next === undefined || model.book.shut.value !== null) {
    return (
      <button type="button" class="main" onClick={() => go(`/classes/${classId}/compare`)}>
        {t('judge-to-compare')}
      </button>
    );
  }
  return (
    <button type="button" class="main" onClick={() => go(`/classes/${classId}/goes/${next.classEntryId}`)}>
      {t('judge-next-go', { number: next.backNumber })}
    </button>
  );
}
