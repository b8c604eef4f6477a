/** Drawings of patterns: their geometry, what is refused, and those of the demo show. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { checkDrawing } from '../../src/engine/patterns/check-drawing.ts';
import { svgPath } from '../../src/engine/patterns/svg-path.ts';
import type { DrawnManeuver, PatternDrawing, Point, Stroke } from '../../src/engine/patterns/types.ts';
import { lengthOf, outermost, placeAlong, segmentsOf } from '../../src/engine/patterns/way.ts';

const from = { x: 100, y: 100 };
const straight = (x: number, y: number) => ({ kind: 'straight', to: { x, y } }) as const;
const way = (...steps: Stroke['steps']): Stroke => ({ gait: 'trot', from, steps });

const quarterRight = way({ kind: 'arc', hand: 'right', to: { x: 150, y: 150 }, radius: 50, part: 'shorter' });
const quarterLeft = way({ kind: 'arc', hand: 'left', to: { x: 150, y: 150 }, radius: 50, part: 'shorter' });
const threeQuartersRight = way({
  ...{ kind: 'arc', hand: 'right', radius: 50, part: 'longer' },
  to: { x: 150, y: 150 },
});

describe('a drawn way', () => {
  test('turns to the right clockwise on the page, as SVG does with its sweep flag', () => {
    expect(svgPath(quarterRight)).toBe('M 100 100 A 50 50 0 0 1 150 150');
    // Around the center (100, 150), so it bows out to the upper right.
    const middle = placeAlong(segmentsOf(quarterRight), lengthOf(segmentsOf(quarterRight)) / 2);
    expect(middle.x).toBeCloseTo(100 + 50 * Math.SQRT1_2);
    expect(middle.y).toBeCloseTo(150 - 50 * Math.SQRT1_2);
  });

  test('turns to the left the other way, around the other center', () => {
    expect(svgPath(quarterLeft)).toBe('M 100 100 A 50 50 0 0 0 150 150');
    const middle = placeAlong(segmentsOf(quarterLeft), lengthOf(segmentsOf(quarterLeft)) / 2);
    // Around the center (150, 100).
    expect(middle.x).toBeCloseTo(150 - 50 * Math.SQRT1_2);
    expect(middle.y).toBeCloseTo(100 + 50 * Math.SQRT1_2);
  });

  test('is as long as its part of the circle: a quarter, or the three others', () => {
    expect(lengthOf(segmentsOf(quarterRight))).toBeCloseTo((Math.PI * 50) / 2);
    expect(lengthOf(segmentsOf(threeQuartersRight))).toBeCloseTo((3 * Math.PI * 50) / 2);
    expect(svgPath(threeQuartersRight)).toBe('M 100 100 A 50 50 0 1 1 150 150');
  });

  test('goes all around a circle and ends where it began, drawn as two halves', () => {
    const circle = way({ kind: 'circle', hand: 'left', center: { x: 100, y: 50 } }, straight(200, 100));
    expect(svgPath(circle)).toBe('M 100 100 A 50 50 0 0 0 100 0 A 50 50 0 0 0 100 100 L 200 100');
    expect(lengthOf(segmentsOf(circle))).toBeCloseTo(2 * Math.PI * 50 + 100);
  });

  test('looks where it goes', () => {
    const ahead = placeAlong(segmentsOf(way(straight(200, 100))), 40);
    expect(ahead).toEqual({ x: 140, y: 100, heading: 0 });
    // At the end of a quarter to the right from the east one rides south: a quarter turn down the page.
    const turned = placeAlong(segmentsOf(quarterRight), 1_000);
    expect([turned.x, turned.y]).toEqual([expect.closeTo(150), expect.closeTo(150)]);
    expect(turned.heading).toBeCloseTo(Math.PI / 2);
  });

  test('is widest where it comes by a side of its circle', () => {
    const half = way({ kind: 'arc', hand: 'right', to: { x: 100, y: 200 }, radius: 50, part: 'shorter' });
    const [segment] = segmentsOf(half);
    if (segment === undefined) throw new Error('no segment');
    expect(Math.max(...outermost(segment).map(({ x }) => x))).toBeCloseTo(150);
  });
});

const named = [
  { startCone: 'A', endCone: 'B' },
  { startCone: 'B', endCone: null },
];
const walk: DrawnManeuver = { position: 1, strokes: [way(straight(200, 100))], marks: [] };
const halt: DrawnManeuver = { position: 2, strokes: [], marks: [{ kind: 'halt', at: { x: 200, y: 100 } }] };
const drawing: PatternDrawing = {
  arena: { width: 300, height: 200 },
  cones: [
    { letter: 'A', x: 100, y: 110, stands: 'cone' },
    { letter: 'B', x: 200, y: 110, stands: 'cone' },
  ],
  obstacles: [],
  maneuvers: [walk, halt],
};
const codes = (changed: Partial<PatternDrawing>, maneuvers = named) =>
  checkDrawing({ ...drawing, ...changed }, maneuvers).map(({ code, at }) => `${code} ${at}`);

describe('a drawing', () => {
  test('that shows every maneuver once within its arena is taken', () => {
    expect(codes({})).toEqual([]);
  });

  test('shows every cone that the maneuvers name, each letter once', () => {
    const [first, second] = drawing.cones;
    if (first === undefined || second === undefined) throw new Error('no cones');
    expect(codes({ cones: [first] })).toEqual(['cone_not_drawn /cones']);
    expect(codes({ cones: [first, second, { ...second, x: 10 }] })).toEqual(['letter_twice /cones/2/letter']);
  });

  test('has no maneuver too many, none twice, none left out and none without anything drawn', () => {
    expect(codes({ maneuvers: [walk, halt, { ...halt, position: 3 }] })).toEqual([
      'position_unknown /maneuvers/2/position',
    ]);
    expect(codes({ maneuvers: [walk, halt, walk] })).toEqual(['position_twice /maneuvers/2/position']);
    expect(codes({ maneuvers: [halt] })).toEqual(['maneuver_not_drawn /maneuvers']);
    expect(codes({ maneuvers: [walk, { position: 2, strokes: [], marks: [] }] })).toEqual([
      'maneuver_empty /maneuvers/1',
    ]);
  });

  test('stays within the arena, its bows too', () => {
    expect(codes({ arena: { width: 150, height: 200 } })).toEqual([
      'outside_arena /cones/1',
      'outside_arena /maneuvers/1/marks/0',
      'outside_arena /maneuvers/0/strokes/0/steps/0',
    ]);
    // Both ends lie within, and the bow between them comes 30 dm beyond the rail on the left.
    const bow = { kind: 'arc', hand: 'left', to: { x: 20, y: 150 }, radius: 50, part: 'shorter' } as const;
    const strokes = [{ gait: 'canter', from: { x: 20, y: 50 }, steps: [bow] } as const];
    expect(codes({ maneuvers: [{ ...walk, strokes }, halt] })).toEqual([
      'outside_arena /maneuvers/0/strokes/0/steps/0',
    ]);
  });

  test('has no step that goes nowhere, and no arc that does not reach its end', () => {
    const still = way(straight(100, 100));
    const short = way({ kind: 'arc', hand: 'left', to: { x: 250, y: 100 }, radius: 74, part: 'shorter' });
    expect(codes({ maneuvers: [{ ...walk, strokes: [still, short] }, halt] })).toEqual([
      'goes_nowhere /maneuvers/0/strokes/0/steps/0',
      'radius_too_small /maneuvers/0/strokes/1/steps/0/radius',
    ]);
  });
});

interface DemoPattern {
  readonly name: string;
  readonly maneuvers: readonly {
    readonly startCone?: string;
    readonly endCone?: string;
    readonly gait: string;
    readonly leadOrDiagonal?: string;
  }[];
}

const seed = (name: string) =>
  JSON.parse(readFileSync(new URL(`../../seed/demo-show/${name}`, import.meta.url), 'utf8'));
const patterns: readonly DemoPattern[] = seed('show.json').patterns;
const drawings: Readonly<Record<string, PatternDrawing>> = seed('drawings.json');

/** What a word of the pattern is drawn as. */
const drawnAs: Readonly<Record<string, string>> = {
  ...{ walk: 'walk', jog: 'trot', trot: 'trot', extended_trot: 'trot' },
  ...{ lope: 'canter', canter: 'canter', gallop: 'canter', back: 'back' },
};

