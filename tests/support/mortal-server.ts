/** The service in a process of its own, behind a door that can shut between its answer and the phone. */
import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { type AddressInfo, connect, createServer, type Server, type Socket } from 'node:net';
import { fileURLToPath } from 'node:url';
import { testSecret } from './test-app.ts';

export interface MortalServer {
  /** Where a phone asks; the process dies as its first answer sets out, and the phone hears nothing. */
  readonly deadly: string;
  /** The same process, answering. */
  readonly direct: string;
  /** kill -9 */
  readonly kill: () => Promise<void>;
}

const main = fileURLToPath(new URL('../../src/main.ts', import.meta.url));

export async function startMortalServer(databaseUrl: string): Promise<MortalServer> {
  const child = spawn(process.execPath, ['--import', 'tsx', main], {
    env: {
      ...process.env,
      ...{ DATABASE_URL: databaseUrl, TOKEN_SECRET: testSecret, PORT: '0', LOG_LEVEL: 'error' },
      ...{ BROWSABLE_DOCS: 'no', REQUESTS_PER_MINUTE: '0', NODE_ENV: 'test' },
    },
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  const direct = await addressOf(child);
  const door = await deadlyDoor(child, Number(new URL(direct).port));
  const kill = async () => {
    door.close();
    if (child.exitCode !== null || child.signalCode !== null) return;
    child.kill('SIGKILL');
    await once(child, 'exit');
  };
  return { deadly: `http://127.0.0.1:${(door.address() as AddressInfo).port}`, direct, kill };
}

function addressOf(child: ChildProcess): Promise<string> {
  return new Promise((found, failed) => {
    let said = '';
    child.stderr?.on('data', (bytes: Buffer) => {
      said += bytes.toString();
      const address = /listens at (http:\/\/[\d.]+:\d+)/.exec(said)?.[1];
      if (address !== undefined) found(address);
    });
    child.once('exit', () => failed(new Error(`the server did not start: ${said}`)));
  });
}

/** Passes a request on; when the first byte of an answer comes back, the change is committed: the server dies. */
async function deadlyDoor(child: ChildProcess, port: number): Promise<Server> {
  const door = createServer((phone: Socket) => {
    const server = connect(port, '127.0.0.1');
    phone.pipe(server);
    server.once('data', () => {
      child.kill('SIGKILL');
      phone.destroy();
    });
    for (const socket of [phone, server]) socket.on('error', () => undefined);
    server.on('close', () => phone.destroy());
  });
  door.listen(0, '127.0.0.1');
  await once(door, 'listening');
  return door;
}
