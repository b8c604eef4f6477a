/** A ledger line chained and sealed, beside the same line written as it is. */
import pg from 'pg';
import { sealLine } from '../../src/ledger/chain.ts';
import { appendLine } from '../../src/ledger/index.ts';
import { randomIds } from '../../src/platform/app-parts.ts';
import { hashOfText } from '../../src/platform/canonical-json.ts';
import { sqlOver } from '../../src/platform/sql.ts';
import type { BenchService } from './bench-service.ts';
import { compare, printTable } from './compare.ts';
import { inOneTransaction, insertPlainLine } from './plain-inserts.ts';

const turns = 100;
const calls = { ours: 5, yardstick: 5 };
const yardstickName = 'its INSERT by plain pg';

export async function sealLines({ db, keys }: BenchService): Promise<void> {
  const client = new pg.Client({ connectionString: db.url });
  await client.connect();
  const [ours, plain] = [randomIds.next(), randomIds.next()];
  const type = 'card.signed';
  const yardstick = () => insertPlainLine(client, { ledgerId: plain, type, body: bodyOfLine });
  const append = () =>
    inOneTransaction(client, () => {
      const line = { showId: ours, type, body: bodyOfLine, at: new Date() } as const;
      return appendLine({ keys }, { sql: sqlOver(client) }, line);
    });
  const line = {
    ...{ ledgerId: ours, sequence: 2, type, at: new Date().toISOString(), body: bodyOfLine },
    ...{ actor: { as: 'judge', phone: ours, person: plain } as const, previousHash: hashOfText('') },
  };
  try {
    const rows = [
      await compare({ name: 'append a sealed line', yardstickName, ours: append, yardstick, turns, calls }),
      await compare({
        ...{ name: 'the same without the database', yardstickName, ours: () => sealLine(keys, line) },
        ...{ yardstick, turns, calls },
      }),
    ];
    printTable(
      'Sealing a ledger line',
      'One transaction that locks the head, chains the line (canonical form, SHA-256), seals it (ES256) and writes line\n' +
        'and head, in turns with one that locks the head and writes a line as long; both on the same plain connection,\n' +
        'prepared. The second row is the canonical form, the hash and the seal alone.',
      rows,
    );
  } finally {
    await client.end();
  }
}

const id = randomIds.next();
/** As long as that of a signed card. */
const bodyOfLine = {
  ...{ classId: id, seatId: id, cardId: id, revisionId: id, revision: 1, phoneId: id },
  jwsHash: hashOfText(id),
};
