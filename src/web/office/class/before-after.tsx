import { useWords } from '../../shared/words.tsx';
import { RuledTable } from '../pieces/ruled-table.tsx';
import { causeSentences, changeSentence, standingWords, totalWords } from './change-words.ts';
import { type Changes, changesBetween, type LineOfChange, type ResultBody } from './changes.ts';
import type { Preview } from './class-answers.ts';

interface BeforeAfterParts {
  readonly before: ResultBody;
  readonly preview: Preview;
  readonly judgeOf: (seatId: string) => string;
  /** Over the columns: "posted" and "preview", or "as you read it" and "as it is now". */
  readonly heads: { readonly before: string; readonly after: string };
}

/** What was against what would be: in words, then side by side. */
export function BeforeAfter({ before, preview, judgeOf, heads }: BeforeAfterParts) {
  const { t } = useWords();
  const changes = changesBetween(before, preview.body as ResultBody);
  return (
    <div class="before-after">
      <ul>
        {causeSentences(changes, judgeOf, t).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
        {changes.moved.map((line) => (
          <li key={`${line.judge} ${line.entry}`}>
            {line.judge !== null && `${judgeOf(line.judge)}: `}
            {changeSentence(line, t)}
          </li>
        ))}
        {changes.moved.length === 0 && <li>{t('office-change-none')}</li>}
      </ul>
      <SideBySide {...{ changes, judgeOf, heads }} />
    </div>
  );
}

type SideBySideParts = Pick<BeforeAfterParts, 'judgeOf' | 'heads'> & { readonly changes: Changes };

function SideBySide({ changes, judgeOf, heads }: SideBySideParts) {
  const { t } = useWords();
  const separate = changes.lines.some(({ judge }) => judge !== null);
  return (
    <RuledTable caption={t('office-change-caption', heads)} class="changes">
      <thead>
        <tr>
          {separate && <th scope="col">{t('office-judge')}</th>}
          <th scope="col">{t('office-number')}</th>
          <th scope="col">{heads.before}</th>
          <th scope="col">{heads.after}</th>
          <th scope="col">{t('office-change-total-before')}</th>
          <th scope="col">{t('office-change-total-after')}</th>
        </tr>
      </thead>
      <tbody>
        {changes.lines.map((line) => (
          <ChangeRow key={`${line.judge} ${line.entry}`} {...{ line, separate, judgeOf }} />
        ))}
      </tbody>
    </RuledTable>
  );
}

interface ChangeRowParts {
  readonly line: LineOfChange;
  readonly separate: boolean;
  readonly judgeOf: (seatId: string) => string;
}

function ChangeRow({ line, separate, judgeOf }: ChangeRowParts) {
  const { t } = useWords();
  const { judge, backNumber, was, willBe, moves, totalChanges } = line;
  return (
    <tr class={moves || totalChanges ? 'changed' : 'as-before'}>
      {separate && <td>{judge === null ? '' : judgeOf(judge)}</td>}
      <th scope="row" class="figures">
        {backNumber}
      </th>
      <td>{standingWords(was, t)}</td>
      <td>{moves ? <strong>{standingWords(willBe, t)}</strong> : t('office-change-same')}</td>
      <td class="figures">{totalWords(was)}</td>
      <td class="figures">
        {totalChanges ? <strong>{totalWords(willBe)}</strong> : t('office-change-same')}
      </td>
    </tr>
  );
}