const ends = ({ strokes, marks }: DrawnManeuver): [Point, Point] => {
  const places = strokes.flatMap((stroke) => {
    const segments = segmentsOf(stroke);
    return [placeAlong(segments, 0), placeAlong(segments, lengthOf(segments))];
  });
  const all = [...places, ...marks.map((mark) => ('at' in mark ? mark.at : mark.to))];
  const [first, last] = [all[0], all.at(-1)];
  if (first === undefined || last === undefined) throw new Error('nothing is drawn');
  return [first, last];
};

describe.each(patterns.map((pattern) => [pattern.name, pattern] as const))(
  'the drawing of %s',
  (name, pattern) => {
    const drawn = drawings[name];
    const at = (position: number) => {
      const found = drawn?.maneuvers.find((maneuver) => maneuver.position === position);
      if (found === undefined) throw new Error(`maneuver ${position} of ${name} is not drawn`);
      return found;
    };

    test('has nothing wrong with it', () => {
      if (drawn === undefined) throw new Error('not drawn');
      const cones = pattern.maneuvers.map(({ startCone = null, endCone = null }) => ({ startCone, endCone }));
      expect(checkDrawing(drawn, cones)).toEqual([]);
    });

    test('comes by the cones where each maneuver begins or ends, within six metres', () => {
      const off = pattern.maneuvers.flatMap(({ startCone, endCone }, index) => {
        const [begin, end] = ends(at(index + 1));
        const near = (letter: string | undefined, place: Point) => {
          const cone = drawn?.cones.find((one) => one.letter === letter);
          return cone === undefined || Math.hypot(cone.x - place.x, cone.y - place.y) <= 60;
        };
        // A movement of a dressage test begins with the way to its letter, and may end on the way to the next.
        const begins = name.includes('Test') || near(startCone, begin);
        return begins && near(endCone, end) ? [] : [index + 1];
      });
      expect(off).toEqual([]);
    });

    test('shows the gait and the hand that the words name', () => {
      const wrong = pattern.maneuvers.flatMap(({ gait, leadOrDiagonal }, index) => {
        const { strokes, marks } = at(index + 1);
        const wanted = drawnAs[gait];
        const hasGait = wanted === undefined || strokes.some((stroke) => stroke.gait === wanted);
        const turns = [
          ...strokes.flatMap(({ steps }) => steps.flatMap((step) => ('hand' in step ? [step.hand] : []))),
          ...marks.flatMap((mark) => (mark.kind === 'turn' ? [mark.hand] : [])),
        ];
        const ofDiagonal = gait.includes('trot') && turns.length === 0;
        const hasHand =
          leadOrDiagonal === undefined || ofDiagonal || turns.includes(leadOrDiagonal as 'left');
        return hasGait && hasHand ? [] : [index + 1];
      });
      expect(wrong).toEqual([]);
    });
  },
);
