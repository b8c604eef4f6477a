/** The error catalogue as a document and as a page; both are written from the catalogue itself. */
import { type ProblemKind, problemGroups } from '../problems/catalogue.ts';

type Group = (typeof problemGroups)[number];

/** `api-docs/errors.md` */
export function errorDocument(): string {
  const groups = problemGroups.map(([heading, kinds]: Group) => {
    const rows = inOrder(kinds).map(
      ([code, { status, title, whatToDo }]) => `| \`${code}\` | ${status} | ${title}. | ${whatToDo} |`,
    );
    return [
      `## ${heading}`,
      '',
      '| Code | Status | What is wrong | What to do |',
      '|---|---|---|---|',
      ...rows,
      '',
    ];
  });
  return [
    '# Errors',
    '',
    'Written from `src/platform/problems/`; `npm run openapi` writes it anew and a test keeps it fresh.',
    '',
    'Every refusal is `application/problem+json` (RFC 9457). `code` is stable; `detail` says what is wrong this',
    'time; `errors` names each field by a JSON pointer into the body (RFC 6901), or as `query/...`, `params/...`,',
    '`headers/...`; `whatToDo` is the sentence of the last column; `requestId` finds the request in the log.',
    '',
    ...groups.flat(),
  ].join('\n');
}

/** `/docs/errors`, to which the `type` of every problem leads. */
export function errorPage(): string {
  const groups = problemGroups.map(([heading, kinds]: Group) => {
    const entries = inOrder(kinds).map(
      ([code, { status, title, whatToDo }]) =>
        `<dt id="${code}"><code>${code}</code> (${status})</dt><dd>${asHtml(title)}. ${asHtml(whatToDo)}</dd>`,
    );
    return `<h2>${heading}</h2><dl>${entries.join('\n')}</dl>`;
  });
  return `<!doctype html><html lang="en"><meta charset="utf-8"><title>Errors of Ringledger</title>
<meta name="viewport" content="width=device-width"><h1>Errors</h1>${groups.join('\n')}</html>\n`;
}

const inOrder = (kinds: Readonly<Record<string, ProblemKind>>) => Object.entries(kinds);

const asHtml = (text: string) =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');
