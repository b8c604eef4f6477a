/** A stopping service answers what it has begun, and waits neither for silent connections nor for ever. */
import type { Socket } from 'node:net';
import type { App } from '../app-parts.ts';

const longestDrainMilliseconds = 10_000;
const lookMilliseconds = 100;

export function drainOnClose(app: App): void {
  const open = new Set<Socket>();
  app.server.on('connection', (socket: Socket) => {
    open.add(socket);
    socket.once('close', () => open.delete(socket));
  });
  app.addHook('preClose', async () => {
    // Browsers open connections ahead of use; Node.js counts those neither as idle nor as done.
    for (const socket of open) if (socket.bytesRead === 0) socket.destroy();
    const look = setInterval(() => app.server.closeIdleConnections(), lookMilliseconds);
    const enough = setTimeout(() => app.server.closeAllConnections(), longestDrainMilliseconds);
    app.server.once('close', () => {
      clearInterval(look);
      clearTimeout(enough);
    });
    // Without a listening server there is no close to wait for.
    look.unref();
    enough.unref();
  });
}
