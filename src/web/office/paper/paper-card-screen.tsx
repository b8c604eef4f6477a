import { useEffect, useMemo } from 'preact/hooks';
import { Link } from 'wouter-preact';
import type { LiveEvent } from '../../shared/live.ts';
import { useWords } from '../../shared/words.tsx';
import { concernsClass } from '../office-state.ts';
import { paths } from '../paths.ts';
import { FaultNote } from '../pieces/fault-note.tsx';
import { ScreenHead } from '../pieces/screen-head.tsx';
import { Shown } from '../pieces/shown.tsx';
import { session } from '../session.ts';
import { type AskedFor, useAsked } from '../use-asked.ts';
import { DifferenceTable } from './difference-table.tsx';
import { idOfDifference } from './difference-words.ts';
import './paper.css';
import { type PaperCard, savedOf } from './paper-card.ts';
import { PaperState } from './paper-state.tsx';
import { Photo } from './photo.tsx';
import { SendCard } from './send-card.tsx';
import type { CardToType } from './typed-card.ts';
import { openTypingDesk } from './typing-desk.ts';
import { TypingForm } from './typing-form.tsx';
import { useClassToType } from './use-class-to-type.ts';
import { WithdrawPaper } from './withdraw-paper.tsx';

interface Address {
  readonly showId: string;
  readonly paperCardId: string;
}

/** One card that came on paper, as the one of the two who sits here types it. */
export function PaperCardScreen({ showId, paperCardId }: Address) {
  const { t } = useWords();
  const paper = useAsked<PaperCard>(`/v1/paper-cards/${paperCardId}`, { on: concerns(paperCardId) });
  const { ofClass, card, refused, again } = useClassToType(showId, paper.body?.classId);
  return (
    <div class="paper-card">
      <ScreenHead title={t('office-paper-card-title', { number: ofClass?.number ?? 0 })}>
        {ofClass !== undefined && (
          <p class="note">
            <Link href={paths.classPaper(showId, ofClass.id)}>
              {t('office-paper-of-class', { number: ofClass.number, name: ofClass.name })}
            </Link>
          </p>
        )}
      </ScreenHead>
      <FaultNote words={refused?.words} again={again} />
      <Shown asked={paper}>
        {(body) => (
          <>
            <PaperState paper={body} showId={showId} />
            {card !== undefined && <AtWork {...{ asked: paper, paper: body, card }} />}
          </>
        )}
      </Shown>
    </div>
  );
}

/** A signature on the phone overtakes the paper of its card. */
const concerns =
  (paperCardId: string) =>
  (event: LiveEvent): boolean =>
    event.type === 'card.signed' || event.type === 'card.amended' || concernsClass(paperCardId)(event);

interface WorkParts {
  readonly asked: AskedFor<PaperCard>;
  readonly paper: PaperCard;
  readonly card: CardToType;
}

function AtWork({ asked, paper, card }: WorkParts) {
  const accountId = session.value?.account.id ?? '';
  const saved = savedOf(paper);
  const takesMine =
    paper.status === 'open' && !paper.overtaken && (paper.mine !== null || paper.entries.length < 2);
  // What came back from the service later does not go over what is being typed here.
  const desk = useMemo(
    () => openTypingDesk({ card, accountId, saved, paperCardId: paper.id }),
    [card, accountId, paper.id],
  );
  useEffect(() => desk.close, [desk]);
  const differences = paper.differences ?? [];
  const differing = useMemo(() => new Set(differences.map(idOfDifference)), [paper.differences]);
  return (
    <>
      {differences.length > 0 && <DifferenceTable {...{ differences, card }} />}
      <div class="beside">
        <Photo paper={paper} again={asked.again} />
        {takesMine && (
          <div class="work">
            <TypingForm {...{ desk, differing }} />
            <SendCard {...{ desk, paper, etag: asked.etag, again: asked.again }} />
          </div>
        )}
      </div>
      {paper.status === 'open' && <WithdrawPaper {...{ paper, again: asked.again }} />}
    </>
  );
}
