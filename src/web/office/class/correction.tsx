import type { Answer } from '../../shared/api.ts';
import { useWords } from '../../shared/words.tsx';
import { Shown } from '../pieces/shown.tsx';
import { useAsked } from '../use-asked.ts';
import { BeforeAfter } from './before-after.tsx';
import type { ResultBody } from './changes.ts';
import type { Posting, Preview } from './class-answers.ts';

interface CorrectionParts {
  readonly last: Posting;
  readonly preview: Preview;
  readonly judgeOf: (seatId: string) => string;
}

/** The last posting against the preview: what a correction would change. */
export function Correction({ last, preview, judgeOf }: CorrectionParts) {
  const { t } = useWords();
  const posted = useAsked<Answer<'/v1/postings/{postingId}'>>(`/v1/postings/${last.id}`, { on: () => false });
  return (
    <Shown asked={posted}>
      {({ body }) => (
        <BeforeAfter
          {...{ before: body as ResultBody, preview, judgeOf }}
          heads={{
            before: t('office-change-posted', { version: last.version }),
            after: t('office-change-preview'),
          }}
        />
      )}
    </Shown>
  );
}
