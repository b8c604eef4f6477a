/** Tabulating and posting. */
export const resultProblems = {
  cards_missing: {
    status: 409,
    title: 'Not every card is in',
    whatToDo: 'Chase the cards named under "errors", or record that the judge withdrew.',
  },
  ties_open: {
    status: 409,
    title: 'A tie is left that the rules did not break',
    whatToDo: 'Record a ruling for each tie named under "errors".',
  },
  ruling_does_not_fit: {
    status: 422,
    title: 'The ruling does not fit the class',
    whatToDo: 'Rule on a group that is tied now, and name each of its entries once.',
  },
  class_not_posted: { status: 409, title: 'The class has no posted result', whatToDo: 'Post it first.' },
  class_already_official: {
    status: 409,
    title: 'The result is official',
    whatToDo: 'Post a correction with a reason.',
  },
  posting_out_of_date: {
    status: 409,
    title: 'Something changed since that posting',
    whatToDo: 'Look at the preview, then post again.',
  },
  correction_reason_missing: {
    status: 422,
    title: 'A correction needs a reason',
    whatToDo: 'Say what was wrong, in words that exhibitors will read.',
  },
  correction_changes_nothing: {
    status: 409,
    title: 'The result is the same as the one posted',
    whatToDo: 'A correction is posted only when something changes.',
  },
  class_cannot_be_tabulated: {
    status: 409,
    title: 'The class cannot be tabulated',
    whatToDo: 'Put right what is named under "errors".',
  },
} as const;
