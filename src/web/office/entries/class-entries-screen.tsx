import { Link } from 'wouter-preact';
import type { Answer } from '../../shared/api.ts';
import type { LiveEvent } from '../../shared/live.ts';
import { useWords } from '../../shared/words.tsx';
import { concernsClass } from '../office-state.ts';
import { paths } from '../paths.ts';
import { Part } from '../pieces/part.tsx';
import { ScreenHead } from '../pieces/screen-head.tsx';
import { Shown } from '../pieces/shown.tsx';
import { useAsked } from '../use-asked.ts';
import { useMayWrite } from '../use-show.ts';
import { AddToClass } from './add-to-class.tsx';
import { changesNames } from './all-pages.ts';
import { CombineClasses } from './combine-classes.tsx';
import { DrawOrder } from './draw-order.tsx';
import './entries.css';
import { EntriesOfClass } from './entries-of-class.tsx';
import { HowDrawn } from './how-drawn.tsx';
import type { Draw } from './repeat-draw.ts';
import { SetOrder } from './set-order.tsx';
import { SplitClass } from './split-class.tsx';
import type { ClassEntry } from './statuses.ts';
import { Undo } from './undo.tsx';

export type ShowClass = Answer<'/v1/shows/{showId}/classes/{classId}'>;

interface Address {
  readonly showId: string;
  readonly classId: string;
}

/** What every part of the screen works on. */
export interface ClassInHand extends Address {
  readonly ofClass: ShowClass;
  readonly entries: readonly ClassEntry[];
  readonly draws: readonly Draw[];
  readonly again: () => Promise<void>;
}

/** The entries of one class: who goes when, who does not, and who else. */
export function ClassEntriesScreen({ showId, classId }: Address) {
  const { t } = useWords();
  const path = `/v1/shows/${showId}/classes/${classId}`;
  const on = (event: LiveEvent) => concernsClass(classId)(event) || changesNames(event);
  const ofClass = useAsked<ShowClass>(path, { on });
  const entries = useAsked<{ items: ClassEntry[] }>(`${path}/entries`, { on });
  const draws = useAsked<{ items: Draw[] }>(`${path}/order-of-go/draws`, { on });
  const again = async () => {
    await Promise.all([ofClass.again(), entries.again(), draws.again()]);
  };
  return (
    <div class="entries">
      <Shown asked={ofClass}>
        {(body) => (
          <>
            <ScreenHead title={t('office-entries-of-class', { number: body.number })}>
              <p class="note">
                <Link href={paths.class(showId, classId)}>{body.name}</Link>
                {body.status !== 'open' && ` · ${t(`shared-state-${body.status}`)}`}
              </p>
            </ScreenHead>
            <Shown asked={entries}>
              {({ items }) => (
                <Shown asked={draws}>
                  {(drawn) => (
                    <Parts
                      {...{ showId, classId, ofClass: body, entries: items, draws: drawn.items, again }}
                    />
                  )}
                </Shown>
              )}
            </Shown>
          </>
        )}
      </Shown>
    </div>
  );
}

function Parts(inHand: ClassInHand) {
  const { t } = useWords();
  const mayWrite = useMayWrite() && inHand.ofClass.status === 'open';
  return (
    <>
      <Undo />
      <Part title={t('office-entries-order')}>
        <EntriesOfClass {...{ ...inHand, mayWrite }} />
      </Part>
      {mayWrite && (
        <Part title={t('office-entries-add')}>
          <AddToClass {...inHand} />
        </Part>
      )}
      <Part title={t('office-entries-draw')}>
        {mayWrite && <DrawOrder {...inHand} />}
        {mayWrite && inHand.draws.length > 0 && <SetOrder {...inHand} />}
        <HowDrawn {...inHand} />
      </Part>
      {mayWrite && (
        <Part title={t('office-entries-split-combine')}>
          <SplitClass {...inHand} />
          <CombineClasses {...inHand} />
        </Part>
      )}
    </>
  );
}
