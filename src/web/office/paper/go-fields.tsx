import { useComputed } from '@preact/signals';
import { useWords } from '../../shared/words.tsx';
import { useSpeech } from './card-speech.ts';
import { GoMore } from './go-more.tsx';
import { labelOfField } from './labels.ts';
import { MarkField } from './mark-field.tsx';
import { fieldId } from './move-on.ts';
import { RulingField } from './ruling-field.tsx';
import { typedTotal } from './running-total.ts';
import { fieldsOf, goKeys } from './sheet-fields.ts';
import { TotalLine } from './total-line.tsx';
import type { TypedEntry } from './typed-card.ts';
import { goOfTyped } from './typed-go.ts';
import type { TypingDesk } from './typing-desk.ts';

export interface GoParts {
  readonly desk: TypingDesk;
  readonly entry: TypedEntry;
  /** Its number in the order of go. */
  readonly number: number;
  readonly differing: ReadonlySet<string>;
}

/** One go: a line of fields, what was understood under each, and the total as it stands. */
export function GoFields({ desk, entry, number, differing }: GoParts) {
  const { t } = useWords();
  const speech = useSpeech();
  const { card } = desk;
  const typed = desk.goOf(entry.id).value;
  const read = useComputed(() => goOfTyped(card, desk.goOf(entry.id).value)).value;
  const total = typedTotal(card, read.go, typed[goKeys.paperTotal]);
  const write = (key: string, text: string) => desk.write(entry.id, key, text);
  return (
    <fieldset class="go">
      <legend>
        <span class="note">{number}.</span> <span class="figures">{entry.backNumber}</span>
      </legend>
      <div class="go-line">
        {fieldsOf(card).map((field) => (
          <MarkField
            key={field.key}
            {...{ card, field, read, write, speech, text: typed[field.key] ?? '' }}
            id={fieldId(entry.id, field.key)}
            label={labelOfField(field, { t, speech })}
            fault={total.faults.get(field.key)}
            differs={differing.has(fieldId(entry.id, field.key))}
            backNumber={entry.backNumber}
          />
        ))}
        <RulingField
          {...{ card, write, speech, text: typed[goKeys.ruling] ?? '' }}
          id={fieldId(entry.id, goKeys.ruling)}
          differs={differing.has(fieldId(entry.id, goKeys.ruling))}
          backNumber={entry.backNumber}
        />
        {card.sheet.kind !== 'places' && (
          <TotalLine {...{ total, write, text: typed[goKeys.paperTotal] ?? '' }} entry={entry} />
        )}
      </div>
      <GoMore {...{ desk, entry, typed, write, differing, speech }} />
    </fieldset>
  );
}
