import { useWords } from '../../shared/words.tsx';
import { RuledTable } from '../pieces/ruled-table.tsx';
import type { JudgeGoes } from './closeness-answers.ts';
import type { PlaceRow } from './place-rows.ts';
import { Plot } from './plot.tsx';

const rowHeight = 30;
const labelWidth = 74;
const headHeight = 30;
const rightEdge = 22;

interface PlacePlotParts {
  readonly rows: readonly PlaceRow[];
  readonly judges: readonly JudgeGoes[];
  readonly sentence: string;
}

/** Each entry a line, and on it the numbers of the judges at the place that they gave it. */
export function PlacePlot({ rows, judges, sentence }: PlacePlotParts) {
  const { t } = useWords();
  return (
    <>
      <Plot
        title={t('office-closeness-places')}
        sentence={sentence}
        height={headHeight + rows.length * rowHeight + 4}
        draw={(width) => <Lines {...{ rows, width }} />}
        table={<PlaceTable {...{ rows, judges }} />}
      />
      <ul class="who">
        {judges.map(({ seatId, seatOrder, name }) => (
          <li key={seatId}>
            <span class="figures">{seatOrder}</span> {name}
          </li>
        ))}
      </ul>
    </>
  );
}

function Lines({ rows, width }: { readonly rows: readonly PlaceRow[]; readonly width: number }) {
  const last = Math.max(2, ...rows.flatMap(({ at }) => at.map(({ place }) => place)));
  const x = (place: number) =>
    labelWidth + 14 + ((width - labelWidth - 14 - rightEdge) * (place - 1)) / (last - 1);
  const bottom = headHeight + rows.length * rowHeight;
  // Of two judges with two figures each nobody could tell which is whose.
  const isNarrow =
    x(2) - x(1) < 44 && rows.every(({ at }) => at.every(({ seats }) => seats.every((seat) => seat < 10)));
  return (
    <>
      {ticks(last, width).map((place) => (
        <g key={place}>
          <line class="rule" x1={x(place)} x2={x(place)} y1={headHeight - 4} y2={bottom} />
          <text class="tick" x={x(place)} y={headHeight - 10}>
            {place}
          </text>
        </g>
      ))}
      {rows.map((row, index) => (
        <Line
          key={row.backNumber}
          {...{ row, x, isNarrow, middle: headHeight + index * rowHeight + rowHeight / 2 }}
        />
      ))}
    </>
  );
}

interface LineParts {
  readonly row: PlaceRow;
  readonly x: (place: number) => number;
  readonly middle: number;
  /** Less room than a finger between two places: the numbers stand closer. */
  readonly isNarrow: boolean;
}

function Line({ row, x, middle, isNarrow }: LineParts) {
  const { at, place, backNumber } = row;
  const [first, last] = [at[0]?.place ?? 1, at.at(-1)?.place ?? 1];
  return (
    <g>
      <text class="place" x={0} y={middle + 5}>
        {place === null ? '' : `${place}.`}
      </text>
      <text class="number" x={28} y={middle + 5}>
        {backNumber}
      </text>
      <line class="span" x1={x(first)} x2={x(last)} y1={middle} y2={middle} />
      {at.map(({ place: onCard, seats }) => {
        const told = seats.join(isNarrow ? '' : ' ');
        const wide = Math.max(20, told.length * (isNarrow ? 7.3 : 8.5) + (isNarrow ? 7 : 12));
        return (
          <g key={onCard}>
            <rect class="seat" x={x(onCard) - wide / 2} y={middle - 11} width={wide} height={22} rx={11} />
            <text class={isNarrow ? 'seat narrow' : 'seat'} x={x(onCard)} y={middle + 5}>
              {told}
            </text>
          </g>
        );
      })}
    </g>
  );
}

/** As many as there is room for: all of twelve places, every fifth of sixty. */
function ticks(last: number, width: number): readonly number[] {
  const step = [1, 2, 5, 10, 20, 50].find((one) => ((width - labelWidth) / (last - 1)) * one >= 26) ?? 100;
  const all = Array.from({ length: Math.ceil(last) }, (_, index) => index + 1);
  return all.filter((place) => place === 1 || place % step === 0);
}

function PlaceTable({ rows, judges }: Omit<PlacePlotParts, 'sentence'>) {
  const { t } = useWords();
  return (
    <RuledTable caption={t('office-closeness-places')}>
      <thead>
        <tr>
          <th scope="col">{t('office-closeness-place')}</th>
          <th scope="col">{t('office-closeness-number')}</th>
          {judges.map(({ seatId, name }) => (
            <th key={seatId} scope="col">
              {name}
            </th>
          ))}
          <th scope="col">{t('office-closeness-apart')}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ backNumber, place, at, spread }) => (
          <tr key={backNumber}>
            <td class="figures">{place ?? '–'}</td>
            <th scope="row" class="figures">
              {backNumber}
            </th>
            {judges.map(({ seatId, seatOrder }) => (
              <td key={seatId} class="figures">
                {at.find(({ seats }) => seats.includes(seatOrder))?.place ?? t('office-closeness-left-off')}
              </td>
            ))}
            <td class="figures">{spread}</td>
          </tr>
        ))}
      </tbody>
    </RuledTable>
  );
}
