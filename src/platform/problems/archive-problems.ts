/** Archives of shows. */
export const archiveProblems = {
  archive_form_unknown: {
    status: 422,
    title: 'This is not an archive of a show',
    whatToDo: 'Send the archive as it was exported; its form stands in api-docs/archive.schema.json.',
  },
  archive_altered: {
    status: 422,
    title: 'The archive does not hold when it is checked',
    whatToDo:
      'Nothing was stored. Get the archive again from where it was exported; "errors" names the first fault.',
  },
  archive_without_names: {
    status: 422,
    title: 'The archive has no names',
    whatToDo: 'Such an archive is for checking; to import a show export it with names=full.',
  },
  archive_of_other_history: {
    status: 409,
    title: 'The show is here already, with another history',
    whatToDo: 'Compare the heads of both ledgers; one show cannot go on in two places.',
  },
  archive_conflicts: {
    status: 409,
    title: 'Something in the archive is here already and says something else',
    whatToDo: 'Nothing was stored. Look at what is named under "errors".',
  },
} as const;
