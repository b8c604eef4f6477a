/**
 * A pattern as it is drawn on a sheet: arena and cones from above, the way with its gaits by line style (dotted walk,
 * dashed trot, whole canter, tied back), arrows, numbers of the maneuvers. Pure, for the browser and for the service.
 * Its look is `pattern-drawing.css`, its words are in `shared.ftl`; the maneuvers in words stand beside it.
 */

import { svgPath } from '../../engine/patterns/svg-path.ts';
import type { DrawnManeuver, PatternDrawing, Point } from '../../engine/patterns/types.ts';
import { lengthOf, placeAlong, type Segment, segmentsOf } from '../../engine/patterns/way.ts';
import { DrawingLegend, FinishSign, StartSign, WayLine } from './pattern-drawing-legend.tsx';
import { letterPlaces, numberPlaces } from './pattern-drawing-numbers.ts';
import { scaledDrawing } from './pattern-drawing-scale.ts';
import { Arrow, ConeSign, MarkSign, ObstacleSign } from './pattern-drawing-signs.tsx';
import { useWords } from './words.tsx';

interface Drawn {
  readonly drawing: PatternDrawing;
  /** Position of the one maneuver that stands out; left out: all alike. */
  readonly highlighted?: number | undefined;
  /** Left out where the drawing is small and stands beside another one. */
  readonly legend?: boolean;
}

/** Room for letters on the rail. */
const outside = 34;

export function PatternDrawingFigure({ drawing, highlighted, legend = true }: Drawn) {
  const { t } = useWords();
  const scaled = scaledDrawing(drawing);
  const { width, height } = scaled.arena;
  const letters = letterPlaces(scaled);
  const label = t('shared-drawing-label', {
    maneuvers: drawing.maneuvers.length,
    cones: drawing.cones.length,
    letters: [...letters.keys()].join(', '),
  });
  return (
    <figure class={width < height ? 'drawing is-upright' : 'drawing'}>
      <svg
        viewBox={`${-outside} ${-outside} ${width + 2 * outside} ${height + 2 * outside}`}
        role="img"
        aria-label={
          highlighted === undefined ? label : `${label} ${t('shared-drawing-highlighted', { highlighted })}`
        }
      >
        <rect class="drawing-arena" x={0} y={0} width={width} height={height} />
        {scaled.obstacles.map((obstacle, index) => (
          <ObstacleSign key={index} obstacle={obstacle} />
        ))}
        {scaled.cones.map((cone) => (
          <ConeSign
            key={cone.letter}
            {...cone}
            arena={{ x: width, y: height }}
            letterAt={letters.get(cone.letter) ?? cone}
          />
        ))}
        <Ways drawing={scaled} highlighted={highlighted} />
      </svg>
      {legend && (
        <figcaption>
          <DrawingLegend drawing={drawing} />
        </figcaption>
      )}
    </figure>
  );
}

type WaysDrawn = Pick<Drawn, 'drawing' | 'highlighted'>;

/** The one that stands out is drawn last, over the others. */
function Ways({ drawing, highlighted }: WaysDrawn) {
  const places = new Map(numberPlaces(drawing).map((place) => [place.position, place]));
  const inOrder = [...drawing.maneuvers].sort((one, other) => one.position - other.position);
  const [first, last] = [startOf(inOrder[0]), endOf(inOrder.at(-1))];
  const layers = [...inOrder].sort(
    (one, other) => Number(one.position === highlighted) - Number(other.position === highlighted),
  );
  return (
    <>
      {first !== undefined && <StartSign {...first} />}
      {last !== undefined && <FinishSign {...last} />}
      {layers.map((maneuver) => (
        <ManeuverWay
          key={maneuver.position}
          maneuver={maneuver}
          number={places.get(maneuver.position)}
          look={lookOf(maneuver, highlighted)}
        />
      ))}
    </>
  );
}

const lookOf = ({ position }: DrawnManeuver, highlighted: number | undefined): string => {
  if (highlighted === undefined) return 'drawing-maneuver';
  return `drawing-maneuver ${position === highlighted ? 'is-highlighted' : 'is-faint'}`;
};

interface OneWay {
  readonly maneuver: DrawnManeuver;
  readonly number: Point | undefined;
  readonly look: string;
}

function ManeuverWay({ maneuver: { position, strokes, marks }, number, look }: OneWay) {
  return (
    <g class={look}>
      {strokes.map((stroke) => {
        const d = svgPath(stroke);
        return (
          <g key={d}>
            <WayLine gait={stroke.gait} d={d} />
            <Arrows segments={segmentsOf(stroke)} />
          </g>
        );
      })}
      {marks.map((mark, index) => (
        <MarkSign key={index} mark={mark} />
      ))}
      {number !== undefined && <ManeuverNumber {...number} position={position} />}
    </g>
  );
}

const ManeuverNumber = ({ x, y, position }: Point & { readonly position: number }) => (
  <g class="drawing-number" transform={`translate(${Math.round(x)} ${Math.round(y)})`}>
    <circle r={14} />
    <text y={7} text-anchor="middle">
      {position}
    </text>
  </g>
);

/** One on a short way, more on a long one. */
function Arrows({ segments }: { readonly segments: readonly Segment[] }) {
  const length = lengthOf(segments);
  const count = Math.max(1, Math.round(length / 240));
  return Array.from({ length: count }, (_, index) => {
    const at = (length * (index + 0.62)) / count;
    const { x, y, heading } = placeAlong(segments, at);
    return <Arrow key={at} x={x} y={y} turned={Math.round((heading * 180) / Math.PI)} />;
  });
}

function startOf(first: DrawnManeuver | undefined): Point | undefined {
  const mark = first?.marks[0];
  return first?.strokes[0]?.from ?? (mark === undefined ? undefined : 'at' in mark ? mark.at : mark.from);
}

function endOf(last: DrawnManeuver | undefined): Point | undefined {
  const stroke = last?.strokes.at(-1);
  if (stroke !== undefined) {
    const segments = segmentsOf(stroke);
    return placeAlong(segments, lengthOf(segments));
  }
  const mark = last?.marks.at(-1);
  return mark === undefined ? undefined : 'at' in mark ? mark.at : mark.to;
}
