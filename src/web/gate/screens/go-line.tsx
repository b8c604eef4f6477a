/** One line of the gate sheet: the back number, who it is, whether she is here. */
import { useSignal } from '@preact/signals';
import { useWords } from '../../shared/words.tsx';
import { atTheGate } from '../desk/gate-sheet.ts';
import type { ClassLine, EntryLine, Sheet } from '../desk/gate-types.ts';
import { useChanges } from '../use-changes.ts';
import { useDesk } from '../use-desk.ts';
import { EntryDialog } from './entry-dialog.tsx';

interface GoParts {
  readonly entry: EntryLine;
  readonly line: ClassLine;
  readonly sheet: Sheet;
  readonly isOpen: boolean;
}

export function GoLine({ entry, line, sheet, isOpen }: GoParts) {
  const { t } = useWords();
  const desk = useDesk();
  const asks = useSignal(false);
  const { setStatus } = useChanges(line);
  const { backNumber, status, goPosition } = entry;
  const isGoing = status === 'entered' || status === 'checked-in';
  const isHere = status === 'checked-in';
  const place = whereIs(entry, sheet, desk.goneOf(line.id));
  const isUnsent = desk.outgoing.value.some(
    ({ change, refused }) => refused === null && change.kind === 'status' && change.classEntryId === entry.id,
  );
  const next = isHere ? 'entered' : 'checked-in';
  return (
    <li class={`go is-${status}${place === '' ? '' : ` is-${place}`}`}>
      <span class="go-place" aria-hidden="true">
        {isGoing ? (goPosition ?? '') : ''}
      </span>
      <span class="go-number">{backNumber}</span>
      <span class="go-words">
        <Names entry={entry} />
        <span class="go-tags">
          {place !== '' && (
            <span class={place === 'in-ring' ? 'tag is-strong' : 'tag'}>{t(`gate-${place}`)}</span>
          )}
          {!isGoing && <span class="tag">{t(`shared-status-${status}`)}</span>}
          {entry.addedLate && <span class="tag">{t('gate-late')}</span>}
          {isUnsent && <span class="tag is-heed">{t('gate-not-sent')}</span>}
        </span>
        {!isGoing && entry.statusReason !== null && <span class="note">{entry.statusReason}</span>}
      </span>
      {isOpen && isGoing && (
        <button
          type="button"
          class="check"
          aria-pressed={isHere}
          aria-label={t('gate-check-in-number', { backNumber: `${backNumber}` })}
          onClick={() => void setStatus({ entry, status: next, reason: null })}
        >
          <span class="check-box" aria-hidden="true">
            {isHere ? '✓' : ''}
          </span>
          <span aria-hidden="true">{t('gate-here')}</span>
        </button>
      )}
      {isOpen && (
        <button
          type="button"
          class="more"
          aria-label={t('gate-more', { backNumber: `${backNumber}` })}
          onClick={() => (asks.value = true)}
        >
          <span aria-hidden="true">…</span>
        </button>
      )}
      <EntryDialog entry={entry} line={line} open={asks.value} onClose={() => (asks.value = false)} />
    </li>
  );
}

/** Who goes by back number alone has no name to read out. */
function Names({ entry: { exhibitor, horse, backNumber } }: { readonly entry: EntryLine }) {
  const isNamed = exhibitor !== `No. ${backNumber}`;
  return (
    <span class="go-names">
      {isNamed && <strong>{exhibitor}</strong>}
      {horse !== null && <span class="note">{horse}</span>}
    </span>
  );
}

type Place = 'in-ring' | 'on-deck' | 'in-the-hole' | 'gone' | '';

function whereIs(entry: EntryLine, sheet: Sheet, byHand: Parameters<typeof atTheGate>[1]): Place {
  if (sheet.isRail || entry.goPosition === null) return '';
  const { inRing, onDeck, inTheHole, gone } = atTheGate(sheet, byHand);
  if (entry.id === inRing?.id) return gone === 0 && byHand === undefined ? '' : 'in-ring';
  if (gone === 0 && byHand === undefined) return '';
  if (entry.id === onDeck?.id) return 'on-deck';
  if (entry.id === inTheHole?.id) return 'in-the-hole';
  const before = sheet.entries.findIndex(({ id }) => id === entry.id);
  const ring = sheet.entries.findIndex(({ id }) => id === inRing?.id);
  const isGoing = entry.status === 'entered' || entry.status === 'checked-in';
  return isGoing && (ring < 0 || before < ring) ? 'gone' : '';
}
