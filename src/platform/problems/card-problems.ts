/** A judge's card. */
export const cardProblems = {
  go_not_on_sheet: {
    status: 422,
    title: 'The score sheet does not allow what was written',
    whatToDo: 'Put right each field named under "errors". What was saved before is kept.',
  },
  entry_not_going: {
    status: 409,
    title: 'That entry does not go in this class',
    whatToDo: 'It was scratched, moved, excused or did not show: leave it off the card, or ask the office.',
  },
  go_not_in_class: {
    status: 422,
    title: 'That entry is not in this class',
    whatToDo: 'Use a class entry of this class.',
  },
  draft_changed_meanwhile: {
    status: 412,
    title: 'Someone else saved this in the meantime',
    whatToDo:
      'Look at both: "current" is what is kept, "sent" is yours. Send what is right with the new ETag.',
  },
  card_incomplete: {
    status: 422,
    title: 'The card is not complete',
    whatToDo: 'Write what is named under "errors", then sign again. What was written so far is kept.',
  },
  card_illegal: {
    status: 422,
    title: 'The card as a whole does not stand',
    whatToDo: 'Put right what is named under "errors", then sign again. What was written before is kept.',
  },
  card_has_open_ties: {
    status: 422,
    title: 'The card has ties that are for its judge to break',
    whatToDo: 'This class merges the places on the cards: order the tied entries, then sign again.',
  },
  card_differs_from_draft: {
    status: 409,
    title: 'What was signed is not what the draft says',
    whatToDo: 'Look at both under "differences", save what is right as the draft, and sign that.',
  },
  signature_invalid: {
    status: 422,
    title: "It is not signed by this judge's phone",
    whatToDo: 'Sign the card with the key of the phone that was paired, and send it as the phone made it.',
  },
  signature_of_other_card: {
    status: 422,
    title: 'What was signed is another card',
    whatToDo: 'Read the card again, and sign with the ids, sheet and revision that it shows.',
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
  card_hidden: {
    status: 403,
    title: "A card is its judge's alone until she has signed it",
    whatToDo: "Wait until it is signed; the class's cards show how far it is.",
  },
  reason_missing: {
    status: 422,
    title: 'An amendment needs a reason',
    whatToDo: 'Say why the card changes, in words that others will read.',
  },
  amendment_changes_nothing: {
    status: 422,
    title: 'The amendment is the same as the card',
    whatToDo: 'Send it only when something changes.',
  },
  stale_revision: {
    status: 409,
    title: 'The card was amended in the meantime',
    whatToDo: 'Read the last revision of the card and amend that one.',
  },
} as const;
