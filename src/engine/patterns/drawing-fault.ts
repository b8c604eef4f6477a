/** What is wrong with the drawing of a pattern. */

export interface DrawingFault {
  readonly code:
    | 'letter_twice'
    /** A maneuver of the pattern names a cone that is not drawn. */
    | 'cone_not_drawn'
    | 'outside_arena'
    /** The pattern has no maneuver at that position. */
    | 'position_unknown'
    | 'position_twice'
    | 'maneuver_not_drawn'
    /** Neither a way nor a mark. */
    | 'maneuver_empty'
    /** It ends where it begins. */
    | 'goes_nowhere'
    /** Less than half of the way between its ends. */
    | 'radius_too_small';
  /** JSON pointer into the drawing. */
  readonly at: string;
  readonly written: string;
}
