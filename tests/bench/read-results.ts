/** A posted result read by many, beside a bare route that sends the same bytes. */
import autocannon from 'autocannon';
import type { BenchService } from './bench-service.ts';
import { besideBareRoute } from './beside-bare-route.ts';
import { type Compared, printTable, quantile } from './compare.ts';
import type { PostedShow } from './posted-show.ts';

const connections = 50;
const secondsEach = 2;
const turns = 5;

export async function readResults({ address }: BenchService, posted: readonly PostedShow[]): Promise<void> {
  const rows: Compared[] = [];
  for (const { classId } of posted) {
    const url = `${address}/v1/classes/${classId}/result`;
    const answer = await fetch(url);
    const [text, etag] = [await answer.text(), answer.headers.get('etag') ?? ''];
    const size = `${Math.round(Buffer.byteLength(text) / 1024)} KiB`;
    await besideBareRoute(text, async (bare) => {
      rows.push(await compareLoad(`GET a result of ${size}`, { ours: { url }, bare: { url: bare } }));
      const known = { ours: { url, etag }, bare: { url: bare, etag: '"bare"' } };
      rows.push(await compareLoad(`GET it again: 304`, known));
    });
  }
  printTable(
    'Reading a posted result',
    `GET /v1/classes/:id/result by ${connections} connections of the loopback for ${secondsEach} s, in turns with a bare Fastify route\n` +
      'that sends the same bytes (or 304) without a look at a database; each in a process of its own. Milliseconds are\n' +
      'time per request at full load: 1000 / requests per second.',
    rows,
  );
}

interface Target {
  readonly url: string;
  readonly etag?: string;
}

async function compareLoad(name: string, { ours, bare }: { ours: Target; bare: Target }): Promise<Compared> {
  const measured: { ours: number; yardstick: number }[] = [];
  for (let turn = -1; turn < turns; turn += 1) {
    const one = { ours: await millisecondsEach(ours), yardstick: await millisecondsEach(bare) };
    if (turn >= 0) measured.push(one);
  }
  const ratios = measured.map((one) => one.ours / one.yardstick);
  return {
    name,
    yardstickName: 'bare route, same bytes',
    turns,
    oursMs: quantile(
      measured.map((one) => one.ours),
      0.5,
    ),
    yardstickMs: quantile(
      measured.map((one) => one.yardstick),
      0.5,
    ),
    ratio: quantile(ratios, 0.5),
    quartiles: [quantile(ratios, 0.25), quantile(ratios, 0.75)],
  };
}

async function millisecondsEach({ url, etag }: Target): Promise<number> {
  const headers = etag === undefined ? {} : { 'if-none-match': etag };
  const result = await autocannon({ url, connections, duration: secondsEach, headers });
  const expected = etag === undefined ? result['2xx'] : result['3xx'];
  if (result.errors > 0 || expected < result.requests.total - connections) {
    throw new Error(`${url} answered otherwise than it should under load`);
  }
  return (1_000 * result.duration) / result.requests.total;
}
