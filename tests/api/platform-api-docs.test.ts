import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { apiDocuments } from '../../src/commands/api-docs.ts';
import { problemCatalogue } from '../../src/platform/problems/index.ts';

const committed = (name: string) => readFileSync(new URL(`../../api-docs/${name}`, import.meta.url), 'utf8');

interface Operation {
  readonly summary?: string;
  readonly responses?: Readonly<Record<string, { readonly content?: Readonly<Record<string, unknown>> }>>;
}

describe('the documents of the API', async () => {
  const documents = await apiDocuments();

  test.each(Object.keys(documents))('%s is fresh; if not: npm run openapi', (name) => {
    expect(committed(name) === documents[name], `api-docs/${name} is stale: run npm run openapi`).toBe(true);
  });

  test('they are the same every time', async () => {
    expect(await apiDocuments()).toEqual(documents);
  });

  // OpenAPI 3.1.0, 4.8.1: openapi, info and paths; RFC 9457, 3: problems have their own media type.
  test('every route says what it is for, and every refusal is a problem', () => {
    const openApi = JSON.parse(documents['openapi.json'] ?? '') as {
      openapi: string;
      paths: Record<string, Record<string, Operation>>;
    };
    expect(openApi.openapi).toBe('3.1.0');
    const operations = Object.entries(openApi.paths).flatMap(([path, item]) =>
      Object.entries(item).map(([method, operation]) => ({ name: `${method} ${path}`, operation })),
    );
    expect(operations.length).toBeGreaterThan(20);
    expect(
      operations.filter(({ operation }) => operation.summary === undefined).map(({ name }) => name),
    ).toEqual([]);
    const wrong = operations.filter(({ operation }) =>
      Object.entries(operation.responses ?? {}).some(
        ([status, { content }]) =>
          Number(status) >= 400 && content?.['application/problem+json'] === undefined,
      ),
    );
    expect(wrong.map(({ name }) => name)).toEqual([]);
  });

  test('every error has a code in small letters, a 4xx or 5xx status and a sentence of what to do', () => {
    for (const [code, { status, whatToDo }] of Object.entries(problemCatalogue)) {
      expect(code).toMatch(/^[a-z]+(_[a-z]+)*$/);
      expect(status >= 400 && status < 600, code).toBe(true);
      expect(whatToDo, code).toMatch(/^[A-Z].*\.$/);
    }
  });
});
