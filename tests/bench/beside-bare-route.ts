import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { freePort, ready, startProcess, stopProcess } from './processes.ts';

/** While `work` runs, a Fastify in a process of its own answers at `url` with `text`, and looks at no database. */
export async function besideBareRoute<Done>(
  text: string,
  work: (url: string) => Promise<Done>,
): Promise<Done> {
  const folder = mkdtempSync(join(tmpdir(), 'ringledger-bench-'));
  const file = join(folder, 'answer.json');
  writeFileSync(file, text);
  const port = await freePort();
  const url = `http://127.0.0.1:${port}/bare`;
  const child = startProcess('tests/bench/bare-route.ts', {
    environment: { PORT: String(port), BARE_FILE: file },
  });
  try {
    await ready(child, url);
    return await work(url);
  } finally {
    await stopProcess(child);
    rmSync(folder, { recursive: true });
  }
}
