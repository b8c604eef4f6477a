import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openApiOf } from '../../src/platform/docs/openapi.ts';
import { type JsonSchema, type OpenApi, type Operation, operationsOf } from '../fuzz/operations.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';
import type { Sender } from './matrix/ask.ts';
import { examples } from './matrix/examples.ts';
import { expected } from './matrix/expected.ts';
import { type PreparedShow, prepareShow } from './matrix/prepared-show.ts';
import { sendersAt } from './matrix/senders.ts';
import { isLetIn } from './matrix/verdict.ts';

/** A browser adds members of its own to a key that it exports (RFC 7517, 4); what is kept is chosen, not copied. */
const openOnPurpose = ['POST /v1/pairings/publicKey'];
/** Checked as a whole by the form of archives, which says where the first fault is. */
const archives = 'POST /v1/archives';

describe('what a body may hold', () => {
  let service: TestApp;
  let here: PreparedShow;
  let senders: readonly Sender[];
  let document: OpenApi;
  let writing: readonly Operation[];
  beforeAll(async () => {
    service = await buildTestApp();
    here = await prepareShow(service);
    senders = await sendersAt(service, { here, there: await prepareShow(service) });
    document = openApiOf(service.app) as unknown as OpenApi;
    writing = operationsOf(document).filter(({ body }) => body !== undefined);
  });
  afterAll(() => service.close());

  const routeOf = ({ method, path }: Operation) => `${method} ${path.replace(/\{(\w+)\}/g, ':$1')}`;

  /** Sends the text as the body, with a pass that is let in. */
  async function send(operation: Operation, text: string) {
    const route = routeOf(operation);
    const row = expected[route];
    const sender = senders.find(
      ({ kind }) =>
        row !== undefined &&
        (kind.shows === 'all' || kind.holdsSeat) &&
        isLetIn(row, kind, { signed: false }),
    );
    const address = operation.path.replace(/\{(\w+)\}/g, (_, name: string) => here.ids.unsigned[name] ?? '');
    const answer = await service.app.inject({
      method: operation.method as 'POST',
      url: address,
      headers: {
        'content-type': 'application/json',
        ...examples[route]?.(here.ids.unsigned).headers,
        ...(await sender?.headers(operation.method, address)),
      },
      payload: text,
    });
    return { status: answer.statusCode, body: JSON.parse(answer.payload === '' ? '{}' : answer.payload) };
  }

  // OWASP ASVS 5.0, 15.3.3; OWASP API Security Top 10, API3:2023 (mass assignment).
  test('a member that is not asked for is refused by its name, at every route that takes a body', async () => {
    expect(writing.length).toBeGreaterThan(40);
    const wrong: string[] = [];
    for (const operation of writing.filter(({ name }) => name !== archives)) {
      const example = examples[routeOf(operation)]?.(here.ids.unsigned).body;
      const { status, body } = await send(
        operation,
        JSON.stringify({ ...(example as object), smuggled: true }),
      );
      const fields = (body.errors ?? []).map(({ field }: { field: string }) => field);
      if (status !== 400 || !fields.includes('/smuggled')) {
        wrong.push(`${routeOf(operation)} -> ${status} ${body.code} ${fields}`);
      }
    }
    expect(wrong).toEqual([]);
  });

  test('so is one that is deep inside: no object of any body is open', () => {
    const schemas = document.components?.schemas ?? {};
    const open = new Set<string>();
    const seen = new Set<string>();
    const look = (schema: JsonSchema, where: string): void => {
      const name = schema.$ref?.split('/').at(-1);
      if (name !== undefined) {
        if (!seen.has(name)) look(schemas[seen.add(name) && name] ?? {}, name);
        return;
      }
      if (schema.properties !== undefined && schema.additionalProperties !== false) open.add(where);
      for (const [member, inside] of Object.entries(schema.properties ?? {}))
        look(inside, `${where}/${member}`);
      for (const one of [...(schema.anyOf ?? []), ...(schema.oneOf ?? []), ...(schema.allOf ?? [])])
        look(one, where);
      for (const one of [schema.items, schema.additionalProperties]) {
        if (typeof one === 'object') look(one, `${where}/*`);
      }
    };
    for (const { name, body } of writing) if (body !== undefined) look(body, name);
    expect([...open].filter((where) => ![...openOnPurpose, archives].includes(where))).toEqual([]);
  });

  test('an archive with a member that no archive has is not brought in', async () => {
    const manager = senders.find(({ name }) => name === 'the manager of the whole service');
    const address = `/v1/shows/${here.ids.posted.showId}/archive`;
    const taken = await service.app.inject({
      url: `${address}?names=full`,
      headers: { ...(await manager?.headers('GET', address)) },
    });
    const operation = writing.find(({ name }) => name === archives);
    if (operation === undefined) throw new Error('there is no such route');
    const archive = JSON.parse(taken.payload) as object;
    const refused = await send(operation, JSON.stringify({ ...archive, smuggled: true }));
    expect(refused.status).toBe(422);
    expect(JSON.stringify(refused.body)).toContain('smuggled');
  });

  // OWASP, "Prototype Pollution Prevention"; ASVS 5.0, 15.3.6.
  test.each([
    '{"__proto__":{"duty":"manager"}}',
    '{"name":"x","__proto__":null}',
    '{"constructor":{"prototype":{"duty":"manager"}}}',
    '{"goes":{"__proto__":{"measure":"1"}}}',
    '{"a":{"b":{"\\u005f_proto__":{"duty":"manager"}}}}',
  ])('a prototype in disguise is refused at every route: %s', async (text) => {
    for (const operation of writing) {
      const { status } = await send(operation, text);
      expect(status, routeOf(operation)).toBe(400);
    }
    expect(Object.keys(Object.prototype)).toEqual([]);
    expect('duty' in {}).toBe(false);
  });

  // RFC 8259, 6: a number may be beyond what the reader can hold; RFC 8785, 3.2.2.3: such a one has no canonical form.
  test('a number that is too large is refused, also where the body is only fingerprinted', async () => {
    const manager = senders.find(({ name }) => name === 'the manager of the whole service');
    const { showId, classId } = here.ids.posted;
    const address = `/v1/shows/${showId}/classes/${classId}/calls`;
    const headers = { 'content-type': 'application/json', 'idempotency-key': 'too-large' };
    for (const payload of ['1e400', '{"a":-1e999}']) {
      const answer = await service.app.inject({
        ...{ method: 'POST', url: address, payload },
        headers: { ...headers, ...(await manager?.headers('POST', address)) },
      });
      expect(answer.statusCode).toBe(400);
      expect(JSON.parse(answer.payload).code).toBe('invalid_request');
    }
  });

  // ASVS 5.0, 15.3.7: a parameter that is given twice is not one of them, chosen by chance.
  test('a parameter that stands twice in the query, or is none, is refused', async () => {
    const queries = ['limit=5&limit=6', 'limit[]=5', '__proto__=x', 'limit=5&constructor=x', 'nothing=1'];
    for (const query of queries) {
      const answer = await service.app.inject({ url: `/v1/shows?${query}` });
      expect(answer.statusCode, query).toBe(400);
      expect(JSON.parse(answer.payload).code).toBe('invalid_request');
    }
  });
});
