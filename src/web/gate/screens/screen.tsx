/** What every screen of the gate has: where it leads back to, its heading, how it hears of things, what was done. */
import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { Link } from 'wouter-preact';
import { useWords } from '../../shared/words.tsx';
import type { Show } from '../desk/gate-types.ts';
import { Notices } from './notices.tsx';
import { SaidLine } from './said-line.tsx';

interface ScreenParts {
  readonly title: string;
  readonly show: Show;
  /** Above the title, smaller. */
  readonly over?: string;
  readonly back?: { readonly href: string; readonly label: string };
  readonly children: ComponentChildren;
}

export function Screen({ title, show, over, back, children }: ScreenParts) {
  const { t } = useWords();
  const heading = useArrival(title);
  return (
    <>
      <header class="gate-head">
        {back !== undefined && (
          <Link href={back.href} class="way-back">
            ‹ {back.label}
          </Link>
        )}
        {over !== undefined && <p class="over-title">{over}</p>}
        <h1 tabIndex={-1} ref={heading}>
          {title}
        </h1>
        {show.isPractice && <p class="practice">{t('shared-practice')}</p>}
      </header>
      <main class="gate-main">
        <Notices />
        {children}
      </main>
      <SaidLine />
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
