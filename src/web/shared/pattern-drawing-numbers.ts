/** Where letters and numbers stand: beside their cone or way, as far as there is room from everything else. */
import type { DrawnManeuver, PatternDrawing, Point } from '../../engine/patterns/types.ts';
import { lengthOf, placeAlong, segmentsOf } from '../../engine/patterns/way.ts';

export interface NumberPlace extends Point {
  readonly position: number;
}

/** All in the units of the scaled drawing. */
const beside = 21;
const sampleEvery = 8;
/** Parts of its way where a number may stand; the middle is the first choice. */
const parts = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8];
/** Farther than this from everything is far enough. */
const roomy = 19;

export function numberPlaces(drawing: PatternDrawing): NumberPlace[] {
  const letters = [...letterPlaces(drawing).values()];
  const taken: Point[] = [...drawing.cones, ...letters, ...drawing.maneuvers.flatMap(ownPoints)];
  return drawing.maneuvers.map((maneuver) => {
    const place = roomiest(candidates(maneuver), { taken, ...drawing.arena });
    // Another number needs more room than a line.
    taken.push(...aroundNumber(place));
    return { ...place, position: maneuver.position };
  });
}

/** By letter: to the right of its cone, or where there is more room. */
export function letterPlaces({ cones, maneuvers, arena }: PatternDrawing): ReadonlyMap<string, Point> {
  const taken = maneuvers.flatMap(ownPoints);
  return new Map(
    cones.map(({ letter, x, y }) => {
      const sides = [
        { x: x + 20, y },
        { x: x - 20, y },
        { x, y: y + 20 },
        { x, y: y - 23 },
      ];
      return [letter, roomiest(sides, { taken, ...arena })];
    }),
  );
}

const aroundNumber = ({ x, y }: Point): Point[] =>
  [
    [0, 0],
    [9, 0],
    [-9, 0],
    [0, 9],
    [0, -9],
  ].map(([dx = 0, dy = 0]) => ({ x: x + dx, y: y + dy }));

/** What its way and its marks cover. */
function ownPoints({ strokes, marks }: DrawnManeuver): Point[] {
  const ways = strokes.flatMap((stroke) => {
    const segments = segmentsOf(stroke);
    const count = Math.ceil(lengthOf(segments) / sampleEvery);
    return Array.from({ length: count + 1 }, (_, index) => placeAlong(segments, index * sampleEvery));
  });
  return [...ways, ...marks.map((mark) => ('at' in mark ? mark.at : mark.to))];
}

function candidates({ strokes, marks }: DrawnManeuver): Point[] {
  const longest = strokes
    .map((stroke) => segmentsOf(stroke))
    .sort((one, other) => lengthOf(other) - lengthOf(one))[0];
  if (longest !== undefined) {
    const length = lengthOf(longest);
    return parts.flatMap((part) => {
      const { x, y, heading } = placeAlong(longest, length * part);
      return [-1, 1].map((side) => ({
        x: x + side * beside * Math.cos(heading + Math.PI / 2),
        y: y + side * beside * Math.sin(heading + Math.PI / 2),
      }));
    });
  }
  const mark = marks[0];
  const at = mark === undefined ? { x: 0, y: 0 } : 'at' in mark ? mark.at : mark.to;
  return [1, 3, 5, 7, 0, 2, 4, 6].map((eighth) => ({
    x: at.x + 30 * Math.cos((eighth * Math.PI) / 4),
    y: at.y + 30 * Math.sin((eighth * Math.PI) / 4),
  }));
}

interface Room {
  readonly taken: readonly Point[];
  readonly width: number;
  readonly height: number;
}

/** The first that has room enough, or the one that has most. */
function roomiest(places: readonly Point[], { taken, width, height }: Room): Point {
  let best: { place: Point; room: number } | undefined;
  for (const place of places) {
    const toRail = Math.min(place.x, place.y, width - place.x, height - place.y);
    const room = Math.min(toRail + 8, ...taken.map(({ x, y }) => Math.hypot(x - place.x, y - place.y)));
    if (room >= roomy) return place;
    if (best === undefined || room > best.room) best = { place, room };
  }
  return best?.place ?? { x: 0, y: 0 };
}
