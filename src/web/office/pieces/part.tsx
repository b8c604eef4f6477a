import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';

interface PartOfScreen {
  readonly title: string;
  readonly children: ComponentChildren;
  /** Under the heading, in the margin: a key, a count. */
  readonly aside?: ComponentChildren;
}

/** A part of a screen: its heading stands in the margin of the paper, what belongs to it on the lines. */
export function Part({ title, children, aside }: PartOfScreen) {
  const id = useId();
  return (
    <section class="part" aria-labelledby={id}>
      <div class="part-head">
        <h2 id={id} tabIndex={-1}>
          {title}
        </h2>
        {aside}
      </div>
      <div class="part-body">{children}</div>
    </section>
  );
}
