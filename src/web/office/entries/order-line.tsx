import { useEffect, useRef } from 'preact/hooks';
import { useWords } from '../../shared/words.tsx';

interface LineParts {
  readonly id: string;
  /** Where it stands, from 0. */
  readonly index: number;
  readonly last: number;
  readonly number: number;
  readonly name: string;
  readonly move: (id: string, to: number) => void;
  readonly isDragged: boolean;
  readonly onDrag: (id: string | undefined) => void;
  readonly onDrop: () => void;
}

/** One go of the order: its buttons, and on them the arrow keys, Home and End. */
export function OrderLine({ id, index, last, number, name, move, isDragged, onDrag, onDrop }: LineParts) {
  const { t } = useWords();
  const line = useRef<HTMLLIElement>(null);
  const pressed = useRef<string | undefined>(undefined);
  // The line was moved under the finger: the same button has the focus again, or the other one at an end.
  useEffect(() => {
    const buttons = [...(line.current?.querySelectorAll('button') ?? [])];
    const wanted = buttons.find((button) => button.dataset.to === pressed.current) ?? buttons[0];
    if (pressed.current !== undefined) wanted?.focus();
    pressed.current = undefined;
  }, [index]);
  const go = (to: number, by: string) => {
    pressed.current = by;
    move(id, to);
  };
  const onKey = (event: KeyboardEvent) => {
    const to = { ArrowUp: index - 1, ArrowDown: index + 1, Home: 0, End: last }[event.key];
    if (to === undefined) return;
    event.preventDefault();
    go(to, event.key === 'ArrowDown' || event.key === 'End' ? 'later' : 'sooner');
  };
  return (
    <li
      ref={line}
      class={isDragged ? 'dragged' : ''}
      draggable={true}
      onDragStart={() => onDrag(id)}
      onDragEnd={() => onDrag(undefined)}
      onDragOver={(event) => event.preventDefault()}
      onDrop={(event) => {
        event.preventDefault();
        onDrop();
      }}
    >
      <span class="figures">
        {index + 1}. <strong>{number}</strong>
      </span>
      <span class="who">{name}</span>
      <span class="keys">
        <button
          type="button"
          class="small"
          data-to="sooner"
          aria-disabled={index === 0}
          aria-label={t('office-entries-sooner', { number })}
          onKeyDown={onKey}
          onClick={() => go(index - 1, 'sooner')}
        >
          ↑
        </button>
        <button
          type="button"
          class="small"
          data-to="later"
          aria-disabled={index === last}
          aria-label={t('office-entries-later', { number })}
          onKeyDown={onKey}
          onClick={() => go(index + 1, 'later')}
        >
          ↓
        </button>
      </span>
    </li>
  );
}
