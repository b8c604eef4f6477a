import type { ComponentChildren } from 'preact';

interface RuledTable {
  /** Read before the table; seen where `captionSeen`. */
  readonly caption: string;
  readonly captionSeen?: boolean;
  readonly children: ComponentChildren;
  readonly class?: string;
}

/** A table on ruled paper. Where it is wider than the screen it scrolls inside itself, by keyboard too. */
export const RuledTable = ({ caption, captionSeen = false, children, class: name = '' }: RuledTable) => (
  // biome-ignore lint/a11y/noNoninteractiveTabindex: a place that scrolls must be reachable by keyboard (WCAG 2.1.1)
  <section class="scrolls" aria-label={caption} tabIndex={0}>
    <table class={`ruled ${name}`}>
      <caption class={captionSeen ? '' : 'heard'}>{caption}</caption>
      {children}
    </table>
  </section>
);
