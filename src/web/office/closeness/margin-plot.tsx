import { useWords, type Words } from '../../shared/words.tsx';
import { RuledTable } from '../pieces/ruled-table.tsx';
import { figureOf } from './figures.ts';
import { closest, type MarginBar } from './margin-bars.ts';
import { Plot } from './plot.tsx';

const rowHeight = 34;
const labelWidth = 132;
const figureWidth = 110;

/** For each two neighbors the smallest change on one card that would have swapped them. */
export function MarginPlot({
  bars,
  judge,
}: {
  readonly bars: readonly MarginBar[];
  readonly judge: string | null;
}) {
  const words = useWords();
  const { t } = words;
  const title = judge === null ? t('office-closeness-margins') : t('office-closeness-margins-of', { judge });
  return (
    <Plot
      title={title}
      sentence={closest(bars)?.sentence ?? t('office-closeness-no-margin')}
      height={bars.length * rowHeight + 6}
      draw={(width) => <Bars {...{ bars, width }} />}
      table={<MarginTable bars={bars} caption={title} />}
    />
  );
}

function Bars({ bars, width }: { readonly bars: readonly MarginBar[]; readonly width: number }) {
  const words = useWords();
  const room = Math.max(40, width - labelWidth - figureWidth);
  const nearest = closest(bars);
  return (
    <>
      <line class="axis" x1={labelWidth} x2={labelWidth} y1={0} y2={bars.length * rowHeight} />
      {bars.map((bar, index) => {
        const top = index * rowHeight;
        const length = bar.change.by === 'none' ? 0 : Math.max(2, bar.change.share * room);
        return (
          <g key={bar.key} class={bar.key === nearest?.key ? 'nearest' : ''}>
            <text class="place" x={0} y={top + 22}>
              {bar.place}.
            </text>
            <text class="number" x={30} y={top + 22}>
              {bar.ahead} | {bar.behind}
            </text>
            {length > 0 && <rect class="bar" x={labelWidth} y={top + 8} width={length} height={18} />}
            <text class="size" x={labelWidth + length + 8} y={top + 22}>
              {sizeWords(bar, words)}
            </text>
          </g>
        );
      })}
    </>
  );
}

/** "½ point", "2 places" */
function sizeWords({ change }: MarginBar, words: Words): string {
  const { t } = words;
  if (change.by === 'none') return t(`office-closeness-${change.why}`);
  const size = figureOf(change.size, words);
  return t(`office-closeness-by-${change.by}`, { size, one: isOne(change.size) });
}

const isOne = (size: string): string => (size === '1' || size === '0.5' ? 'yes' : 'no');

function MarginTable({ bars, caption }: { readonly bars: readonly MarginBar[]; readonly caption: string }) {
  const words = useWords();
  const { t } = words;
  return (
    <RuledTable caption={caption}>
      <thead>
        <tr>
          <th scope="col">{t('office-closeness-place')}</th>
          <th scope="col">{t('office-closeness-ahead')}</th>
          <th scope="col">{t('office-closeness-behind')}</th>
          <th scope="col">{t('office-closeness-change')}</th>
          <th scope="col">{t('office-closeness-in-words')}</th>
        </tr>
      </thead>
      <tbody>
        {bars.map((bar) => (
          <tr key={bar.key}>
            <td class="figures">{bar.place}</td>
            <th scope="row" class="figures">
              {bar.ahead}
            </th>
            <td class="figures">{bar.behind}</td>
            <td class="figures">{sizeWords(bar, words)}</td>
            <td class="sentence">{bar.sentence}</td>
          </tr>
        ))}
      </tbody>
    </RuledTable>
  );
}
