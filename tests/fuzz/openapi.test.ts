import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openApiOf } from '../../src/platform/docs/openapi.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';
import { faultsOfDatabase } from './consistent.ts';
import { checkLedgers } from './ledgers.ts';
import { type OpenApi, operationsOf } from './operations.ts';
import { requestOf } from './requests.ts';
import { FuzzRun } from './run.ts';

/** The same requests every time; another seed by FUZZ_SEED, more or fewer of them by FUZZ_REQUESTS. */
const seed = Number(process.env.FUZZ_SEED ?? 20_261_125);
const wanted = Number(process.env.FUZZ_REQUESTS ?? 20_000);
/** After so many the show is set up anew: by then sessions were ended, phones taken back, classes cancelled. */
const perShow = 2_000;
const longestRunMilliseconds = 900_000;

const say = (line: string) => console.error(`[fuzz] ${line}`);

describe('20,000 requests over all routes, made from the API description', () => {
  let service: TestApp;
  beforeAll(async () => {
    service = await buildTestApp();
  });
  afterAll(() => service.close());

  test(
    'are answered or refused in good form, and leave the records as the service could have made them',
    async () => {
      const document = openApiOf(service.app) as unknown as OpenApi;
      const operations = operationsOf(document);
      const schemas = document.components?.schemas ?? {};
      const any = fc.oneof(...operations.map((operation) => requestOf(operation, schemas)));
      const begun = performance.now();
      say(`seed ${seed}: ${wanted} requests to ${operations.length} operations`);
      const run = new FuzzRun(service);
      for (let sent = 0; sent < wanted; sent += perShow) {
        await run.newShow();
        await run.send(fc.sample(any, { seed: seed + sent, numRuns: Math.min(perShow, wanted - sent) }));
        const seconds = Math.round((performance.now() - begun) / 1_000);
        say(`${run.sent} sent in ${seconds} s: ${run.summary()}`);
      }
      const refused = operations.map(({ name }) => name).filter((name) => !run.taken.has(name));
      say(
        `${run.taken.size} operations took at least one; of these every request was refused: ${refused.join(', ')}`,
      );
      expect(run.faults.slice(0, 10), `seed ${seed}, the first of ${run.faults.length}`).toEqual([]);
      expect(run.sent).toBe(wanted);
      // A run in which all is refused would prove little.
      if (wanted >= 20_000) expect(run.taken.size).toBeGreaterThan(operations.length * 0.7);
      expect(run.leastReached(operations.length)).toBeGreaterThan(wanted / operations.length / 4);
    },
    longestRunMilliseconds,
  );

  test('the database is consistent, and every ledger verifies from its first line to its head', async () => {
    expect(await faultsOfDatabase(service.parts.db.pool)).toEqual([]);
    const { faults, ledgers, lines } = await checkLedgers(service.parts);
    say(`${lines} lines in ${ledgers} ledgers, each sealed and chained`);
    expect(faults).toEqual([]);
    expect(ledgers).toBeGreaterThan(2);
    expect(lines).toBeGreaterThan(wanted / 20);
  });
});
