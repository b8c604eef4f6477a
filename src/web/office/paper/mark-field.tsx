import { goFaultSentence } from '../../../engine/sentences/fault-sentences.ts';
import type { Speech } from '../../../engine/sentences/speech.ts';
import type { GoFault } from '../../../engine/sheets/types.ts';
import { useWords, type Words } from '../../shared/words.tsx';
import { type FieldLabel, labelOf } from './labels.ts';
import { markText, spokenMark } from './mark-words.ts';
import { typedField } from './move-on.ts';
import { type MarkedSheet, penaltiesOf, type SheetField } from './sheet-fields.ts';
import type { GoRead } from './typed-go.ts';

interface FieldParts {
  readonly card: MarkedSheet;
  readonly field: SheetField;
  readonly text: string;
  readonly read: GoRead;
  readonly write: (key: string, text: string) => void;
  readonly id: string;
  readonly label: FieldLabel;
  readonly fault: GoFault | undefined;
  /** The other who typed the card has something else here. */
  readonly differs: boolean;
  readonly backNumber: number;
  readonly speech: Speech | undefined;
}

/** One field of the paper: what was typed, and under it what was understood. */
export function MarkField(parts: FieldParts) {
  const { field, text, read, write, id, label, fault, differs, backNumber, speech } = parts;
  const words = useWords();
  const { t } = words;
  const unread = read.unread.get(field.key);
  const faultWords =
    unread !== undefined
      ? t('office-paper-unread', { pieces: unread.join(' ') })
      : fault === undefined || speech === undefined
        ? undefined
        : goFaultSentence({ ...fault, position: undefined }, { speech, names: sheetNames });
  return (
    <div class={`mark ${field.kind === 'mark' ? 'one' : field.kind} ${differs ? 'differs' : ''}`}>
      <label for={id} title={label.long}>
        {label.short}
      </label>
      <input
        {...{ id, [typedField]: field.key, value: text }}
        aria-label={t('office-paper-field-of', { label: label.long, number: backNumber })}
        aria-describedby={`${id}-read`}
        aria-invalid={faultWords !== undefined}
        autocomplete="off"
        autocapitalize="none"
        spellcheck={false}
        maxLength={60}
        onInput={({ currentTarget }) => write(field.key, currentTarget.value)}
      />
      <span id={`${id}-read`} class={faultWords === undefined ? 'read' : 'read field-fault'}>
        {faultWords ?? <span aria-hidden="true">{understood(parts, words, seen)}</span>}
        {faultWords === undefined && <span class="heard">{understood(parts, words, spoken)}</span>}
        {differs && <span class="heard"> {t('office-paper-differs-here')}</span>}
      </span>
    </div>
  );
}

/** The field says which maneuver it is. */
const sheetNames = { maneuver: (position: number) => String(position), entry: (entry: string) => entry };

type TellMark = (mark: string, words: Words, signed: boolean) => string;

const seen: TellMark = (mark, { language }, signed) => markText(mark, { signed }, language);
const spoken: TellMark = (mark, words, signed) => spokenMark(mark, { signed }, words);

/** "+½, break of gait ×2", or as it is said: "plus one half, break of gait ×2". */
function understood({ card, field, read, speech }: FieldParts, words: Words, tell: TellMark): string {
  const { t } = words;
  const { go } = read;
  const signed = card.sheet.kind === 'pattern';
  switch (field.kind) {
    case 'maneuver': {
      const { position } = field.maneuver;
      const one = go.maneuvers?.find((mark) => mark.position === position);
      const mark =
        one === undefined
          ? []
          : ['notSeen' in one ? t('office-paper-not-seen') : tell(one.mark, words, signed)];
      return [...mark, ...penaltyWords({ card, read, speech }, position)].join(', ');
    }
    case 'penalties':
      return penaltyWords({ card, read, speech }, undefined).join(', ');
    case 'extra': {
      const mark = go.extras?.[field.extra.code];
      return mark === undefined ? '' : tell(mark, words, signed);
    }
    case 'mark':
    case 'measure': {
      const mark = go[field.kind];
      return mark === undefined ? '' : tell(mark, words, false);
    }
    case 'errors':
      return '';
  }
}

function penaltyWords(
  { card, read, speech }: Pick<FieldParts, 'card' | 'read' | 'speech'>,
  position: number | undefined,
): string[] {
  const here = (read.go.penalties ?? []).filter((one) => one.position === position);
  return penaltiesOf(card.sheet).flatMap(({ code, label }) => {
    const times = here.filter((one) => one.code === code).length;
    if (times === 0) return [];
    return [times === 1 ? labelOf(label, speech) : `${labelOf(label, speech)} ×${times}`];
  });
}
