/** A judge's card. */
export const cardProblems = {
  card_incomplete: {
    status: 422,
    title: 'The card is not complete',
    whatToDo: 'Write what is named under "errors", then sign again. What was written so far is kept.',
  },
  card_illegal: {
    status: 422,
    title: 'The score sheet does not allow something on the card',
    whatToDo: 'Put right what is named under "errors". What was written before is kept.',
  },
  card_already_signed: {
    status: 409,
    title: 'The card is signed',
    whatToDo: 'A signed card is never changed: send an amendment with a reason.',
  },
  card_not_signed: {
    status: 409,
    title: 'The card is not signed yet',
    whatToDo: 'Change the draft and sign it; an amendment is for a signed card.',
  },
  card_not_started: {
    status: 404,
    title: 'Nothing was written on that card yet',
    whatToDo: 'Save a go first.',
  },
  card_hidden: {
    status: 403,
    title: "Another judge's card is not shown while the class is open",
    whatToDo: 'Wait until the cards are published.',
  },
  amendment_reason_missing: {
    status: 422,
    title: 'An amendment needs a reason',
    whatToDo: 'Say why the card changes, in words that others will read.',
  },
  amendment_changes_nothing: {
    status: 422,
    title: 'The amendment is the same as the card',
    whatToDo: 'Send it only when something changes.',
  },
  amendment_out_of_turn: {
    status: 409,
    title: 'The card was amended in the meantime',
    whatToDo: 'Read the card again and amend its last revision.',
  },
  go_not_in_class: {
    status: 422,
    title: 'That entry does not go in this class',
    whatToDo: 'Use a class entry of this class.',
  },
} as const;
