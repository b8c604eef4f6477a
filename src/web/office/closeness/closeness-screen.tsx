import { Link } from 'wouter-preact';
import type { LiveEvent } from '../../shared/live.ts';
import { useWords } from '../../shared/words.tsx';
import { concernsClass } from '../office-state.ts';
import { paths } from '../paths.ts';
import { ScreenHead } from '../pieces/screen-head.tsx';
import { Shown } from '../pieces/shown.tsx';
import { useAsked } from '../use-asked.ts';
import './closeness.css';
import type { Agreement, Margins, Result } from './closeness-answers.ts';
import { JudgeDrift } from './drift-plot.tsx';
import { driftPlots } from './drift-plots.ts';
import { type MarginBar, marginBars } from './margin-bars.ts';
import { MarginPlot } from './margin-plot.tsx';
import { PairTable, ScaleTable } from './pair-table.tsx';
import { PlacePlot } from './place-plot.tsx';
import { placeRows } from './place-rows.ts';

interface Address {
  readonly showId: string;
  readonly classId: string;
}

/** How close a posted class was, how far its judges agree, and each judge over the order of go. */
export function ClosenessScreen({ showId, classId }: Address) {
  const { t } = useWords();
  const base = `/v1/classes/${classId}`;
  const on = isPosting(classId);
  const result = useAsked<Result>(`${base}/result`, { on });
  const margins = useAsked<Margins>(`${base}/margins?upTo=50`, { on });
  const agreement = useAsked<Agreement>(`${base}/agreement`, { on });
  const notPosted = margins.refused?.code === 'class_not_posted';
  const head = result.body?.class;
  return (
    <div class="closeness">
      <ScreenHead title={t('office-closeness-title')}>
        <p class="note">
          <Link href={paths.class(showId, classId)}>
            {head === undefined
              ? t('office-closeness-to-class')
              : t('office-closeness-class', { number: head.number, name: head.name })}
          </Link>
        </p>
      </ScreenHead>
      {notPosted ? (
        <p class="note">{t('office-closeness-not-posted')}</p>
      ) : (
        <>
          <p class="heed">{t('office-closeness-caution')}</p>
          <Shown asked={margins}>{(body) => <HowClose margins={body} />}</Shown>
          <Shown asked={agreement}>
            {(body) => (
              <>
                <DoTheyAgree agreement={body} result={result.body} />
                <OverTheOrder agreement={body} />
              </>
            )}
          </Shown>
        </>
      )}
    </div>
  );
}

/** Nothing of it changes before the next posting. */
const isPosting = (classId: string) => (event: LiveEvent) =>
  event.type === undefined || (event.type.startsWith('result.') && concernsClass(classId)(event));

function HowClose({ margins }: { readonly margins: Margins }) {
  const { t } = useWords();
  const bars = marginBars(margins);
  const groups = new Map<string | null, MarginBar[]>();
  for (const bar of bars) groups.set(bar.judge, [...(groups.get(bar.judge) ?? []), bar]);
  return (
    <section aria-labelledby="how-close">
      <h2 id="how-close">{t('office-closeness-how-close')}</h2>
      {bars.length === 0 && <p class="note">{t('office-closeness-no-margin')}</p>}
      {[...groups].map(([judge, some]) => (
        <MarginPlot key={judge ?? ''} {...{ judge, bars: some }} />
      ))}
    </section>
  );
}

interface AgreementParts {
  readonly agreement: Agreement;
  readonly result: Result | undefined;
}

function DoTheyAgree({ agreement, result }: AgreementParts) {
  const { t } = useWords();
  const { judges, sentences } = agreement;
  return (
    <section aria-labelledby="agree">
      <h2 id="agree">{t('office-closeness-agree')}</h2>
      {judges.length < 2 ? (
        <p class="note">{t('office-closeness-one-judge')}</p>
      ) : (
        <>
          <PlacePlot {...{ judges, rows: placeRows(judges, result), sentence: sentences[0] ?? '' }} />
          <PairTable agreement={agreement} />
        </>
      )}
      <ScaleTable agreement={agreement} />
    </section>
  );
}

function OverTheOrder({ agreement }: { readonly agreement: Agreement }) {
  const { t } = useWords();
  const scale = driftPlots(agreement);
  const told = agreement.sentences.slice(1);
  return (
    <section aria-labelledby="drift">
      <h2 id="drift">{t('office-closeness-drift')}</h2>
      <p>{t('office-closeness-drift-caution')}</p>
      {scale === undefined ? (
        <p class="note">{t('office-closeness-no-order')}</p>
      ) : (
        <>
          {told.length === 0 ? (
            <p>{t('office-closeness-little-drift')}</p>
          ) : (
            told.map((sentence) => <p key={sentence}>{sentence}</p>)
          )}
          <div class="judges">
            {scale.plots
              .filter(({ points }) => points.length > 0)
              .map((plot) => (
                <JudgeDrift key={plot.judge.seatId} {...{ plot, scale }} />
              ))}
          </div>
        </>
      )}
    </section>
  );
}
