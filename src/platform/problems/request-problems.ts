/** What may be wrong with any request. */
export const requestProblems = {
  invalid_request: {
    status: 400,
    title: 'The request is not in the form that is asked for',
    whatToDo: 'Put right each field named under "errors"; /docs shows the form.',
  },
  malformed_json: { status: 400, title: 'The body is not JSON', whatToDo: 'Send one JSON value in UTF-8.' },
  empty_body: {
    status: 400,
    title: 'A body is needed',
    whatToDo: 'Send a JSON object with the fields that /docs shows.',
  },
  invalid_cursor: {
    status: 400,
    title: 'The cursor is not one that was handed out here',
    whatToDo: 'Start again without "cursor", then use "nextCursor" as it was given.',
  },
  route_not_found: {
    status: 404,
    title: 'There is nothing at this address',
    whatToDo: 'Look up the address at /docs.',
  },
  not_found: {
    status: 404,
    title: 'There is no such record',
    whatToDo: 'Check the id; list the records to find the right one.',
  },
  method_not_allowed: {
    status: 405,
    title: 'This address does not take that method',
    whatToDo: 'Use one of the methods in the header "Allow".',
  },
  already_exists: {
    status: 409,
    title: 'There is one already',
    whatToDo: 'Use the record that is there, or choose another value for the field named under "errors".',
  },
  still_referred_to: {
    status: 409,
    title: 'Another record needs it, or a record that it needs is not there',
    whatToDo: 'Check the ids in the request, then try again.',
  },
  refused_by_database: {
    status: 409,
    title: 'The database refused the values',
    whatToDo: 'Check the values in the request; what was refused stands under "detail".',
  },
  idempotency_key_reused: {
    status: 409,
    title: 'The Idempotency-Key was used before with other content',
    whatToDo: 'Use a new key for a new request. Nothing of this request was stored.',
  },
  stale_version: {
    status: 412,
    title: 'Someone changed the record in the meantime',
    whatToDo: 'Read it again, look at what changed, and send the change with the new ETag in If-Match.',
  },
  body_too_large: {
    status: 413,
    title: 'The body is too large',
    whatToDo: 'Send less at once; the limit stands under "detail".',
  },
  head_too_large: {
    status: 431,
    title: 'The head of the request is too large',
    whatToDo: 'Send less in the headers; 16 KiB are read.',
  },
  request_too_slow: {
    status: 408,
    title: 'The request did not come in whole in time',
    whatToDo: 'Send it again; nothing of it was stored.',
  },
  malformed_http: {
    status: 400,
    title: 'This is not a request of HTTP/1.1',
    whatToDo: 'Send it with a program that speaks HTTP (RFC 9112).',
  },
  unsupported_media_type: {
    status: 415,
    title: 'The body is of a content type that is not read here',
    whatToDo: 'Send it with Content-Type: application/json.',
  },
  if_match_required: {
    status: 428,
    title: 'The change must say which version it is of',
    whatToDo: 'Read the record and send its ETag in If-Match.',
  },
  too_many_requests: {
    status: 429,
    title: 'Too many requests from one place',
    whatToDo: 'Wait as long as the header "Retry-After" says.',
  },
  internal_error: {
    status: 500,
    title: 'Something went wrong here',
    whatToDo: 'Try again. If it stays, tell whoever runs the service the request id.',
  },
  shutting_down: { status: 503, title: 'The service is stopping', whatToDo: 'Try again in a moment.' },
  database_unavailable: {
    status: 503,
    title: 'The database does not answer',
    whatToDo: 'Try again in a moment; nothing of this request was stored.',
  },
} as const;
