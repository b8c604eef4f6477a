import type { ComponentChildren } from 'preact';
import { useWords } from '../../shared/words.tsx';

interface RuledTable {
  /** Read before the table; seen where `captionSeen`. */
  readonly caption: string;
  readonly captionSeen?: boolean;
  readonly children: ComponentChildren;
  readonly class?: string;
}

/** A table on ruled paper. Where it is wider than the screen it scrolls inside itself, by keyboard too. */
export function RuledTable({ caption, captionSeen = false, children, class: name = '' }: RuledTable) {
  const { t } = useWords();
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a place that scrolls must be reachable by keyboard (WCAG 2.1.1)
    <section class="scrolls" aria-label={t('office-table', { caption })} tabIndex={0}>
      <table class={`ruled ${name}`}>
        <caption class={captionSeen ? '' : 'heard'}>{caption}</caption>
        {children}
      </table>
    </section>
  );
}
