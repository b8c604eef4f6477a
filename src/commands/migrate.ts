/** `npm run migrate`: brings the database of the settings to the present shape. */
import { readConfig } from '../config.ts';
import { migrate } from '../platform/migrate.ts';
import { startDatabase } from '../platform/start-parts.ts';

const say = (line: string) => console.error(line);

try {
  const { url, stop } = await startDatabase(readConfig(process.env), say);
  try {
    await migrate(url, say);
    say('The database has the present shape.');
  } finally {
    await stop();
  }
} catch (error) {
  say(error instanceof Error ? error.message : String(error));
  process.exitCode = 1;
}
