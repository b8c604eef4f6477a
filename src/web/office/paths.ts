/** Addresses of the office, below /office, as links use them. */
const ofShow = (showId: string) => `/shows/${showId}`;
const ofClass = (showId: string, classId: string) => `${ofShow(showId)}/classes/${classId}`;

export const paths = {
  shows: '/',
  setUp: '/set-up',
  account: '/account',
  accounts: '/accounts',
  day: ofShow,
  class: ofClass,
  panel: (showId: string, classId: string) => `${ofClass(showId, classId)}/panel`,
  closeness: (showId: string, classId: string) => `${ofClass(showId, classId)}/closeness`,
  classEntries: (showId: string, classId: string) => `${ofClass(showId, classId)}/entries`,
  classPaper: (showId: string, classId: string) => `${ofClass(showId, classId)}/paper`,
  entries: (showId: string) => `${ofShow(showId)}/entries`,
  newEntry: (showId: string) => `${ofShow(showId)}/entries/new`,
  entry: (showId: string, entryId: string) => `${ofShow(showId)}/entries/${entryId}`,
  phones: (showId: string) => `${ofShow(showId)}/phones`,
  queries: (showId: string) => `${ofShow(showId)}/queries`,
  paper: (showId: string, paperCardId: string) => `${ofShow(showId)}/paper/${paperCardId}`,
  ledger: (showId: string) => `${ofShow(showId)}/ledger`,
} as const;
