/** One request as a phone, as an account of the office, and as nobody, beside a bare route with the same answer. */
import { Agent } from 'node:http';
import type { BenchService } from './bench-service.ts';
import { besideBareRoute } from './beside-bare-route.ts';
import { type Compared, compare, type Pair, printTable } from './compare.ts';
import type { PostedShow } from './posted-show.ts';
import { proofMaker, type ReadyRequest, send, taking } from './ready-requests.ts';

const turns = 60;
const callsEach = 10;
/** Those that warm up too. */
const requests = (turns + 5) * callsEach;

export async function askAsPhone(bench: BenchService, { classId, phones }: PostedShow): Promise<void> {
  const key = phones.get(1)?.key;
  if (key === undefined) throw new Error('the judge has no phone');
  const url = `${bench.address}/v1/classes/${classId}/result`;
  const answer = await fetch(url);
  const etag = answer.headers.get('etag') ?? '';
  const phone = async () => {
    const prove = await proofMaker(bench.address, key);
    const proofs: Headers[] = [];
    for (let made = 0; made < requests; made += 1) proofs.push(await prove('GET', url));
    return taking(proofs);
  };
  const session = () => ({ authorization: `Bearer ${bench.session}` });
  const rows = await besideBareRoute(await answer.text(), (bare) =>
    compareSenders({ ours: { url, etag }, bare: { url: bare, etag: '"bare"' }, phone, session }),
  );
  printTable(
    'A request of a phone',
    'GET /v1/classes/:id/result that the sender has already (304), the quickest there is, one request after another on\n' +
      "one connection: the phone's token (HS256) and its proof for just this request (ES256, made before) checked, the\n" +
      'proof spent, its seats found. In turns with the same for the session of an account and for nobody, and with a\n' +
      'bare Fastify route that answers 304 too.',
    rows,
  );
}

type Headers = ReadyRequest['headers'];

interface Known {
  readonly url: string;
  /** So that the answer is 304. */
  readonly etag: string;
}

interface Senders {
  readonly ours: Known;
  readonly bare: Known;
  /** A store of proofs for one comparison; they end after some minutes. */
  readonly phone: () => Promise<() => Headers>;
  readonly session: () => Headers;
}

async function compareSenders({ ours, bare, phone, session }: Senders): Promise<Compared[]> {
  const agent = new Agent({ keepAlive: true, maxSockets: 1 });
  const ask = ({ url, etag }: Known, headers: Headers = {}) =>
    send(agent, 304, { method: 'GET', url, headers: { 'if-none-match': etag, ...headers } });
  const asPhone = async () => {
    const next = await phone();
    return () => ask(ours, next());
  };
  const asOffice = () => ask(ours, session());
  const row = (pair: Pick<Pair, 'name' | 'yardstickName' | 'ours' | 'yardstick'>): Promise<Compared> =>
    compare({ ...pair, turns, calls: { ours: callsEach, yardstick: callsEach } });
  const aPhone = 'a phone: token and proof';
  const office = { yardstickName: 'an account: session', yardstick: asOffice };
  const nobody = { yardstickName: 'nobody: no pass', yardstick: () => ask(ours) };
  const route = { yardstickName: 'bare route', yardstick: () => ask(bare) };
  try {
    return [
      await row({ name: aPhone, ours: await asPhone(), ...office }),
      await row({ name: aPhone, ours: await asPhone(), ...nobody }),
      await row({ name: aPhone, ours: await asPhone(), ...route }),
      await row({ name: 'an account: session', ours: asOffice, ...route }),
    ];
  } finally {
    agent.destroy();
  }
}
