import { useWords } from '../../shared/words.tsx';
import { Part } from '../pieces/part.tsx';
import { Shown } from '../pieces/shown.tsx';
import { useMayWrite } from '../use-show.ts';
import { CardsTable } from './cards-table.tsx';
import { type ClassAnswers, type Preview, type ShowClass, useClassAnswers } from './class-answers.ts';
import { ClassHead } from './class-head.tsx';
import { Correction } from './correction.tsx';
import { isMissing, type JudgeLine, judgeLines } from './judge-lines.ts';
import { type NextStep, nextStep } from './next-step.ts';
import { NextWords } from './next-words.tsx';
import { PostingForm, type ToPost } from './posting-form.tsx';
import { Postings } from './postings.tsx';
import { PreviewTables } from './preview-table.tsx';
import { Rulings } from './rulings.tsx';
import { Ties } from './ties.tsx';

/** The class in hand: cards, ties, preview, postings, in the order in which the work comes. */
export function ClassScreen({ showId, classId }: { readonly showId: string; readonly classId: string }) {
  const mayWrite = useMayWrite();
  const answers = useClassAnswers({ showId, classId, mayWrite });
  const ring = answers.rings.body?.items.find(({ id }) => id === answers.ofClass.body?.ringId)?.name;
  return (
    <Shown asked={answers.ofClass}>
      {(ofClass) => (
        <Shown asked={answers.panel}>
          {(panel) => {
            const preview = answers.preview.body;
            const lines = judgeLines({
              ...{ panel, preview, cards: answers.cards.body?.items ?? [] },
              phones: answers.phones.body?.items ?? [],
              paper: answers.paper.body?.items ?? [],
            });
            return (
              <>
                <ClassHead
                  {...{ ofClass, ring, again: answers.ofClass.again }}
                  state={preview?.state}
                  begun={hasBegun(lines)}
                />
                <ClassParts {...{ answers, ofClass, ring, lines, mayWrite }} />
              </>
            );
          }}
        </Shown>
      )}
    </Shown>
  );
}

const hasBegun = (lines: readonly JudgeLine[]): boolean => lines.some(({ stand }) => stand.is === 'signed');

interface ClassPartsParts {
  readonly answers: ClassAnswers;
  readonly ofClass: ShowClass;
  readonly ring: string | undefined;
  readonly lines: readonly JudgeLine[];
  readonly mayWrite: boolean;
}

function ClassParts({ answers, ofClass, ring, lines, mayWrite }: ClassPartsParts) {
  const { t } = useWords();
  const preview = answers.preview.body;
  const postings = [...(answers.postings.body?.postings ?? [])].reverse();
  const rulings = answers.rulings.body?.rulings ?? [];
  const step = preview && nextStep({ preview, lines, last: postings[0] });
  const again = async () => {
    const { preview, postings, rulings } = answers;
    await Promise.all([preview.again(), postings.again(), rulings.again()]);
  };
  const judgeOf = (seatId: string) => lines.find(({ seat }) => seat.id === seatId)?.seat.name ?? '';
  return (
    <>
      {step !== undefined && <NextWords {...{ step, ofClass }} />}
      <Part title={t('office-cards')}>
        <Shown asked={answers.cards}>{() => <CardsTable {...{ ofClass, ring, lines }} />}</Shown>
      </Part>
      <Shown asked={answers.preview}>
        {(shown) => (
          <>
            {shown.openTies.length + shown.ownTies.length > 0 && (
              <Part title={t('office-ties')}>
                <Ties {...{ classId: ofClass.id, preview: shown, again }} />
              </Part>
            )}
            {rulings.length > 0 && (
              <Part title={t('office-rulings')}>
                <Rulings {...{ classId: ofClass.id, preview: shown, rulings, again }} />
              </Part>
            )}
            <PreviewPart {...{ shown, lines }} />
            {step !== undefined && mayWrite && (
              <PostPart
                {...{ step, preview: shown, classId: ofClass.id, judgeOf, again }}
                etag={answers.preview.etag ?? ''}
              />
            )}
          </>
        )}
      </Shown>
      <Part title={t('office-postings')}>
        <Postings {...{ postings, showId: ofClass.showId, number: ofClass.number }} />
      </Part>
    </>
  );
}

function PreviewPart({ shown, lines }: { readonly shown: Preview; readonly lines: readonly JudgeLine[] }) {
  const { t } = useWords();
  const missing = lines.filter(isMissing);
  return (
    <Part title={t('office-preview')}>
      {missing.length > 0 && missing.length < lines.length && (
        <p class="heed">
          {t('office-preview-partial', { judges: missing.map(({ seat }) => seat.name).join(', ') })}
        </p>
      )}
      <PreviewTables preview={shown} />
      <details>
        <summary>{t('office-rule')}</summary>
        {shown.rule.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
      </details>
    </Part>
  );
}

interface PostPartParts {
  readonly step: NextStep;
  readonly classId: string;
  readonly preview: Preview;
  readonly etag: string;
  readonly judgeOf: (seatId: string) => string;
  readonly again: () => Promise<void>;
}

function PostPart({ step, classId, preview, etag, judgeOf, again }: PostPartParts) {
  const { t } = useWords();
  const toPost = whatToPost(step);
  // The list of cards may be a moment ahead of the preview: nothing is offered for posting that lacks a card.
  if (toPost === undefined || preview.cardsMissing.length > 0) return null;
  const isChange = step.is === 'changed-since';
  return (
    <Part title={t(`office-post-head-${toPost}`)}>
      {isChange && <Correction {...{ last: step.last, preview, judgeOf }} />}
      <PostingForm key={toPost} {...{ classId, toPost, preview, etag, judgeOf, again }} />
    </Part>
  );
}

function whatToPost(step: NextStep): ToPost | undefined {
  switch (step.is) {
    case 'ready-to-post':
      return 'first';
    case 'changed-since':
      return step.last.state === 'provisional' ? 'anew' : 'correction';
    case 'make-official':
      return 'official';
    default:
      return undefined;
  }
}
