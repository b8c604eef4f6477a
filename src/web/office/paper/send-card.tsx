import { useState } from 'preact/hooks';
import { cardFaultSentence } from '../../../engine/sentences/fault-sentences.ts';
import type { CardFault } from '../../../engine/sheets/card-types.ts';
import { checkCard } from '../../../engine/sheets/check-card.ts';
import type { Part } from '../../shared/api.ts';
import { useWords } from '../../shared/words.tsx';
import { ask, type Refused } from '../ask.ts';
import { say } from '../pieces/said.tsx';
import { SendingForm } from '../pieces/sending-form.tsx';
import { useSpeech } from './card-speech.ts';
import { type PaperCard, savedOf } from './paper-card.ts';
import { stageOf } from './paper-state.tsx';
import type { TypingDesk } from './typing-desk.ts';

interface SendParts {
  readonly desk: TypingDesk;
  readonly paper: PaperCard;
  /** Version of her own entry; none before the first. */
  readonly etag: string | undefined;
  readonly again: () => Promise<void>;
}

/** What is still missing, and the button. What was typed stays, whatever the service says. */
export function SendCard({ desk, paper, etag, again }: SendParts) {
  const { t } = useWords();
  const [stale, setStale] = useState(false);
  const missing = missingOn(desk);
  const { content } = desk.read.value;
  const done = (answer: PaperCard) => {
    desk.sent();
    setStale(false);
    say(t(`office-paper-sent-${stageOf(answer)}`));
    void again();
  };
  const refused = ({ code }: Refused) => {
    setStale(code === 'stale_version');
    if (code !== 'no_answer') void again();
  };
  return (
    <section class="send">
      <MissingList desk={desk} missing={missing} />
      {stale && paper.mine !== null && (
        <p class="heed">
          {t('office-paper-stale')}{' '}
          <button type="button" onClick={() => desk.takeSaved(savedOf(paper) ?? content)}>
            {t('office-paper-take-saved')}
          </button>
        </p>
      )}
      <SendingForm<Part<'PaperCard'>>
        action={t(paper.mine === null ? 'office-paper-send' : 'office-paper-send-mended')}
        disabled={missing.length > 0}
        send={() =>
          ask({
            ...{ method: 'PUT', path: `/v1/paper-cards/${paper.id}/entries/mine`, body: content },
            ifMatch: paper.mine === null ? undefined : etag,
          })
        }
        onDone={done}
        onRefused={refused}
      />
    </section>
  );
}

/** As the service would say: what is missing or wrong, and what was typed and not understood. */
function missingOn({ card, read }: TypingDesk): readonly (CardFault | 'unread')[] {
  const { content, unread } = read.value;
  const entries = card.entries.map(({ id }) => ({ id, going: true }));
  const check = checkCard({ sheet: card.sheet, maneuvers: card.maneuvers, entries, content });
  return [...unread.map(() => 'unread' as const), ...(check.ok ? [] : check.faults)];
}

const mostShown = 6;

interface MissingParts {
  readonly desk: TypingDesk;
  readonly missing: readonly (CardFault | 'unread')[];
}

function MissingList({ desk, missing }: MissingParts) {
  const { t } = useWords();
  const speech = useSpeech();
  if (missing.length === 0) return <p class="note">{t('office-paper-whole')}</p>;
  const { card } = desk;
  const names = {
    entry: (id: string) => String(card.entries.find((entry) => entry.id === id)?.backNumber ?? id),
    maneuver: (position: number) => t('office-paper-maneuver-short', { position }),
  };
  const shown = missing.slice(0, mostShown);
  return (
    <div class="missing">
      <h2>{t('office-paper-missing', { count: missing.length })}</h2>
      <ul>
        {speech !== undefined &&
          shown.map((fault, index) => (
            <li key={index}>
              {fault === 'unread'
                ? t('office-paper-some-unread')
                : cardFaultSentence(fault, { speech, names })}
            </li>
          ))}
        {missing.length > mostShown && (
          <li>{t('office-paper-more-missing', { count: missing.length - mostShown })}</li>
        )}
      </ul>
    </div>
  );
}
