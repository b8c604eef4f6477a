/** One screen at a time; its heading is read aloud when it appears, and is the title of the window. */
import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { useWords } from '../shared/words.tsx';

export function Screen({
  name,
  title,
  children,
}: {
  /** For whoever drives the page: `paired`. */
  readonly name: string;
  readonly title: string;
  readonly children: ComponentChildren;
}) {
  const { t } = useWords();
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    document.title = `${title} · ${t('shared-name')}`;
    heading.current?.focus({ preventScroll: true });
    window.scrollTo(0, 0);
  }, [title, t]);
  return (
    <section data-screen={name}>
      <h1 tabIndex={-1} ref={heading}>
        {title}
      </h1>
      {children}
    </section>
  );
}
