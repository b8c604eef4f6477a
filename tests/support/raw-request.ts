/** Bytes over a socket, for requests that no HTTP client would send. */
import { connect } from 'node:net';

export interface RawAnswer {
  /** Everything that came back until the service shut the connection. */
  readonly text: string;
  readonly status: number;
  /** JSON after the empty line, where there is some. */
  readonly body: Readonly<Record<string, unknown>>;
  readonly milliseconds: number;
}

export interface Piece {
  readonly text: string;
  readonly afterMilliseconds?: number;
}

const patienceMilliseconds = 20_000;

/** Sends the pieces, each after its pause, and waits until the service shuts the connection. */
export function sendRaw(port: number, pieces: readonly Piece[]): Promise<RawAnswer> {
  const begun = performance.now();
  return new Promise((done, failed) => {
    let text = '';
    const socket = connect(port, '127.0.0.1', () => void sendAll());
    const tooLong = setTimeout(() => socket.destroy(), patienceMilliseconds);
    const sendAll = async () => {
      for (const { text: piece, afterMilliseconds = 0 } of pieces) {
        await new Promise((go) => setTimeout(go, afterMilliseconds));
        if (socket.destroyed || !socket.writable) return;
        socket.write(piece);
      }
    };
    socket.on('data', (bytes: Buffer) => {
      text += bytes.toString();
    });
    // A service that cuts off answers first; the reset comes after what it said.
    socket.on('error', () => undefined);
    socket.on('close', () => {
      clearTimeout(tooLong);
      const milliseconds = performance.now() - begun;
      if (milliseconds >= patienceMilliseconds) failed(new Error('the service let the connection stand'));
      else done({ text, status: Number(text.slice(9, 12)), body: bodyOf(text), milliseconds });
    });
  });
}

function bodyOf(text: string): Readonly<Record<string, unknown>> {
  const json = /\r\n\r\n(\{.*\})\s*$/s.exec(text)?.[1];
  return json === undefined ? {} : (JSON.parse(json) as Record<string, unknown>);
}
