import { useState } from 'preact/hooks';
import type { Speech } from '../../../engine/sentences/speech.ts';
import { useWords } from '../../shared/words.tsx';
import { labelOf } from './labels.ts';
import { fieldId } from './move-on.ts';
import { goKeys, type MarkedSheet, maneuverKey, maneuverWordsKey, penaltiesOf } from './sheet-fields.ts';
import type { TypedEntry } from './typed-card.ts';
import type { TypedGo } from './typed-go.ts';
import type { TypingDesk } from './typing-desk.ts';

interface MoreParts {
  readonly desk: TypingDesk;
  readonly entry: TypedEntry;
  readonly typed: TypedGo;
  readonly write: (key: string, text: string) => void;
  readonly differing: ReadonlySet<string>;
  readonly speech: Speech | undefined;
}

/** Folded up, since most goes need none of it: the judge's words, and penalties by choice instead of by number. */
export function GoMore({ desk: { card }, entry, typed, write, differing, speech }: MoreParts) {
  const { t } = useWords();
  const [open, setOpen] = useState(false);
  const wordKeys = [...card.maneuvers.map(({ position }) => maneuverWordsKey(position)), goKeys.words];
  const written = [...wordKeys, goKeys.rulingWords].filter((key) => (typed[key] ?? '') !== '').length;
  const line = (key: string, label: string) => (
    <WordsField
      key={key}
      {...{ label, write, fieldKey: key, text: typed[key] ?? '' }}
      id={fieldId(entry.id, key)}
      differs={differing.has(fieldId(entry.id, key))}
    />
  );
  return (
    <details open={open} onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
      <summary>{t('office-paper-more', { number: entry.backNumber, count: written })}</summary>
      <div class="go-more">
        {penaltiesOf(card.sheet).length > 0 && <PenaltyAdder {...{ card, typed, write, speech }} />}
        {card.sheet.kind !== 'places' &&
          card.maneuvers.map(({ position, name }) =>
            line(maneuverWordsKey(position), t('office-paper-words-maneuver', { position, name })),
          )}
        {(typed[goKeys.ruling] ?? '') !== '' && line(goKeys.rulingWords, t('office-paper-words-ruling'))}
        {line(goKeys.words, t('office-paper-words-go'))}
      </div>
    </details>
  );
}

interface WordsParts {
  readonly label: string;
  readonly fieldKey: string;
  readonly text: string;
  readonly write: (key: string, text: string) => void;
  readonly id: string;
  readonly differs: boolean;
}

const WordsField = ({ label, fieldKey, text, write, id, differs }: WordsParts) => (
  <div class={`words ${differs ? 'differs' : ''}`}>
    <label for={id}>{label}</label>
    <input
      {...{ id, value: text, maxLength: 1000, autocomplete: 'off' }}
      onInput={({ currentTarget }) => write(fieldKey, currentTarget.value)}
    />
  </div>
);

interface AdderParts {
  readonly card: MarkedSheet;
  readonly typed: TypedGo;
  readonly write: (key: string, text: string) => void;
  readonly speech: Speech | undefined;
}

/** Where there are no number keys: it writes into the field what the shorthand would. */
function PenaltyAdder({ card, typed, write, speech }: AdderParts) {
  const { t } = useWords();
  const [number, setNumber] = useState(1);
  const [position, setPosition] = useState(0);
  const add = () => {
    const key = position === 0 ? goKeys.penalties : maneuverKey(position);
    const before = typed[key] ?? '';
    write(key, position === 0 ? `${before} ${number}`.trim() : `${before}*${number}`);
  };
  return (
    <div class="adder">
      <label>
        {t('office-paper-penalty')}
        <select value={number} onChange={({ currentTarget }) => setNumber(Number(currentTarget.value))}>
          {penaltiesOf(card.sheet).map(({ code, label }, index) => (
            <option key={code} value={index + 1}>
              {index + 1} {labelOf(label, speech)}
            </option>
          ))}
        </select>
      </label>
      <label>
        {t('office-paper-penalty-at')}
        <select value={position} onChange={({ currentTarget }) => setPosition(Number(currentTarget.value))}>
          <option value={0}>{t('office-paper-whole-go')}</option>
          {card.sheet.kind === 'pattern' &&
            card.maneuvers.map((one) => (
              <option key={one.position} value={one.position}>
                {one.position} {one.name}
              </option>
            ))}
        </select>
      </label>
      <button type="button" onClick={add}>
        {t('office-paper-penalty-add')}
      </button>
    </div>
  );
}
