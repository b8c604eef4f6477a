/**
 * Short keys: one letter each, shown by "?", and off where somebody wants none (WCAG 2.2, 2.1.4). They rest while
 * something is typed.
 */
import { signal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { useWords } from '../../shared/words.tsx';
import { Modal } from '../pieces/confirm-dialog.tsx';

interface ShortKey {
  readonly key: string;
  /** What it does. */
  readonly words: string;
  readonly press: () => void;
}

const storedAs = 'ringledger-short-keys';

const known = signal<readonly ShortKey[]>([]);
const wanted = signal(localStorage.getItem(storedAs) !== 'off');
const shown = signal(false);

/** The key works as long as the component is there. */
export function useKey(key: string, words: string, press: () => void): void {
  const last = useRef(press);
  last.current = press;
  useEffect(() => {
    const short: ShortKey = { key, words, press: () => last.current() };
    known.value = [...known.value, short];
    return () => {
      known.value = known.value.filter((one) => one !== short);
    };
  }, [key, words]);
}

function hear(event: KeyboardEvent): void {
  if (event.defaultPrevented || event.ctrlKey || event.metaKey || event.altKey || isTyping(event.target))
    return;
  if (!wanted.value || document.querySelector('dialog[open]') !== null) return;
  const pressed = known.value.findLast(({ key }) => key === event.key);
  if (pressed === undefined) return;
  event.preventDefault();
  pressed.press();
}

const isTyping = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && target.closest('input, select, textarea, [contenteditable]') !== null;

function choose(on: boolean): void {
  wanted.value = on;
  localStorage.setItem(storedAs, on ? 'on' : 'off');
}

/** Once on the page: listens, and lists the keys that work just now. */
export function ShortKeys() {
  const { t } = useWords();
  useKey('?', t('office-key-help'), () => {
    shown.value = true;
  });
  useKey('j', t('office-key-next-part'), () => focusPart(1));
  useKey('k', t('office-key-part-before'), () => focusPart(-1));
  useEffect(() => {
    document.addEventListener('keydown', hear);
    return () => document.removeEventListener('keydown', hear);
  }, []);
  const close = () => {
    shown.value = false;
  };
  return (
    <>
      <button type="button" class="small" onClick={() => (shown.value = true)}>
        {t('office-keys')}
      </button>
      <Modal title={t('office-keys')} open={shown.value} onClose={close}>
        <dl class="keys">
          {known.value.map(({ key, words }) => (
            <div key={key}>
              <dt>
                <kbd>{key}</kbd>
              </dt>
              <dd>{words}</dd>
            </div>
          ))}
        </dl>
        <label class="tick">
          <input
            type="checkbox"
            checked={wanted.value}
            onChange={({ currentTarget }) => choose(currentTarget.checked)}
          />
          {t('office-keys-wanted')}
        </label>
        <p class="buttons">
          <button type="button" class="main" onClick={close}>
            {t('office-done')}
          </button>
        </p>
      </Modal>
    </>
  );
}

/** From heading to heading of the parts of a screen. */
function focusPart(step: 1 | -1): void {
  const heads = [...document.querySelectorAll<HTMLElement>('main h1, main .part h2')];
  const focused = document.activeElement;
  const at = heads.findLastIndex(
    (head) => head === focused || (focused !== null && head.closest('.part')?.contains(focused) === true),
  );
  const next = heads[Math.min(Math.max(at + step, 0), heads.length - 1)];
  next?.focus();
  next?.scrollIntoView({ block: 'start' });
}
