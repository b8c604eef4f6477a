import { useEffect, useId, useRef, useState } from 'preact/hooks';
import { useWords } from '../../shared/words.tsx';
import { Field } from '../pieces/field.tsx';
import { isNamed, plainName } from './entry-search.ts';

export interface Known {
  readonly id: string;
  readonly name: string;
  /** What tells two of one name apart: back numbers. */
  readonly beside: string;
}

/** One that is there, or a name for a new one. */
export type Chosen = { readonly id: string; readonly name: string } | { readonly name: string };

interface PickerParts {
  readonly label: string;
  readonly known: readonly Known[];
  readonly chosen: Chosen;
  readonly onChosen: (chosen: Chosen) => void;
  readonly fault: string | undefined;
  /** "Nobody of that name yet: she is entered anew." */
  readonly newWords: string;
  /** The first field of the form. */
  readonly begins?: boolean;
}

const mostShown = 6;

/**
 * A name is typed; who is there already is offered below it, so that one horse does not get two spellings. The arrow
 * keys walk through the offers, Enter takes one.
 */
export function KnownOrNew({ label, known, chosen, onChosen, fault, newWords, begins = false }: PickerParts) {
  const { t } = useWords();
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (begins) place.current?.querySelector('input')?.focus();
  }, [begins]);
  const [open, setOpen] = useState(false);
  const [at, setAt] = useState(-1);
  const id = useId();
  const words = chosen.name.trim();
  const isKnown = 'id' in chosen;
  const offers = isKnown || words === '' ? [] : offersFor(known, words);
  const shown = open && offers.length > 0;
  const take = ({ id: knownId, name }: Known) => {
    onChosen({ id: knownId, name });
    setOpen(false);
    setAt(-1);
  };
  const onKey = (event: KeyboardEvent) => {
    if (!shown) return;
    const offer = offers[at];
    if (event.key === 'ArrowDown') setAt(Math.min(at + 1, offers.length - 1));
    else if (event.key === 'ArrowUp') setAt(Math.max(at - 1, -1));
    else if (event.key === 'Escape') setOpen(false);
    else if (event.key === 'Enter' && offer !== undefined) take(offer);
    else return;
    event.preventDefault();
  };
  const hint = isKnown ? t('office-entries-is-known') : words === '' ? undefined : newWords;
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the keys are those of the field inside
    <div
      ref={place}
      class="picker"
      onKeyDown={onKey}
      onFocusOut={() => setTimeout(() => setOpen(false), 200)}
    >
      <Field
        {...{ label, fault, value: chosen.name, maxLength: 200, autocomplete: 'off', hint }}
        onValue={(name) => {
          onChosen({ name });
          setOpen(true);
          setAt(-1);
        }}
        role="combobox"
        aria-expanded={shown}
        aria-controls={`${id}-offers`}
        aria-autocomplete="list"
        {...(shown && at >= 0 ? { 'aria-activedescendant': `${id}-${at}` } : {})}
      />
      <div id={`${id}-offers`} role="listbox" aria-label={label} class="offers" hidden={!shown}>
        {offers.map((offer, index) => (
          // biome-ignore lint/a11y/useFocusableInteractive: the focus stays in the field, which says which one is meant
          // biome-ignore lint/a11y/useKeyWithClickEvents: the keys are caught above
          <div
            key={offer.id}
            id={`${id}-${index}`}
            role="option"
            aria-selected={index === at}
            onClick={() => take(offer)}
          >
            {offer.name} <span class="note figures">{offer.beside}</span>
          </div>
        ))}
      </div>
    </div>
  );
}

function offersFor(known: readonly Known[], words: string): readonly Known[] {
  const same = known.filter(({ name }) => plainName(name) === plainName(words));
  const alike = known.filter(({ name }) => plainName(name) !== plainName(words) && isNamed(name, words));
  return [...same, ...alike].slice(0, mostShown);
}
