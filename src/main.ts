/** Starts the service and stops it without dropping what it has begun. */
import { buildApp } from './app.ts';
import { readConfig } from './config.ts';
import { announceKeys, strangeKeys } from './ledger/index.ts';
import { addBundledSheets } from './office/index.ts';
import { inSqlTransaction } from './platform/database.ts';
import { forgetOldKeys } from './platform/http/answer-once.ts';
import { type StartedParts, startParts } from './platform/start-parts.ts';

const warningOf = (kid: string) =>
  `Warning: the database names the signing key ${kid} as this service's, but the file of the signing keys does not ` +
  'hold it. Put the file back that had it, or find out who added it; what it signed cannot be checked here.';

export interface RunningService {
  /** Where it listens, e.g. http://127.0.0.1:4070 */
  readonly address: string;
  readonly parts: StartedParts['parts'];
  /** Ends open streams, lets begun requests finish, then lets go of the database. */
  readonly stop: () => Promise<void>;
}

export async function startService(say: (line: string) => void): Promise<RunningService> {
  const config = readConfig(process.env);
  const { parts, stop: stopParts } = await startParts(config, say);
  try {
    await announceKeys(parts);
    for (const kid of await strangeKeys(parts)) say(warningOf(kid));
    await addBundledSheets(parts);
  } catch (error) {
    await stopParts();
    throw error;
  }
  const app = await buildApp(parts);
  const address = await app.listen({ host: config.host, port: config.port }).catch(async (error: unknown) => {
    await stopParts();
    throw new Error(`Nobody can listen at ${config.host}, port ${config.port}; choose another PORT.`, {
      cause: error,
    });
  });
  const forget = () => inSqlTransaction(parts.db, (tx) => forgetOldKeys(tx, parts.clock.now()));
  const daily = setInterval(
    () => void forget().catch(() => app.log.warn('old keys were not let go')),
    86_400_000,
  );
  daily.unref();
  const stop = async () => {
    clearInterval(daily);
    await app.close();
    await stopParts();
  };
  return { address, parts, stop };
}

/** npm and the terminal may both pass the same Ctrl-C on; only a later one means "at once". */
const sameSignalMilliseconds = 2_000;

/** On the first signal stops in good order, also what is only half started; on a second one at once. */
export function stopOnSignal(service: () => RunningService | undefined, say: (line: string) => void): void {
  let stoppingSince: number | undefined;
  const onSignal = (signal: NodeJS.Signals) => {
    const running = service();
    if (running === undefined) process.exit(1);
    if (stoppingSince !== undefined) {
      if (performance.now() - stoppingSince > sameSignalMilliseconds) process.exit(1);
      return;
    }
    stoppingSince = performance.now();
    say(`${signal}: stopping ...`);
    running.stop().then(
      () => process.exit(0),
      () => process.exit(1),
    );
  };
  process.on('SIGINT', onSignal);
  process.on('SIGTERM', onSignal);
}

const say = (line: string) => console.error(line);

async function main(): Promise<void> {
  let service: RunningService | undefined;
  stopOnSignal(() => service, say);
  try {
    service = await startService(say);
    say(`Ringledger listens at ${service.address}; the API is described at ${service.address}/docs`);
  } catch (error) {
    say(error instanceof Error ? error.message : String(error));
    process.exit(1);
  }
}

if (import.meta.url === `file://${process.argv[1]}`) await main();
