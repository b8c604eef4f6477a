/** A card that is signed, from the judge's request to the answer, beside the same INSERTs by plain `pg`. */
import { Agent } from 'node:http';
import pg from 'pg';
import { largeCard } from '../../seed/large-show/large-show.ts';
import type { ReadyClass } from '../../src/commands/demo/set-up-class.ts';
import type { CardContent } from '../../src/engine/sheets/card-types.ts';
import type { ScoreSheet } from '../../src/engine/sheets/types.ts';
import type { SignedCard } from '../../src/evidence/index.ts';
import { signCard } from '../../src/phone/index.ts';
import { randomIds } from '../../src/platform/app-parts.ts';
import { fingerprinted } from '../../src/platform/canonical-json.ts';
import type { BenchService } from './bench-service.ts';
import { type BenchShow, type OpenedCard, openCards, setUpBenchShow } from './bench-show.ts';
import { type Compared, compare, printTable } from './compare.ts';
import { insertPlainRevision, type PlainLine, type PlainRevision } from './plain-inserts.ts';
import { proofMaker, type ReadyRequest, send, taking } from './ready-requests.ts';

/** Half of the cards of a group are signed by us, half by the yardstick. */
const groups = [
  { classes: 6, entries: 12, judges: 15 },
  { classes: 3, entries: 60, judges: 15 },
] as const;

const maneuvers = [1, 2, 3, 4, 5, 6].map((position) => ({ position, name: '', coefficient: '1' }));

export async function signCards(bench: BenchService, sheet: ScoreSheet): Promise<void> {
  const plain = new pg.Client({ connectionString: bench.db.url });
  await plain.connect();
  const rows: Compared[] = [];
  try {
    for (const { classes, ...size } of groups) {
      const all = Array.from({ length: classes }, () => size);
      const show = await setUpBenchShow(bench, { entries: size.entries, classes: all });
      const cards: SignableCard[] = [];
      for (const ready of show.classes)
        cards.push(...(await signable(bench, { show, ready, sheet, first: cards.length })));
      rows.push(await compareSigning({ cards, plain, name: `sign a card of ${size.entries} goes` }));
    }
  } finally {
    await plain.end();
  }
  printTable(
    'Signing a card',
    'POST /v1/cards/:id/signatures with the whole card and an Idempotency-Key, over HTTP on one connection of the\n' +
      'loopback, one after another: token, proof and signature checked, every mark checked, kept, its line sealed, told.\n' +
      "The phone's part (signature, proof) is done before. In turns with one transaction of the same rows (revision,\n" +
      'ledger line with NOTIFY, head), prepared, on one plain connection, with nothing signed, hashed or checked.',
    rows,
  );
}

interface SignableCard {
  readonly request: ReadyRequest;
  readonly revision: PlainRevision;
  readonly line: PlainLine;
}

interface ClassToSign {
  readonly show: BenchShow;
  readonly ready: ReadyClass;
  readonly sheet: ScoreSheet;
  /** How many cards there are before: each has other marks. */
  readonly first: number;
}

/** No card of a yardstick may stand in the ledger of the show, which would not hold any more. */
const nobodysLedger = randomIds.next();

async function signable(bench: BenchService, given: ClassToSign): Promise<SignableCard[]> {
  const { show, ready, sheet, first } = given;
  const entries = [...ready.classEntries.values()];
  const opened = await openCards(bench, show, ready);
  return Promise.all(
    opened.map((card, index) => {
      const content = largeCard({ sheet, maneuvers, entries, seed: String(first + index) });
      return signableCard(bench, card, content);
    }),
  );
}

type CardSeen = Pick<SignedCard, 'showId' | 'classId' | 'seatId' | 'sheet'>;

async function signableCard(
  { address, api }: BenchService,
  { cardId, phone }: OpenedCard,
  content: CardContent,
): Promise<SignableCard> {
  const as = phone.sends;
  const { body: seen } = await api.ask<CardSeen>({ method: 'GET', path: `/cards/${cardId}`, as });
  const { body: own } = await api.ask<{ id: string }>({ method: 'GET', path: '/phones/current', as });
  const { showId, classId, seatId, sheet } = seen;
  const { code, version, hash } = sheet;
  const jws = await signCard(phone.key, {
    ...{ form: 'ringledger signed card 1', showId, classId, seatId, cardId, sheet: { code, version, hash } },
    ...{ revision: 1, previousHash: null, reason: null, signedAt: new Date().toISOString(), content },
  });
  const url = `${address}/v1/cards/${cardId}/signatures`;
  const proven = await (await proofMaker(address, phone.key))('POST', url);
  const headers = { ...proven, 'idempotency-key': `sign-${cardId}` };
  const { text, hash: contentHash } = fingerprinted(content);
  const line = { classId, seatId, cardId, revisionId: cardId, revision: 1, phoneId: own.id, jwsHash: hash };
  return {
    request: { method: 'POST', url, headers, body: JSON.stringify({ jws }) },
    revision: { cardId, seatId, phoneId: own.id, text, contentHash, jws },
    line: { ledgerId: nobodysLedger, type: 'card.signed', body: line },
  };
}

interface Signing {
  readonly name: string;
  readonly cards: SignableCard[];
  readonly plain: pg.Client;
}

async function compareSigning({ name, cards, plain }: Signing): Promise<Compared> {
  const agent = new Agent({ keepAlive: true, maxSockets: 1 });
  const next = taking(cards);
  try {
    return await compare({
      name,
      yardstickName: 'its INSERTs by plain pg',
      turns: Math.floor(cards.length / 2) - 5,
      ours: () => send(agent, 201, next().request),
      yardstick: () => insertPlainRevision(plain, next()),
    });
  } finally {
    agent.destroy();
  }
}
