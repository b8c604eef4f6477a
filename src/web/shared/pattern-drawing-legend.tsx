/** What the lines and signs of a drawing mean: those that occur in it. */
import type { VNode } from 'preact';
import type { DrawnGait, Mark, Obstacle, PatternDrawing } from '../../engine/patterns/types.ts';
import { MarkSign, ObstacleSign } from './pattern-drawing-signs.tsx';
import { useWords } from './words.tsx';

const gaits: readonly DrawnGait[] = ['walk', 'trot', 'canter', 'back', 'other'];
const middle = { x: 26, y: 14 };
const marks: readonly Mark[] = [
  { kind: 'halt', at: middle },
  { kind: 'turn', at: middle, hand: 'right', quarters: 4 },
  { kind: 'lead-change', at: middle, how: 'flying' },
  { kind: 'lead-change', at: middle, how: 'simple' },
  { kind: 'side-pass', from: { x: 6, y: 14 }, to: { x: 42, y: 14 } },
];
const obstacles: readonly Obstacle[] = [
  { kind: 'pole', from: { x: 6, y: 14 }, to: { x: 46, y: 14 } },
  { kind: 'gate', from: { x: 8, y: 14 }, to: { x: 44, y: 14 } },
  { kind: 'bridge', from: { x: 6, y: 14 }, to: { x: 46, y: 14 }, width: 20 },
  { kind: 'water', at: middle, radius: 12 },
  { kind: 'judge', at: middle },
];

const nameOf = (mark: Mark): string => (mark.kind === 'lead-change' ? `${mark.how}-change` : mark.kind);

export function DrawingLegend({ drawing }: { readonly drawing: PatternDrawing }) {
  const { t } = useWords();
  const { maneuvers } = drawing;
  const usedGaits = new Set(maneuvers.flatMap(({ strokes }) => strokes.map(({ gait }) => gait)));
  const usedMarks = new Set(maneuvers.flatMap((maneuver) => maneuver.marks.map(nameOf)));
  const usedObstacles = new Set(drawing.obstacles.map(({ kind }) => kind));
  const items: [string, VNode][] = [
    ['start', <StartSign key="sign" {...middle} />],
    ['finish', <FinishSign key="sign" {...middle} />],
    ...gaits
      .filter((gait) => usedGaits.has(gait))
      .map((gait): [string, VNode] => [gait, <WayLine key="sign" gait={gait} d="M 4 14 L 48 14" />]),
    ...marks
      .filter((mark) => usedMarks.has(nameOf(mark)))
      .map((mark): [string, VNode] => [nameOf(mark), <MarkSign key="sign" mark={mark} />]),
    ...obstacles
      .filter(({ kind }) => usedObstacles.has(kind))
      .map((obstacle): [string, VNode] => [obstacle.kind, <ObstacleSign key="sign" obstacle={obstacle} />]),
  ];
  return (
    <ul class="drawing-legend">
      {items.map(([name, sign]) => (
        <li key={name}>
          <svg viewBox="0 -6 52 40" aria-hidden="true">
            {sign}
          </svg>
          <span>{t(`shared-drawing-${name}`)}</span>
        </li>
      ))}
    </ul>
  );
}

/** Backing up is a line with ties across it, as a railway is drawn on maps. */
export const WayLine = ({ gait, d }: { readonly gait: DrawnGait; readonly d: string }) => (
  <g class={`drawing-way drawing-${gait}`}>
    <path d={d} />
    {gait === 'back' && <path class="drawing-ties" d={d} />}
  </g>
);

interface At {
  readonly x: number;
  readonly y: number;
}

export const StartSign = ({ x, y }: At) => <circle class="drawing-start" cx={x} cy={y} r={8} />;

export const FinishSign = ({ x, y }: At) => (
  <g class="drawing-finish">
    <circle cx={x} cy={y} r={9} />
    <circle class="drawing-finish-heart" cx={x} cy={y} r={4} />
  </g>
);
