/** Whose phone this is, and its classes. */
import { useRef, useState } from 'preact/hooks';
import { unsentHere } from '../judge/desk/let-go.ts';
import { useWords } from '../shared/words.tsx';
import type { PairedPhone } from './pairing.ts';
import { Screen } from './screen.tsx';
import { type SeatView, seatInWords, showInWords, whoInWords } from './who.ts';

interface PhoneScreenProps {
  readonly phone: PairedPhone;
  /** A link with another code was opened. */
  readonly anotherCode: boolean;
  readonly busy: boolean;
  readonly onLookAgain: () => void;
  readonly onLetGo: () => void;
}

export function PhoneScreen({ phone, anotherCode, busy, onLookAgain, onLetGo }: PhoneScreenProps) {
  const words = useWords();
  const { t } = words;
  const dialog = useRef<HTMLDialogElement>(null);
  const [unsent, setUnsent] = useState(0);
  const askToLetGo = async () => {
    setUnsent(await unsentHere());
    dialog.current?.showModal();
  };
  return (
    <Screen name="paired" title={whoInWords(phone, words)}>
      <p class="seat">{showInWords(phone, words)}</p>
      <p>{t(`pair-what-for-${phone.role}`)}</p>
      {anotherCode && (
        <div class="fault">
          <strong>{t('pair-paired-already')}</strong> {t('pair-paired-already-do')}
        </div>
      )}
      {phone.role !== 'gate' && <Seats seats={phone.seats} />}
      <div class="reach">
        <a class="button main" href={phone.role === 'gate' ? '/gate' : '/judge'}>
          {t(phone.role === 'gate' ? 'pair-to-gate' : 'pair-to-classes')}
        </a>
        <p class="note">{t('pair-lost')}</p>
        <button type="button" disabled={busy} onClick={onLookAgain}>
          {t('pair-look-again')}
        </button>
        <button class="grave" type="button" onClick={() => void askToLetGo()}>
          {t('pair-let-go')}
        </button>
      </div>
      <dialog
        ref={dialog}
        aria-labelledby="let-go-title"
        onClose={({ currentTarget }) => currentTarget.returnValue === 'let-go' && onLetGo()}
      >
        <h2 id="let-go-title">{t('pair-let-go-title')}</h2>
        <p>{t('pair-let-go-what')}</p>
        {unsent > 0 && <p class="fault">{t('pair-let-go-unsent', { unsent })}</p>}
        <form method="dialog" class="reach">
          <button type="submit" value="keep" class="main">
            {t('pair-let-go-keep')}
          </button>
          <button type="submit" value="let-go" class="grave">
            {t('pair-let-go-do')}
          </button>
        </form>
      </dialog>
    </Screen>
  );
}

function Seats({ seats }: { readonly seats: readonly SeatView[] }) {
  const { t } = useWords();
  return (
    <div>
      <h2 id="class-heading">{t('pair-classes')}</h2>
      {seats.length === 0 && <p class="note">{t('pair-no-classes')}</p>}
      <ul class="classes" aria-labelledby="class-heading">
        {seats.map((seat) => (
          <Seat key={seat.seatId} seat={seat} />
        ))}
      </ul>
    </div>
  );
}

function Seat({ seat }: { readonly seat: SeatView }) {
  const words = useWords();
  return (
    <li>
      <span class="number">
        <span aria-hidden="true">{seat.number}</span>
        <span class="heard">{words.t('pair-class-heard', { number: seat.number })}</span>
      </span>
      <span class="words">
        {seat.name} <span class="state">{seatInWords(seat, words)}</span>
      </span>
    </li>
  );
}
