/**
 * A pattern as it is drawn on a sheet: the arena from above, its cones, what stands in it, and the way of each
 * maneuver. All lengths are whole decimetres; x goes to the right and y down the page, from the upper left corner.
 */

export interface PatternDrawing {
  readonly arena: Arena;
  readonly cones: readonly Cone[];
  /** What is ridden over, through or around, and where the judge stands. */
  readonly obstacles: readonly Obstacle[];
  /** Each maneuver of the pattern once. */
  readonly maneuvers: readonly DrawnManeuver[];
}

export interface Arena {
  readonly width: number;
  readonly height: number;
}

export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface Cone extends Point {
  /** A to Z, as the maneuvers name it. */
  readonly letter: string;
  /** A letter on a board at the rail, as in a dressage ring, is no cone. */
  readonly stands: 'cone' | 'board';
}

export type Obstacle =
  | { readonly kind: 'pole'; readonly from: Point; readonly to: Point }
  | { readonly kind: 'gate'; readonly from: Point; readonly to: Point }
  | { readonly kind: 'bridge'; readonly from: Point; readonly to: Point; readonly width: number }
  | { readonly kind: 'water'; readonly at: Point; readonly radius: number }
  | { readonly kind: 'judge'; readonly at: Point };

/** `trot` is the jog and `canter` the lope too: they are drawn alike. */
export const drawnGaits = ['walk', 'trot', 'canter', 'back', 'other'] as const;
export type DrawnGait = (typeof drawnGaits)[number];

export const hands = ['left', 'right'] as const;
/** As the rider turns. */
export type Hand = (typeof hands)[number];

export interface DrawnManeuver {
  /** Of the maneuver in the pattern; 1 is the first. */
  readonly position: number;
  /** In the order in which they are ridden. Beside the last one where a way is ridden twice, so that both are seen. */
  readonly strokes: readonly Stroke[];
  readonly marks: readonly Mark[];
}

/** A way in one gait. */
export interface Stroke {
  readonly gait: DrawnGait;
  readonly from: Point;
  readonly steps: readonly Step[];
}

export type Step =
  | { readonly kind: 'straight'; readonly to: Point }
  /** Part of a circle: the shorter one between the two points, or the longer. */
  | {
      readonly kind: 'arc';
      readonly hand: Hand;
      readonly to: Point;
      readonly radius: number;
      readonly part: 'shorter' | 'longer';
    }
  /** All around, and back to where it began. */
  | { readonly kind: 'circle'; readonly hand: Hand; readonly center: Point };

export type Mark =
  | { readonly kind: 'halt'; readonly at: Point }
  /** Spin, turn on the haunches or the forehand, pivot, rollback: 4 quarters are once around. */
  | { readonly kind: 'turn'; readonly at: Point; readonly hand: Hand; readonly quarters: number }
  | { readonly kind: 'lead-change'; readonly at: Point; readonly how: 'flying' | 'simple' }
  | { readonly kind: 'side-pass'; readonly from: Point; readonly to: Point };
