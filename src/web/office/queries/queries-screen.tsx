import type { Answer } from '../../shared/api.ts';
import type { LiveEvent } from '../../shared/live.ts';
import { useWords } from '../../shared/words.tsx';
import { showInHand } from '../office-state.ts';
import { ScreenHead } from '../pieces/screen-head.tsx';
import { Shown } from '../pieces/shown.tsx';
import { useAsked } from '../use-asked.ts';
import { inboxOf, type Query } from './inbox.ts';
import './queries.css';
import { QueryCase } from './query-case.tsx';

type Queries = Answer<'/v1/shows/{showId}/queries'>;

/** The families' questions: those that wait first, each beside what was posted. */
export function QueriesScreen({ showId }: { readonly showId: string }) {
  const { t } = useWords();
  const asked = useAsked<Queries>(`/v1/shows/${showId}/queries`, { on: mayChangeQueries });
  return (
    <div class="queries">
      <ScreenHead title={t('office-queries-title')}>
        <p class="note">{t('office-queries-what')}</p>
      </ScreenHead>
      <Shown asked={asked}>{({ items }) => <Inbox queries={items} again={asked.again} />}</Shown>
    </div>
  );
}

/** A posting changes what stands beside a query. */
const mayChangeQueries = ({ type }: LiveEvent): boolean =>
  type === undefined || type.startsWith('query.') || type.startsWith('result.') || type === 'names.changed';

interface InboxParts {
  readonly queries: readonly Query[];
  readonly again: () => Promise<void>;
}

function Inbox({ queries, again }: InboxParts) {
  const { t } = useWords();
  const { open, closed } = inboxOf(queries);
  const timeZone = showInHand.value?.timeZone ?? 'UTC';
  const cases = (some: readonly Query[]) =>
    some.map((query) => <QueryCase key={query.id} {...{ query, timeZone, again }} />);
  return (
    <>
      <p role="status" class="heard">
        {t('office-queries-waiting', { count: open.length })}
      </p>
      <section aria-labelledby="queries-open">
        <h2 id="queries-open">{t('office-queries-open', { count: open.length })}</h2>
        {open.length === 0 ? <p class="note">{t('office-queries-none-open')}</p> : cases(open)}
      </section>
      <section aria-labelledby="queries-closed">
        <h2 id="queries-closed">{t('office-queries-closed', { count: closed.length })}</h2>
        {closed.length === 0 ? <p class="note">{t('office-queries-none-closed')}</p> : cases(closed)}
      </section>
    </>
  );
}
