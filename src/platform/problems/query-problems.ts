/** What families ask about a result. */
export const queryProblems = {
  back_number_not_in_class: {
    status: 422,
    title: 'No entry of the class wears that back number',
    whatToDo: 'Look at the number again, or leave it out and say in words who it is about.',
  },
  queries_waiting: {
    status: 409,
    title: 'Many queries about this are waiting for an answer already',
    whatToDo: 'Go to the show office, or ask again once it has answered some. Nothing was sent.',
  },
  follow_code_unknown: {
    status: 404,
    title: 'No query is followed by that code',
    whatToDo: 'Open the link that was shown when the query was sent, or ask at the show office.',
  },
  query_closed: {
    status: 409,
    title: 'The query was answered or withdrawn already',
    whatToDo: 'Read it again; what is left to say is a new query.',
  },
} as const;
