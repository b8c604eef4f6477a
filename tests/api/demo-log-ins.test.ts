import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { apiAt } from '../../src/commands/demo/api.ts';
import { readDemoShow } from '../../src/commands/demo/demo-files.ts';
import { KeptFiles } from '../../src/commands/demo/kept-files.ts';
import { managerOf } from '../../src/commands/demo/office-people.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';

let service: TestApp;
let folder: string;
beforeAll(async () => {
  service = await buildTestApp();
  folder = mkdtempSync(join(tmpdir(), 'ringledger-demo-'));
});
afterAll(async () => {
  await service.close();
  rmSync(folder, { recursive: true });
});

test('a log-in that was kept for another database is not taken for one of this', async () => {
  const files = new KeptFiles(folder);
  const people = readDemoShow().office;
  const elsewhere = { accountId: service.parts.ids.next(), password: 'x', totpSecret: 'x', session: 'x' };
  const accounts = Object.fromEntries(people.map((one) => [one.signIn, { ...one, ...elsewhere }]));
  files.keepLogIns({ address: 'http://127.0.0.1:1', accounts });
  const api = apiAt(service.app.listeningOrigin);
  const as = await managerOf({ api, files, people, parts: service.parts });
  const { body } = await api.ask<{ items: { id: string }[] }>({ method: 'GET', path: '/accounts', as });
  expect(body.items).toHaveLength(1);
  expect(files.logIns()?.accounts.manager?.accountId).toBe(body.items[0]?.id);
  // A second start finds it in place.
  await managerOf({ api, files, people, parts: service.parts });
  expect(await service.parts.db.prisma.account.count()).toBe(1);
});
