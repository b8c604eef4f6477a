/** A card that is signed, from the judge's request to the answer, beside the same INSERTs by plain `pg`. */
import { Agent, request } from 'node:http';
import pg from 'pg';
import { largeCard } from '../../seed/large-show/large-show.ts';
import { addRevision } from '../../src/cards/card-statements.ts';
import { openCard } from '../../src/commands/demo/judge-cards.ts';
import type { ReadyClass } from '../../src/commands/demo/set-up-class.ts';
import type { ScoreSheet } from '../../src/engine/sheets/types.ts';
import { appendLine } from '../../src/ledger/index.ts';
import { randomIds } from '../../src/platform/app-parts.ts';
import { canonicalText, hashOfText } from '../../src/platform/canonical-json.ts';
import { sqlOver } from '../../src/platform/sql.ts';
import { type Compared, compare, printTable } from './compare.ts';
import type { BenchService } from './large-show-service.ts';

const maneuvers = [1, 2, 3, 4, 5, 6].map((position) => ({ position, name: '', coefficient: '1' }));

export async function signCards(
  bench: BenchService,
  sheet: ScoreSheet,
  classNumbers: readonly number[][],
): Promise<void> {
  const plain = new pg.Client({ connectionString: bench.db.url });
  await plain.connect();
  const rows: Compared[] = [];
  try {
    for (const numbers of classNumbers) {
      const classes = bench.classes.filter(({ demoClass }) => numbers.includes(demoClass.number));
      const goes = classes[0]?.demoClass.field.length ?? 0;
      const cards = [];
      for (const { ready } of classes) cards.push(...(await openCards(bench, ready, sheet)));
      rows.push(await compareSigning(bench, { cards, plain, name: `sign a card of ${goes} goes` }));
    }
  } finally {
    await plain.end();
  }
  printTable(
    'Signing a card',
    'POST /v1/cards/:id/signatures with the whole card and an Idempotency-Key, over HTTP on one connection of the\n' +
      'loopback, one after another: pass checked, every mark checked, hashed, kept, told. In turns with one transaction\n' +
      'of the same two INSERTs (revision, ledger line with NOTIFY), prepared, on one plain connection.',
    rows,
  );
}

interface CardToSign {
  readonly cardId: string;
  readonly classId: string;
  readonly seatId: string;
  readonly pass: string;
  readonly content: ReturnType<typeof largeCard>;
}

async function openCards({ api }: BenchService, ready: ReadyClass, sheet: ScoreSheet): Promise<CardToSign[]> {
  const cards: CardToSign[] = [];
  const entries = [...ready.classEntries.values()];
  for (const { seatId, pass } of ready.seats) {
    const cardId = await openCard(api, { classId: ready.id, seatId, pass });
    const content = largeCard({ sheet, maneuvers, entries, seed: String(cards.length) });
    cards.push({ cardId, classId: ready.id, seatId, pass, content });
  }
  return cards;
}

interface Signing {
  readonly name: string;
  readonly cards: CardToSign[];
  readonly plain: pg.Client;
}

function compareSigning(bench: BenchService, { name, cards, plain }: Signing): Promise<Compared> {
  const agent = new Agent({ keepAlive: true, maxSockets: 1 });
  const next = () => {
    const card = cards.pop();
    if (card === undefined) throw new Error('there is no card left to sign');
    return card;
  };
  return compare({
    name,
    yardstickName: 'its INSERTs by plain pg',
    turns: Math.floor(cards.length / 2) - 5,
    ours: () => sign(bench.address, agent, next()),
    yardstick: () => insert(plain, bench.ground.showId, next()),
  });
}

function sign(address: string, agent: Agent, { cardId, pass, content }: CardToSign): Promise<void> {
  const body = JSON.stringify({ signedAt: new Date().toISOString(), content });
  const headers = {
    authorization: `Bearer ${pass}`,
    'content-type': 'application/json',
    'content-length': Buffer.byteLength(body),
    'idempotency-key': `sign-${cardId}`,
  };
  return new Promise((done, failed) => {
    const asked = request(
      `${address}/v1/cards/${cardId}/signatures`,
      { method: 'POST', agent, headers },
      (answer) => {
        answer.resume();
        answer.once('end', () =>
          answer.statusCode === 201 ? done() : failed(new Error(`${answer.statusCode}`)),
        );
      },
    );
    asked.once('error', failed);
    asked.end(body);
  });
}

async function insert(plain: pg.Client, showId: string, card: CardToSign): Promise<void> {
  const { cardId, classId, seatId, content } = card;
  const sql = sqlOver(plain);
  const at = new Date();
  const text = canonicalText(content);
  const revisionId = randomIds.next();
  await plain.query('BEGIN');
  await sql.rows(addRevision, [revisionId, cardId, 1, text, hashOfText(text), null, seatId, at, at, null]);
  await appendLine(
    { sql },
    { showId, type: 'card.signed', body: { classId, seatId, cardId, revisionId }, at },
  );
  await plain.query('COMMIT');
}
