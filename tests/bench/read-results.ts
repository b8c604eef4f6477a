/** A posted result read by many, beside a bare route that sends the same bytes. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import autocannon from 'autocannon';
import { largeCard } from '../../seed/large-show/large-show.ts';
import { openCard, signCard } from '../../src/commands/demo/judge-cards.ts';
import { postClass } from '../../src/commands/demo/post-class.ts';
import type { ScoreSheet } from '../../src/engine/sheets/types.ts';
import { type Compared, printTable, quantile } from './compare.ts';
import { type BenchService, freePort, ready, startProcess, stopProcess } from './large-show-service.ts';

const connections = 50;
const secondsEach = 2;
const turns = 5;

export async function readResults(
  bench: BenchService,
  sheet: ScoreSheet,
  numbers: readonly number[],
): Promise<void> {
  const rows: Compared[] = [];
  for (const number of numbers) {
    const result = await post(bench, sheet, number);
    const answer = await fetch(result);
    const [text, etag] = [await answer.text(), answer.headers.get('etag') ?? ''];
    const size = `${Math.round(Buffer.byteLength(text) / 1024)} KiB`;
    const folder = mkdtempSync(join(tmpdir(), 'ringledger-bench-'));
    const file = join(folder, 'result.json');
    writeFileSync(file, text);
    const port = await freePort();
    const bare = `http://127.0.0.1:${port}/bare`;
    const yardstick = startProcess('tests/bench/bare-route.ts', { PORT: String(port), BARE_FILE: file });
    await ready(yardstick, bare);
    rows.push(await compareLoad(`GET a result of ${size}`, { ours: { url: result }, bare: { url: bare } }));
    const known = { ours: { url: result, etag }, bare: { url: bare, etag: '"bare"' } };
    rows.push(await compareLoad(`GET it again: 304`, known));
    await stopProcess(yardstick);
    rmSync(folder, { recursive: true });
  }
  printTable(
    'Reading a posted result',
    `GET /v1/classes/:id/result by ${connections} connections of the loopback for ${secondsEach} s, in turns with a bare Fastify route\n` +
      'that sends the same bytes (or 304) without a look at a database; each in a process of its own. Milliseconds are\n' +
      'time per request at full load: 1000 / requests per second.',
    rows,
  );
}

/** Signs all cards of the class and posts it; returns the address of its result. */
async function post(
  { api, address, ground, classes }: BenchService,
  sheet: ScoreSheet,
  number: number,
): Promise<string> {
  const found = classes.find(({ demoClass }) => demoClass.number === number);
  if (found === undefined) throw new Error(`there is no class ${number}`);
  const { id: classId, seats, classEntries } = found.ready;
  const maneuvers = [1, 2, 3, 4, 5, 6].map((position) => ({ position, name: '', coefficient: '1' }));
  for (const [index, { seatId, pass }] of seats.entries()) {
    const cardId = await openCard(api, { classId, seatId, pass });
    const entries = [...classEntries.keys()].map(String);
    const { goes } = largeCard({ sheet, maneuvers, entries, seed: `${number}:${index}` });
    const written = new Map(Object.entries(goes).map(([backNumber, go]) => [Number(backNumber), go]));
    const card = { goes: written, ranking: undefined, liking: [...written.keys()] };
    await signCard({ api, pass, cardId, classEntries }, card);
  }
  await postClass({ api, pass: ground.officePass }, { classId, state: 'provisional' });
  return `${address}/v1/classes/${classId}/result`;
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
