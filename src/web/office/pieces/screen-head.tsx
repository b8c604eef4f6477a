import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { useWords } from '../../shared/words.tsx';

interface Head {
  readonly title: string;
  readonly children?: ComponentChildren;
}

let opened = 0;

/** The heading of a screen: names the window, and takes the focus when one screen follows another. */
export function ScreenHead({ title, children }: Head) {
  const { t } = useWords();
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    document.title = `${title} · ${t('shared-name')}`;
  }, [title, t]);
  useEffect(() => {
    opened += 1;
    if (opened > 1) heading.current?.focus();
  }, []);
  return (
    <header class="screen-head">
      <h1 tabIndex={-1} ref={heading}>
        {title}
      </h1>
      {children}
    </header>
  );
}
