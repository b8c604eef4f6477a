/** What is measured runs in a process of its own, so that whoever measures does not take its time. */
import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { createServer } from 'node:net';
import { fileURLToPath } from 'node:url';

const checkout = fileURLToPath(new URL('../..', import.meta.url));

/** `file` runs as a script of its own; its errors are shown, its output is not. */
export const startProcess = (
  file: string,
  { environment = {}, args = [] }: { readonly environment?: NodeJS.ProcessEnv; readonly args?: string[] },
): ChildProcess =>
  spawn(process.execPath, ['--disable-warning=DeprecationWarning', '--import', 'tsx', file, ...args], {
    cwd: checkout,
    env: { ...process.env, NODE_ENV: 'production', ...environment },
    stdio: ['ignore', 'ignore', 'inherit'],
  });

export async function stopProcess(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null) return;
  const exited = once(child, 'exit');
  child.kill('SIGTERM');
  await exited;
}

/** Until it ends by itself. Throws where it ends otherwise than well. */
export async function whole(child: ChildProcess): Promise<void> {
  const [code] = await once(child, 'exit');
  if (code !== 0) throw new Error(`the process to be measured ended with ${String(code)}`);
}

export async function ready(child: ChildProcess, address: string, tries = 300): Promise<void> {
  if (child.exitCode !== null) throw new Error('the process to be measured has ended');
  const answer = await fetch(address).catch(() => undefined);
  if (answer?.ok) return;
  if (tries <= 1) throw new Error(`nothing answers at ${address}`);
  await new Promise((done) => setTimeout(done, 200));
  await ready(child, address, tries - 1);
}

export function freePort(): Promise<number> {
  return new Promise((done) => {
    const probe = createServer();
    probe.listen(0, '127.0.0.1', () => {
      const address = probe.address();
      probe.close(() => done(typeof address === 'object' && address ? address.port : 0));
    });
  });
}
