/** Shows, classes, panels, entries, the order of go. */
export const officeProblems = {
  unknown_time_zone: {
    status: 422,
    title: 'There is no such time zone',
    whatToDo: 'Use a name of the IANA time zone database, such as America/Chicago.',
  },
  invalid_local_time: {
    status: 422,
    title: 'That time of day does not exist, or exists twice, on that day',
    whatToDo: 'The clocks change that day: give the time with its offset from UTC.',
  },
  days_out_of_order: {
    status: 422,
    title: 'The last day comes before the first',
    whatToDo: 'Give the last day as the first day or a later one.',
  },
  day_outside_show: {
    status: 422,
    title: 'The day is not a day of the show',
    whatToDo: 'Choose a day from the first to the last day of the show.',
  },
  back_number_taken: {
    status: 409,
    title: 'Another entry of the show has that back number',
    whatToDo: 'Choose a free back number.',
  },
  class_number_taken: {
    status: 409,
    title: 'Another class of the show has that number',
    whatToDo: 'Choose a free class number.',
  },
  already_entered: {
    status: 409,
    title: 'The entry is in the class already',
    whatToDo: 'Nothing needs to be done.',
  },
  unknown_reference: {
    status: 422,
    title: 'A record named in the request is not there',
    whatToDo: 'Check the id in the field named under "errors"; it must belong to the same show.',
  },
  sheet_invalid: {
    status: 422,
    title: 'The score sheet cannot be used',
    whatToDo: 'Put right what is named under "errors".',
  },
  sheet_version_taken: {
    status: 409,
    title: 'That version of the score sheet is there already',
    whatToDo: 'A score sheet never changes: add it with the next version number.',
  },
  pattern_needed: {
    status: 422,
    title: 'The score sheet marks maneuvers, so the class needs a pattern',
    whatToDo: 'Give the class a pattern.',
  },
  drawing_invalid: {
    status: 422,
    title: 'The drawing does not show the pattern',
    whatToDo:
      'Put right what is named under "errors": draw every maneuver once, within the arena, with its cones.',
  },
  pattern_in_use: {
    status: 409,
    title: 'A card was written on the pattern, so it stays as it is',
    whatToDo: 'Add a new pattern for another class.',
  },
  pattern_not_public: {
    status: 409,
    title: 'The pattern is not public yet',
    whatToDo: 'Look again once the order of go is drawn or the class is called.',
  },
  rule_invalid: {
    status: 422,
    title: 'The placing rule does not fit the class',
    whatToDo: 'Put right what is named under "errors": rule, tie-breaks, sheet and panel must fit together.',
  },
  panel_locked: {
    status: 409,
    title: 'A card was written, so the panel stays as it is',
    whatToDo: 'Record that a judge withdraws, with the reason, and seat another.',
  },
  seat_taken: {
    status: 409,
    title: 'The seat, or that place in the order of judges, is taken',
    whatToDo: 'Choose another seat or place.',
  },
  seat_withdrawn: {
    status: 409,
    title: 'The judge of that seat has withdrawn',
    whatToDo: 'Use the seat of the judge who took her place.',
  },
  no_entries: { status: 409, title: 'The class has no entry', whatToDo: 'Enter someone first.' },
  order_not_drawn: { status: 409, title: 'The order of go is not drawn yet', whatToDo: 'Draw it first.' },
  order_already_drawn: {
    status: 409,
    title: 'The order of go is drawn already',
    whatToDo: 'To draw it again, say why.',
  },
  order_incomplete: {
    status: 422,
    title: 'The order of go must hold each entry of the class once',
    whatToDo: 'Give every entry that goes exactly once.',
  },
  class_under_way: {
    status: 409,
    title: 'The class is being judged',
    whatToDo: 'This can be done only before the first card is written.',
  },
  class_not_open: {
    status: 409,
    title: 'The class was cancelled or combined into another',
    whatToDo: 'Use the class that it went into.',
  },
  status_change_refused: {
    status: 409,
    title: 'The entry cannot go from its status to that one',
    whatToDo: 'Look at its present status; the ones that may follow stand under "detail".',
  },
  consent_needs_parent: {
    status: 422,
    title: 'A minor cannot give this consent alone',
    whatToDo:
      'Record the word of a parent or guardian, or put the date of birth right. Until then the name is shown as the show shows minors.',
  },
  consent_overtaken: {
    status: 409,
    title: 'A later word, which shows less of the name, is on record',
    whatToDo: 'Ask the family again, and record what they say today with the day of today.',
  },
  exhibitor_erased: {
    status: 409,
    title: 'The name of this exhibitor was erased, for good',
    whatToDo: 'Leave the record as it is. Whoever shows again is a new exhibitor.',
  },
  erasure_not_confirmed: {
    status: 422,
    title: 'What was repeated is not of this exhibitor, and an erasure cannot be undone',
    whatToDo: 'Repeat a back number, or the id, of the exhibitor that you mean. Nothing was erased.',
  },
  answer_erased: {
    status: 410,
    title: 'The request was carried out before; its answer held a name that was erased since',
    whatToDo: 'Read the record itself. Nothing of this request was done again.',
  },
  rehearsal_of_practice: {
    status: 409,
    title: 'A practice show has no rehearsals of its own',
    whatToDo: 'Rehearse the official show, as often as you like.',
  },
  class_not_empty: {
    status: 409,
    title: 'Something is written in this class, though its first card was never opened',
    whatToDo:
      'Have the office look at what stands under "detail" before anything is judged. Nothing was opened.',
  },
  reason_needed: {
    status: 422,
    title: 'A reason is needed',
    whatToDo: 'Say why, in words that others will read.',
  },
} as const;
