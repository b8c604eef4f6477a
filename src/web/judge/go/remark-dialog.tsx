/** Remarks: of a maneuver, and of the whole go. Text fields, so that the phone's own dictation works. */
import { type Signal, useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { Dialog } from '../dialog.tsx';
import { useParts } from '../parts.tsx';
import type { GoModel } from './go-model.ts';
import { stepName } from './step-words.ts';
import type { StopWatch } from './stop-watch.ts';
import { waitingRemark } from './waiting-remarks.ts';
import { remarkAt } from './write-go.ts';

interface RemarkProps {
  readonly model: GoModel;
  readonly open: Signal<boolean>;
  /** `undefined`: there is no video. */
  readonly watch: StopWatch | undefined;
}

export function RemarkDialog({ model, open, watch }: RemarkProps) {
  const { t } = useParts();
  return (
    <Dialog open={open} title={t('judge-remarks', { number: model.entry.backNumber })}>
      <Remarks model={model} watch={watch} />
    </Dialog>
  );
}

function Remarks({ model, watch }: Pick<RemarkProps, 'model' | 'watch'>) {
  const parts = useParts();
  const { t } = parts;
  const maneuvers = model.steps.filter((step) => step.kind === 'maneuver');
  const position = useSignal(
    model.position ?? model.go.value.maneuvers?.at(-1)?.position ?? maneuvers[0]?.position,
  );
  const at = position.value;
  const { classEntryId } = model.entry;
  const stamp = watch === undefined ? undefined : () => `[${watch.text.value}] `;
  return (
    <>
      {at === undefined ? null : (
        <>
          <label class="field">
            <span>{t('judge-remark-which')}</span>
            <select value={at} onChange={({ currentTarget: { value } }) => (position.value = Number(value))}>
              {maneuvers.map((step) => (
                <option key={step.position} value={step.position}>
                  {step.position} {stepName(step, parts)}
                </option>
              ))}
            </select>
          </label>
          <RemarkField
            key={at}
            label={t('judge-remark-at', { position: at })}
            text={remarkAt(model.go.value, at) || (waitingRemark(classEntryId, at) ?? '')}
            stamp={stamp}
            keep={(text) => model.remarkAt(at, text)}
            first
          />
        </>
      )}
      <RemarkField
        label={t('judge-remark-of-go')}
        text={model.go.value.remark ?? ''}
        stamp={stamp}
        keep={(text) => model.remark(text)}
      />
    </>
  );
}

/** A pause of the hand; what was typed is kept then, and when the field is left or the page is hidden. */
const pauseMilliseconds = 600;

interface FieldProps {
  readonly label: string;
  readonly text: string;
  readonly stamp: (() => string) | undefined;
  readonly keep: (text: string) => Promise<boolean>;
  readonly first?: boolean;
}

function RemarkField({ label, text, stamp, keep, first = false }: FieldProps) {
  const { t } = useParts();
  const field = useRef<HTMLTextAreaElement>(null);
  const kept = useRef(text);
  const timer = useRef<ReturnType<typeof setTimeout>>();
  const keepNow = () => {
    clearTimeout(timer.current);
    const typed = field.current?.value ?? kept.current;
    if (typed === kept.current) return;
    kept.current = typed;
    void keep(typed);
  };
  const later = () => {
    clearTimeout(timer.current);
    timer.current = setTimeout(keepNow, pauseMilliseconds);
  };
  useEffect(() => {
    if (first) field.current?.focus();
    addEventListener('pagehide', keepNow);
    return () => {
      removeEventListener('pagehide', keepNow);
      keepNow();
    };
  }, []);
  const stampNow = () => {
    const place = field.current;
    if (place === null || stamp === undefined) return;
    place.setRangeText(stamp(), place.selectionStart, place.selectionEnd, 'end');
    place.focus();
    later();
  };
  return (
    <div class="field">
      <label>
        <span>{label}</span>
        <textarea
          ref={field}
          rows={3}
          maxLength={1000}
          defaultValue={text}
          onInput={later}
          onBlur={keepNow}
        />
      </label>
      {stamp === undefined ? null : (
        <button type="button" onClick={stampNow}>
          {t('judge-stamp', { time: stamp().trim() })}
        </button>
      )}
    </div>
  );
}
