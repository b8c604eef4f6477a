/**
 * What happens at a show, as it happens: server-sent events (WHATWG HTML, 9.2) read from a stream of `fetch`, since an
 * EventSource sends no pass. Where no stream gets through, a call every few seconds takes its place.
 */
import { EventSourceParserStream } from 'eventsource-parser/stream';

export interface LiveEvent {
  /** Number of the ledger's line. */
  readonly id: string | undefined;
  /** E.g. `result.posted`; `undefined`: no stream gets through, so look again (polling). */
  readonly type: string | undefined;
  readonly body: unknown;
}

export type LiveState = 'streaming' | 'polling' | 'no-answer';

export interface Followed {
  readonly showId: string;
  /** Asks in the name of whoever looks; the pass comes from here. */
  readonly ask: (path: string, asked: StreamRequest) => Promise<Response>;
  readonly hear: (event: LiveEvent) => void;
  readonly tell?: (state: LiveState) => void;
}

interface StreamRequest {
  readonly headers: Record<string, string>;
  readonly signal: AbortSignal;
}

const pollEveryMilliseconds = 10_000;
const longestWaitMilliseconds = 30_000;
/** The service says "still here" three times in it. */
const silentMilliseconds = 45_000;
const failuresUntilNoAnswer = 3;

/** Follows until the returned verb is called; goes on after the last event heard, whatever breaks between. */
export function followShow(followed: Followed): () => void {
  const ended = new AbortController();
  void goOn(followed, ended.signal);
  return () => ended.abort();
}

async function goOn({ showId, ask, hear, tell }: Followed, ended: AbortSignal): Promise<void> {
  let last: string | undefined;
  let failures = 0;
  while (!ended.aborted) {
    const headers = { accept: 'text/event-stream', ...(last === undefined ? {} : { 'last-event-id': last }) };
    const opened = await readStream({
      open: (signal) => ask(`/v1/shows/${showId}/events`, { headers, signal }),
      ended,
      onOpen: () => tell?.('streaming'),
      hear: (event) => {
        last = event.id ?? last;
        hear(event);
      },
    });
    if (ended.aborted) return;
    failures = opened ? 0 : failures + 1;
    if (failures > 0) {
      tell?.(failures > failuresUntilNoAnswer ? 'no-answer' : 'polling');
      hear({ id: undefined, type: undefined, body: undefined });
    }
    await pause(opened ? 1_000 : Math.min(pollEveryMilliseconds * failures, longestWaitMilliseconds), ended);
  }
}

interface StreamToRead {
  readonly open: (signal: AbortSignal) => Promise<Response>;
  readonly ended: AbortSignal;
  readonly onOpen: () => void;
  readonly hear: (event: LiveEvent) => void;
}

/** Until it ends or falls silent. `false`: no stream was opened. */
async function readStream({ open, ended, onOpen, hear }: StreamToRead): Promise<boolean> {
  const silence = new Silence();
  let opened = false;
  try {
    const answer = await open(AbortSignal.any([ended, silence.signal]));
    if (!answer.ok || answer.body === null) return false;
    opened = true;
    onOpen();
    const events = answer.body
      .pipeThrough(silence.brokenBy())
      .pipeThrough(new TextDecoderStream() as TransformStream<Uint8Array, string>)
      .pipeThrough(new EventSourceParserStream());
    const reader = events.getReader();
    for (let next = await reader.read(); !next.done; next = await reader.read()) {
      const { id, event, data } = next.value;
      hear({ id, type: event, body: JSON.parse(data) });
    }
    return true;
  } catch {
    return opened;
  } finally {
    silence.end();
  }
}

/** A connection that died without a word is noticed by its silence. */
class Silence {
  readonly #cut = new AbortController();
  readonly signal = this.#cut.signal;
  #timer = this.#begin();

  brokenBy(): TransformStream<Uint8Array, Uint8Array> {
    return new TransformStream({
      transform: (chunk, controller) => {
        clearTimeout(this.#timer);
        this.#timer = this.#begin();
        controller.enqueue(chunk);
      },
    });
  }

  end(): void {
    clearTimeout(this.#timer);
  }

  #begin() {
    return setTimeout(() => this.#cut.abort(), silentMilliseconds);
  }
}

function pause(milliseconds: number, ended: AbortSignal): Promise<void> {
  return new Promise((resolve) => {
    const timer = setTimeout(resolve, milliseconds);
    ended.addEventListener('abort', () => {
      clearTimeout(timer);
      resolve();
    });
  });
}
