/** What else can be done with an entry: scratched, did not come, excused, taken back; with its reason. */
import { useSignal } from '@preact/signals';
import { useWords } from '../../shared/words.tsx';
import { needsReason, nextStatuses } from '../desk/gate-sheet.ts';
import type { ClassLine, EntryLine, GivenStatus } from '../desk/gate-types.ts';
import { useChanges } from '../use-changes.ts';
import { Modal } from './modal.tsx';
import { ReasonPart } from './reason-part.tsx';

interface DialogParts {
  readonly entry: EntryLine;
  readonly line: ClassLine;
  readonly open: boolean;
  readonly onClose: () => void;
}

const reasonsFor: Readonly<Record<GivenStatus, readonly string[]>> = {
  entered: ['mistake', 'came-after-all'],
  'checked-in': [],
  scratched: ['by-exhibitor', 'horse-unfit', 'exhibitor-unfit'],
  'no-show': ['not-at-gate', 'called-three-times'],
  excused: ['by-judge', 'equipment', 'lameness'],
};

export function EntryDialog({ entry, line, open, onClose }: DialogParts) {
  const { t } = useWords();
  const { setStatus } = useChanges(line);
  const chosen = useSignal<GivenStatus | undefined>(undefined);
  const close = () => {
    chosen.value = undefined;
    onClose();
  };
  const give = (status: GivenStatus, reason: string | null) => {
    close();
    void setStatus({ entry, status, reason });
  };
  const choose = (status: GivenStatus) => {
    if (needsReason(entry.status, status)) chosen.value = status;
    else give(status, null);
  };
  const status = chosen.value;
  return (
    <Modal title={t('gate-entry', { backNumber: `${entry.backNumber}` })} open={open} onClose={close}>
      {status === undefined ? (
        <div class="choices-down">
          {nextStatuses(entry.status).map((next) => (
            <button key={next} type="button" onClick={() => choose(next)}>
              {t(wordOf(entry.status, next))}
            </button>
          ))}
          {entry.status === 'moved' && <p>{t('gate-moved')}</p>}
        </div>
      ) : (
        <ReasonPart
          label={t('gate-why', { status: t(`shared-status-${status}`) })}
          reasons={reasonsFor[status]}
          onReason={(reason) => give(status, reason)}
        />
      )}
      <button type="button" onClick={close}>
        {t('shared-cancel')}
      </button>
    </Modal>
  );
}

/** Coming back to `entered` is taking something back. */
function wordOf(from: EntryLine['status'], to: GivenStatus): string {
  if (to !== 'entered') return `gate-do-${to}`;
  return from === 'checked-in' ? 'gate-do-not-here' : 'gate-do-take-back';
}
