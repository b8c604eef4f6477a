import type { ComponentChildren } from 'preact';
import { Link } from 'wouter-preact';
import { useWords } from '../../shared/words.tsx';
import { concernsClass } from '../office-state.ts';
import { paths } from '../paths.ts';
import { ScreenHead } from '../pieces/screen-head.tsx';
import { Shown } from '../pieces/shown.tsx';
import { useAsked } from '../use-asked.ts';
import type { ShowClass } from './class-answers.ts';

export type ClassTab = 'result' | 'entries' | 'panel' | 'paper' | 'closeness';

interface ClassFrameParts {
  readonly showId: string;
  readonly classId: string;
  readonly at: ClassTab;
  readonly children: (ofClass: ShowClass) => ComponentChildren;
}

/** The head of each screen of a class, and the way from one to the other. */
export function ClassFrame({ showId, classId, at, children }: ClassFrameParts) {
  const { t } = useWords();
  const asked = useAsked<ShowClass>(`/v1/shows/${showId}/classes/${classId}`, { on: concernsClass(classId) });
  return (
    <Shown asked={asked}>
      {(ofClass) => (
        <>
          <ScreenHead title={t('office-class-title', { number: String(ofClass.number), name: ofClass.name })}>
            <ClassTabs {...{ ofClass, at }} />
          </ScreenHead>
          {children(ofClass)}
        </>
      )}
    </Shown>
  );
}

export function ClassTabs({ ofClass, at }: { readonly ofClass: ShowClass; readonly at: ClassTab }) {
  const { t } = useWords();
  const { showId, id, number } = ofClass;
  const tabs = {
    result: paths.class(showId, id),
    entries: paths.classEntries(showId, id),
    panel: paths.panel(showId, id),
    paper: paths.classPaper(showId, id),
    closeness: paths.closeness(showId, id),
  } as const satisfies Record<ClassTab, string>;
  return (
    <nav class="tabs" aria-label={t('office-class-nav', { number: String(number) })}>
      {Object.entries(tabs).map(([tab, href]) => (
        <Link key={tab} href={href} aria-current={tab === at ? 'page' : undefined}>
          {t(`office-class-${tab}`)}
        </Link>
      ))}
    </nav>
  );
}
