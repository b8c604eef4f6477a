/** Somebody with the whole database in hand: its owner, whom no trigger and no foreign key holds back. */
import pg from 'pg';

export interface DatabaseInHand {
  /** Runs statements that no trigger sees; `$1` ... are the values. */
  readonly run: (text: string, values?: readonly unknown[]) => Promise<pg.QueryResult['rows']>;
  /** Everything as it was at the beginning. */
  readonly restore: () => Promise<void>;
  readonly close: () => Promise<void>;
}

const tables = [
  ...['card', 'card_revision', 'phone', 'posting', 'ruling', 'ledger_line', 'ledger_head', 'signing_key'],
  ...[
    'paper_card',
    'paper_entry',
    'entry',
    'class_entry',
    'show_class',
    'panel_seat',
    'score_sheet',
    'pattern_maneuver',
  ],
];

export async function takeDatabase(ownerUrl: string): Promise<DatabaseInHand> {
  const client = new pg.Client({ connectionString: ownerUrl });
  await client.connect();
  // Triggers, those of foreign keys among them, do not fire for a replica.
  await client.query('SET session_replication_role = replica');
  await client.query('CREATE SCHEMA kept');
  for (const table of tables) await client.query(`CREATE TABLE kept.${table} AS TABLE public.${table}`);
  const restore = async () => {
    for (const table of tables) {
      await client.query(`DELETE FROM public.${table}`);
      await client.query(`INSERT INTO public.${table} SELECT * FROM kept.${table}`);
    }
  };
  return {
    run: async (text, values = []) => (await client.query(text, [...values])).rows,
    restore,
    close: () => client.end(),
  };
}
