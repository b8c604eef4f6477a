import pg from 'pg';

/** A connection for one piece of work beside the pool: as the owner, to the maintenance database, as a try. */
export async function withClient<T>(url: string, work: (client: pg.Client) => Promise<T>): Promise<T> {
  const client = new pg.Client({ connectionString: url, connectionTimeoutMillis: 10_000 });
  // A connection that breaks says so twice: by the failed statement, and by an event that ends the process if unheard.
  client.on('error', () => undefined);
  try {
    await client.connect();
    return await work(client);
  } finally {
    await client.end().catch(() => undefined);
  }
}
