/** Accounts of the office: signing in, setting up, looking after them. */
export const accountProblems = {
  sign_in_refused: {
    status: 401,
    title: 'Name, password and code do not fit together',
    whatToDo:
      'Check all three. A code is good once: wait for the next one. Whoever has lost password or phone asks another manager for a reset.',
  },
  sign_in_slowed: {
    status: 429,
    title: 'There were several failed tries in a row',
    whatToDo: 'Wait as long as the header "Retry-After" says, then try again.',
  },
  setup_code_invalid: {
    status: 422,
    title: 'This set-up code is not good, or not any more',
    whatToDo: 'Check each letter. It is good once and for a day; ask a manager for a new one (a reset).',
  },
  setup_not_begun: {
    status: 409,
    title: 'The second factor was not handed out yet',
    whatToDo:
      'Send the set-up code to /v1/account-setups, scan the QR code, then finish with a code of the app.',
  },
  totp_code_wrong: {
    status: 422,
    title: 'The code of the authenticator app is not right',
    whatToDo:
      'Type the six digits that the app shows now. If it stays, set the clock of the phone by the network and scan again.',
  },
  password_too_common: {
    status: 422,
    title: 'The password is among those that a guesser tries early',
    whatToDo: 'Take a longer one, e.g. some words that nobody would put together.',
  },
  password_wrong: {
    status: 422,
    title: 'The present password is not right',
    whatToDo: 'Type the password that you signed in with.',
  },
  own_account: {
    status: 403,
    title: 'Nobody resets her own account',
    whatToDo: 'Ask another manager.',
  },
  account_closed: {
    status: 409,
    title: 'The account was closed for good',
    whatToDo: 'Make a new account under another sign-in name.',
  },
  last_manager: {
    status: 409,
    title: 'It is the last manager of the whole service who can sign in',
    whatToDo: 'Make another manager of the whole service first, and let her set up her account.',
  },
  manager_exists: {
    status: 409,
    title: 'There is a manager of the whole service who can sign in',
    whatToDo: 'Ask her for an account.',
  },
} as const;
