/** `api-docs/events.md`, written from the catalogue. */
import { eventCatalogue, lineTypes } from './event-catalogue.ts';

export function eventDocument(): string {
  const rows = lineTypes.map((type) => {
    const { public: heardByAll, what, body } = eventCatalogue[type];
    const fields = Object.entries(body).map(([field, meaning]) => `\`${field}\`: ${meaning}`);
    return `| \`${type}\` | ${heardByAll ? 'public' : 'office'} | ${what} | ${fields.join('; ')} |`;
  });
  return [
    '# Events',
    '',
    'Written from `src/ledger/event-catalogue.ts`; `npm run openapi` writes it anew and a test keeps it fresh.',
    '',
    "Every change of a show's records is one line of the show's ledger, numbered 1, 2, 3 ... without a gap and",
    'committed together with the change. `GET /v1/shows/{showId}/events` tells the lines as they come, as',
    'server-sent events: `id` is the number of the line, `event` its type, `data` is',
    '`{"sequence": 12, "type": "card.signed", "at": "2026-05-02T14:00:00.000Z", "body": {...}}`. The body holds ids and',
    'numbers, never names. A reader that comes back with `Last-Event-ID` misses nothing; `?after=0` tells all from',
    'the first line. The office hears every line, everyone else the public ones.',
    '',
    '| Type | Heard by | What happened | Body |',
    '|---|---|---|---|',
    ...rows,
    '',
  ].join('\n');
}
