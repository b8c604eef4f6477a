/** Who may do what. */
export const accessProblems = {
  token_missing: {
    status: 401,
    title: 'A pass is needed',
    whatToDo:
      'The office signs in and sends "Authorization: Bearer <token>"; a paired phone sends "Authorization: DPoP <token>" with a proof.',
  },
  token_invalid: {
    status: 401,
    title: 'The pass is not one of this service, or it was altered',
    whatToDo: 'Sign in again; a phone asks for its next token.',
  },
  token_expired: {
    status: 401,
    title: 'The pass has ended',
    whatToDo: 'Sign in again; a phone asks for its next token.',
  },
  token_revoked: {
    status: 401,
    title: 'The session was ended, or the account closed',
    whatToDo: 'Sign in again, or ask a show manager.',
  },
  not_allowed: {
    status: 403,
    title: 'The pass does not allow this',
    whatToDo: 'Ask someone whose role allows it; the role stands under "detail".',
  },
  other_show: { status: 403, title: 'The pass is for another show', whatToDo: 'Use the pass of this show.' },
  other_seat: {
    status: 403,
    title: 'The card belongs to another seat',
    whatToDo: 'A judge or her scribe writes and reads only her own card.',
  },
} as const;
