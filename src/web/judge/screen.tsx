/** What every screen but the go has: where it leads back to, its heading, where the card is, and what there is to say. */
import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { Link } from 'wouter-preact';
import { useWords } from '../shared/words.tsx';
import { Notices } from './notices.tsx';

interface ScreenProps {
  readonly title: string;
  /** Above the title, smaller. */
  readonly over?: string;
  readonly back?: { readonly href: string; readonly label: string };
  readonly children: ComponentChildren;
  /** At the lower edge, where the thumb is. */
  readonly reach?: ComponentChildren;
}

export function Screen({ title, over, back, children, reach }: ScreenProps) {
  const heading = useArrival(title);
  return (
    <>
      <header class="top">
        {back === undefined ? null : (
          <Link href={back.href} class="way-back">
            ‹ {back.label}
          </Link>
        )}
        {over === undefined ? null : <p class="over-title">{over}</p>}
        <h1 tabIndex={-1} ref={heading}>
          {title}
        </h1>
      </header>
      <main class="page">
        <Notices />
        {children}
      </main>
      {reach === undefined ? null : <footer class="thumb">{reach}</footer>}
    </>
  );
}

/** A screen that appears is named aloud, from its top. */
export function useArrival(title: string) {
  const { t } = useWords();
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    document.title = `${title} · ${t('shared-name')}`;
  }, [title, t]);
  useEffect(() => {
    scrollTo(0, 0);
    heading.current?.focus({ preventScroll: true });
  }, []);
  return heading;
}
