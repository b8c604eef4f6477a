/** One request as a phone, as an account of the office, and as nobody, beside a bare route of the same bytes. */
import { Agent } from 'node:http';
import type { BenchService } from './bench-service.ts';
import { setUpBenchShow } from './bench-show.ts';
import { type Compared, compare, type Pair, printTable } from './compare.ts';
import { proofMaker, type ReadyRequest, send, taking } from './ready-requests.ts';
import { serveBare } from './serve-bare.ts';

const turns = 60;
const callsEach = 10;
/** Those that warm up too. */
const requests = (turns + 5) * callsEach;

export async function askAsPhone(bench: BenchService): Promise<void> {
  const show = await setUpBenchShow(bench, { entries: 12, classes: [{ entries: 12, judges: 1 }] });
  const key = show.phones.get(1)?.key;
  if (key === undefined) throw new Error('the judge has no phone');
  const url = `${bench.address}/v1/shows/${show.showId}/classes/${show.classes[0]?.id}/order-of-go`;
  const agent = new Agent({ keepAlive: true, maxSockets: 1 });
  const bare = await serveBare(await (await fetch(url)).text());
  const ask = (to: string, headers: ReadyRequest['headers'] = {}) =>
    send(agent, 200, { method: 'GET', url: to, headers });
  const asPhone = async () => {
    const prove = await proofMaker(bench.address, key);
    const proofs: ReadyRequest['headers'][] = [];
    for (let made = 0; made < requests; made += 1) proofs.push(await prove('GET', url));
    const next = taking(proofs);
    return () => ask(url, next());
  };
  const asOffice = () => ask(url, { authorization: `Bearer ${bench.session}` });
  const row = (pair: Pick<Pair, 'name' | 'yardstickName' | 'ours' | 'yardstick'>): Promise<Compared> =>
    compare({ ...pair, turns, calls: { ours: callsEach, yardstick: callsEach } });
  const rows = [
    await row({
      ...{ name: 'a phone: token and proof', ours: await asPhone() },
      ...{ yardstickName: 'an account: session', yardstick: asOffice },
    }),
    await row({
      ...{ name: 'a phone: token and proof', ours: await asPhone() },
      ...{ yardstickName: 'nobody: no pass', yardstick: () => ask(url) },
    }),
    await row({
      ...{ name: 'a phone: token and proof', ours: await asPhone() },
      ...{ yardstickName: 'bare route, same bytes', yardstick: () => ask(bare.url) },
    }),
    await row({
      ...{ name: 'an account: session', ours: asOffice },
      ...{ yardstickName: 'bare route, same bytes', yardstick: () => ask(bare.url) },
    }),
  ];
  agent.destroy();
  await bare.stop();
  printTable(
    'A request of a phone',
    "GET /v1/shows/:id/classes/:id/order-of-go of 12 entries, one request after another on one connection: the phone's\n" +
      'token (HS256) and its proof for just this request (ES256, made before) checked, the proof spent, its seats found.\n' +
      'In turns with the same route for the session of an account, for nobody, and with a bare Fastify route.',
    rows,
  );
}
