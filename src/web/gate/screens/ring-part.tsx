/** Who is in the ring, who is next and who after that, as far as judges' phones and this gate know. */
import { useWords } from '../../shared/words.tsx';
import { type AtTheGate, atTheGate, sayGone } from '../desk/gate-sheet.ts';
import type { ClassLine, EntryLine, Sheet } from '../desk/gate-types.ts';
import { useDesk } from '../use-desk.ts';

interface RingParts {
  readonly line: ClassLine;
  readonly sheet: Sheet;
}

export function RingPart({ line, sheet }: RingParts) {
  const { t } = useWords();
  const desk = useDesk();
  const now = atTheGate(sheet, desk.goneOf(line.id));
  const step = (by: 1 | -1) => void desk.keepGone(line.id, sayGone(sheet, now.gone + by));
  if (line.state !== 'called' && line.state !== 'under-way') return null;
  return (
    <section class="at-gate" aria-label={t('gate-at-the-gate')}>
      <div class="at-gate-numbers" aria-live="polite">
        {now.inRing === undefined ? (
          <p class="rail">{t('gate-all-gone')}</p>
        ) : (
          <>
            <Spot place="in-ring" entry={now.inRing} />
            <Spot place="on-deck" entry={now.onDeck} />
            <Spot place="in-the-hole" entry={now.inTheHole} />
          </>
        )}
      </div>
      <p class="note">{t('gate-gone-count', { gone: now.gone, going: now.going })}</p>
      <Steps now={now} step={step} />
    </section>
  );
}

function Steps({ now, step }: { readonly now: AtTheGate; readonly step: (by: 1 | -1) => void }) {
  const { t } = useWords();
  return (
    <div class="steps">
      <button type="button" disabled={now.gone === 0} onClick={() => step(-1)}>
        {t('gate-one-back')}
      </button>
      <button type="button" class="main" disabled={now.inRing === undefined} onClick={() => step(1)}>
        {t('gate-next')}
      </button>
    </div>
  );
}

function Spot({ place, entry }: { readonly place: string; readonly entry: EntryLine | undefined }) {
  const { t } = useWords();
  return (
    <p class={`spot is-${place}`}>
      <span class="spot-place">{t(`gate-${place}`)}</span>
      <span class="spot-number">{entry?.backNumber ?? t('gate-nobody')}</span>
      {entry !== undefined && entry.status !== 'checked-in' && (
        <span class="tag">{t('gate-not-here-yet')}</span>
      )}
    </p>
  );
}
