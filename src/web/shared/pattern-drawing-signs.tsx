/** What stands in a drawing beside the ways: cones, obstacles, marks. All in the units of the scaled drawing. */
import type { Cone, Mark, Obstacle, Point } from '../../engine/patterns/types.ts';

const tenth = (length: number): number => Math.round(length * 10) / 10;
const degrees = (radians: number): number => Math.round((radians * 180) / Math.PI);
const towards = (from: Point, to: Point): number => degrees(Math.atan2(to.y - from.y, to.x - from.x));

interface ConeDrawn extends Cone {
  readonly arena: Point;
  /** Middle of its letter, beside the cone. */
  readonly letterAt: Point;
}

export function ConeSign({ letter, x, y, stands, arena, letterAt }: ConeDrawn) {
  if (stands === 'board') return <BoardSign letter={letter} x={x} y={y} arena={arena} />;
  return (
    <g class="drawing-cone">
      <path d={`M ${x} ${y - 11} L ${x + 9} ${y + 7} L ${x - 9} ${y + 7} Z`} />
      <text x={letterAt.x} y={letterAt.y + 8} text-anchor="middle">
        {letter}
      </text>
    </g>
  );
}

/** A letter on the rail stands outside of it; one on the center line stands on the ground. */
function BoardSign({ letter, x, y, arena }: Pick<Cone, 'letter'> & Point & { readonly arena: Point }) {
  const out = 17;
  const left = x === 0 ? -out : x === arena.x ? out : 0;
  const down = y === 0 ? -out : y === arena.y ? out : 0;
  const onGround = left === 0 && down === 0;
  return (
    <g class={onGround ? 'drawing-board on-ground' : 'drawing-board'}>
      {onGround && <circle cx={x} cy={y} r={3} />}
      <text x={x + left + (onGround ? 14 : 0)} y={y + down + 8} text-anchor="middle">
        {letter}
      </text>
    </g>
  );
}

export function ObstacleSign({ obstacle }: { readonly obstacle: Obstacle }) {
  switch (obstacle.kind) {
    case 'pole':
    case 'gate': {
      const { from, to, kind } = obstacle;
      return (
        <g class={`drawing-${kind}`}>
          <line x1={from.x} y1={from.y} x2={to.x} y2={to.y} />
          {kind === 'gate' && [from, to].map(({ x, y }) => <circle key={`${x} ${y}`} cx={x} cy={y} r={5} />)}
        </g>
      );
    }
    case 'bridge': {
      const { from, to, width } = obstacle;
      const length = tenth(Math.hypot(to.x - from.x, to.y - from.y));
      const planks = Array.from({ length: Math.floor(length / 10) }, (_, index) => (index + 1) * 10);
      return (
        <g class="drawing-bridge" transform={`translate(${from.x} ${from.y}) rotate(${towards(from, to)})`}>
          <rect x={0} y={-width / 2} width={length} height={width} />
          {planks.map((x) => (
            <line key={x} x1={x} y1={-width / 2} x2={x} y2={width / 2} />
          ))}
        </g>
      );
    }
    case 'water':
      return <circle class="drawing-water" cx={obstacle.at.x} cy={obstacle.at.y} r={obstacle.radius} />;
    case 'judge': {
      const { x, y } = obstacle.at;
      return (
        <g class="drawing-judge">
          <circle cx={x} cy={y - 8} r={5} />
          <path d={`M ${x - 9} ${y + 11} a 9 11 0 0 1 18 0 Z`} />
        </g>
      );
    }
  }
}

export function MarkSign({ mark }: { readonly mark: Mark }) {
  switch (mark.kind) {
    case 'halt':
      return <rect class="drawing-halt" x={mark.at.x - 6} y={mark.at.y - 6} width={12} height={12} />;
    case 'turn':
      return <TurnSign {...mark} />;
    case 'lead-change': {
      const { x, y } = mark.at;
      const arm = 8;
      const d =
        mark.how === 'flying'
          ? `M ${x - arm} ${y - arm} L ${x + arm} ${y + arm} M ${x - arm} ${y + arm} L ${x + arm} ${y - arm}`
          : `M ${x - arm} ${y} L ${x + arm} ${y} M ${x} ${y - arm} L ${x} ${y + arm}`;
      return <path class="drawing-lead-change" d={d} />;
    }
    case 'side-pass': {
      const { from, to } = mark;
      return (
        <g class="drawing-side-pass">
          <line x1={from.x} y1={from.y} x2={to.x} y2={to.y} />
          <Arrow x={to.x} y={to.y} turned={towards(from, to)} />
        </g>
      );
    }
  }
}

const quarterSigns = ['', '¼', '½', '¾'] as const;

/** 5 quarters are "1¼". */
export function turnsText(quarters: number): string {
  const whole = Math.floor(quarters / 4);
  return `${whole === 0 ? '' : whole}${quarterSigns[quarters % 4] ?? ''}`;
}

/** Almost all around, with an arrow, and how often. */
function TurnSign({ at: { x, y }, hand, quarters }: Extract<Mark, { kind: 'turn' }>) {
  const r = 17;
  const side = hand === 'right' ? 1 : -1;
  const end = { x: x - side * r, y };
  return (
    <g class="drawing-turn">
      <path d={`M ${x} ${y - r} A ${r} ${r} 0 1 ${hand === 'right' ? 1 : 0} ${end.x} ${end.y}`} />
      <Arrow x={end.x} y={end.y} turned={-90} />
      <text x={x} y={y + 6} text-anchor="middle">
        {turnsText(quarters)}
      </text>
    </g>
  );
}

/** `turned`: degrees clockwise from pointing right. */
export const Arrow = ({ x, y, turned }: Point & { readonly turned: number }) => (
  <path
    class="drawing-arrow"
    d="M 9 0 L -6 -7 L -3 0 L -6 7 Z"
    transform={`translate(${tenth(x)} ${tenth(y)}) rotate(${turned})`}
  />
);
