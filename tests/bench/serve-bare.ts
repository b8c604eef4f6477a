import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { freePort, ready, startProcess, stopProcess } from './processes.ts';

export interface BareRoute {
  readonly url: string;
  readonly stop: () => Promise<void>;
}

/** A Fastify with one route that answers with `text` and looks at no database, in a process of its own. */
export async function serveBare(text: string): Promise<BareRoute> {
  const folder = mkdtempSync(join(tmpdir(), 'ringledger-bench-'));
  const file = join(folder, 'answer.json');
  writeFileSync(file, text);
  const port = await freePort();
  const url = `http://127.0.0.1:${port}/bare`;
  const child = startProcess('tests/bench/bare-route.ts', {
    environment: { PORT: String(port), BARE_FILE: file },
  });
  await ready(child, url);
  const stop = async () => {
    await stopProcess(child);
    rmSync(folder, { recursive: true });
  };
  return { url, stop };
}
