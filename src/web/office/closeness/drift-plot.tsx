import { useWords } from '../../shared/words.tsx';
import { RuledTable } from '../pieces/ruled-table.tsx';
import type { DriftPlot, DriftScale } from './drift-plots.ts';
import { figureOf, overTenGoes, roundedFigure } from './figures.ts';
import { Plot } from './plot.tsx';

const height = 150;
const edge = { left: 44, right: 10, top: 10, bottom: 26 };

/** One judge's scores as they went, with the line through them; the same scale for all judges of the class. */
export function JudgeDrift({ plot, scale }: { readonly plot: DriftPlot; readonly scale: DriftScale }) {
  const words = useWords();
  const { t } = words;
  const { judge, drift } = plot;
  const sentence =
    drift === null
      ? t('office-closeness-no-drift')
      : t('office-closeness-drift-by', {
          by: roundedFigure(overTenGoes(drift), { digits: 1, signed: true, words }),
        });
  return (
    <Plot
      title={t('office-closeness-judge', { seat: judge.seatOrder, name: judge.name })}
      sentence={sentence}
      height={height}
      draw={(width) => <Points {...{ plot, scale, width }} />}
      table={<DriftTable plot={plot} />}
    />
  );
}

interface PointParts {
  readonly plot: DriftPlot;
  readonly scale: DriftScale;
  readonly width: number;
}

function Points({ plot, scale, width }: PointParts) {
  const words = useWords();
  const x = (share: number) => edge.left + share * (width - edge.left - edge.right);
  const y = (share: number) => height - edge.bottom - share * (height - edge.top - edge.bottom);
  const figure = (value: number) => roundedFigure(value.toFixed(2), { digits: 1, words });
  return (
    <>
      <line class="axis" x1={edge.left - 6} x2={width} y1={y(0) + 8} y2={y(0) + 8} />
      <text class="tick end" x={edge.left - 10} y={y(1) + 5}>
        {figure(scale.high)}
      </text>
      <text class="tick end" x={edge.left - 10} y={y(0) + 5}>
        {figure(scale.low)}
      </text>
      <text class="tick" x={x(0)} y={height - 2}>
        1
      </text>
      <text class="tick" x={x(1) - 4} y={height - 2}>
        {scale.goes}
      </text>
      {plot.line !== undefined && (
        <line class="drift" x1={x(0)} x2={x(1)} y1={y(plot.line.from)} y2={y(plot.line.to)} />
      )}
      {plot.points.map(({ x: at, y: score, backNumber }) => (
        <circle key={backNumber} class="go" cx={x(at)} cy={y(score)} r={4} />
      ))}
    </>
  );
}

function DriftTable({ plot: { judge } }: { readonly plot: DriftPlot }) {
  const words = useWords();
  const { t } = words;
  return (
    <RuledTable caption={t('office-closeness-scores-of', { name: judge.name })}>
      <thead>
        <tr>
          <th scope="col">{t('office-closeness-go')}</th>
          <th scope="col">{t('office-closeness-number')}</th>
          <th scope="col">{t('office-closeness-score')}</th>
        </tr>
      </thead>
      <tbody>
        {judge.goes.map(({ backNumber, goPosition, score }) => (
          <tr key={backNumber}>
            <td class="figures">{goPosition ?? '–'}</td>
            <th scope="row" class="figures">
              {backNumber}
            </th>
            <td class="figures">{score === null ? '–' : figureOf(score, words)}</td>
          </tr>
        ))}
      </tbody>
    </RuledTable>
  );
}
