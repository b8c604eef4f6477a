/** The keyboard of a judge at a desk. Figures and signs begin the line of shorthand; single keys do the rest. */

type GoKey =
  | { readonly does: 'line'; readonly begins: string }
  | {
      readonly does:
        | 'back'
        | 'on'
        | 'next-go'
        | 'previous-go'
        | 'not-seen'
        | 'undo'
        | 'remark'
        | 'ruling'
        | 'unmark'
        | 'watch'
        | 'keys';
    };

/** Each with the keys that are shown for it, in the order of the list behind "?". */
export const shownKeys: readonly { readonly keys: readonly string[]; readonly does: string }[] = [
  { keys: ['0–9', '+', '−', '.'], does: 'line' },
  { keys: ['p'], does: 'penalty' },
  { keys: ['f'], does: 'form' },
  { keys: ['Enter'], does: 'enter' },
  { keys: ['n'], does: 'not-seen' },
  { keys: ['←', '→'], does: 'turn' },
  { keys: ['↑', '↓'], does: 'goes' },
  { keys: ['u', 'Ctrl+Z'], does: 'undo' },
  { keys: ['Del'], does: 'unmark' },
  { keys: ['r'], does: 'remark' },
  { keys: ['d'], does: 'ruling' },
  { keys: ['w'], does: 'watch' },
  { keys: ['Esc'], does: 'escape' },
  { keys: ['?'], does: 'keys' },
];

const single: Readonly<Record<string, GoKey>> = {
  ArrowLeft: { does: 'back' },
  ArrowRight: { does: 'on' },
  ArrowDown: { does: 'next-go' },
  ArrowUp: { does: 'previous-go' },
  Enter: { does: 'next-go' },
  Delete: { does: 'unmark' },
  n: { does: 'not-seen' },
  u: { does: 'undo' },
  r: { does: 'remark' },
  d: { does: 'ruling' },
  w: { does: 'watch' },
  '?': { does: 'keys' },
};

type Pressed = Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'altKey'>;

/** `undefined`: not one of ours, or one that the browser has for itself. */
export function goKey({ key, ctrlKey, metaKey, altKey }: Pressed): GoKey | undefined {
  if (ctrlKey || metaKey) return key.toLowerCase() === 'z' ? { does: 'undo' } : undefined;
  if (altKey) return undefined;
  if (/^[0-9+\-.,pf]$/.test(key)) return { does: 'line', begins: key };
  return Object.hasOwn(single, key) ? single[key] : undefined;
}

/** Whoever writes in a field, or has a button in hand, means that. */
export function isElsewhere(event: KeyboardEvent): boolean {
  const { target, key } = event;
  if (!(target instanceof HTMLElement)) return false;
  if (target.closest('input, textarea, select, dialog') !== null) return true;
  return (key === 'Enter' || key === ' ') && target.closest('button, a, summary') !== null;
}
