/** What is wrong with the drawing of a pattern, in words for who drew it. */
import type { DrawingFault } from '../patterns/drawing-fault.ts';

export function drawingFaultSentence({ code, written }: DrawingFault): string {
  switch (code) {
    case 'letter_twice':
      return `the letter ${written} is there twice; each cone has its own`;
    case 'cone_not_drawn':
      return `a maneuver names cone ${written}, and it is not drawn`;
    case 'outside_arena':
      return `it leaves the arena at ${written}`;
    case 'position_unknown':
      return `the pattern has no maneuver ${written}`;
    case 'position_twice':
      return `maneuver ${written} is drawn twice; put all of its ways under one`;
    case 'maneuver_not_drawn':
      return `maneuver ${written} is not drawn`;
    case 'maneuver_empty':
      return `maneuver ${written} has neither a way nor a mark`;
    case 'goes_nowhere':
      return `it is at ${written} already; leave the step out, or put its aim elsewhere`;
    case 'radius_too_small':
      return `with a radius of ${written} the arc does not reach from one end to the other`;
  }
}
