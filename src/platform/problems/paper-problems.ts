/** Paper cards that the office enters, and photos of them. */
export const paperProblems = {
  paper_card_closed: {
    status: 409,
    title: 'The paper card is not open any more',
    whatToDo:
      'It was accepted or withdrawn. Take up a new one if the paper says something else than the card.',
  },
  paper_card_overtaken: {
    status: 409,
    title: 'The card was signed or amended after the paper was taken up',
    whatToDo:
      'Compare the paper with the card as it is signed now. Withdraw this paper card; where they differ, take it up again as an amendment.',
  },
  paper_card_has_both: {
    status: 409,
    title: 'Two others have entered this paper card',
    whatToDo: 'Each corrects her own entry; a third one is not taken.',
  },
  photo_of_another_kind: {
    status: 415,
    title: 'The file is not a picture of a kind that is read here',
    whatToDo: 'Send a JPEG, PNG or WebP picture, and say which in Content-Type.',
  },
  photo_unreadable: {
    status: 422,
    title: 'The picture is broken or cut off',
    whatToDo: 'Take or scan it again, then send the new file. Nothing of this one was stored.',
  },
  photo_too_many_pixels: {
    status: 422,
    title: 'The picture has more than 40 million pixels',
    whatToDo: 'Send it smaller: 2400 pixels on the long side are kept.',
  },
  photo_moves: {
    status: 422,
    title: 'The file holds several pictures',
    whatToDo: 'Send one still picture of the paper.',
  },
} as const;
