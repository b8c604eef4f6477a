/** Reads server-sent events as a browser does, with a parser that is not ours. */
import { createParser, type EventSourceMessage } from 'eventsource-parser';

export interface EventStream {
  readonly status: number;
  readonly headers: Headers;
  /** Waits for the next event; throws when none comes in time. */
  readonly next: () => Promise<EventSourceMessage>;
  /** Has the service ended the stream? Waits for it. */
  readonly ended: Promise<void>;
  readonly close: () => void;
}

const patienceMilliseconds = 10_000;

export async function openEventStream(
  url: string,
  headers: Record<string, string> = {},
): Promise<EventStream> {
  const abort = new AbortController();
  const answer = await fetch(url, { headers, signal: abort.signal });
  const events: EventSourceMessage[] = [];
  let wake = () => {};
  const parser = createParser({
    onEvent: (event) => {
      events.push(event);
      wake();
    },
  });
  const ended = readAll(answer, (text) => parser.feed(text));
  const next = async () => {
    const until = Date.now() + patienceMilliseconds;
    while (events.length === 0 && Date.now() < until) {
      await new Promise<void>((done) => {
        wake = done;
        setTimeout(done, 200);
      });
    }
    const event = events.shift();
    if (event === undefined) throw new Error(`no event came within ${patienceMilliseconds} ms`);
    return event;
  };
  return { status: answer.status, headers: answer.headers, next, ended, close: () => abort.abort() };
}

async function readAll(answer: Response, feed: (text: string) => void): Promise<void> {
  const decoder = new TextDecoder();
  try {
    const reader = answer.body?.getReader();
    for (let next = await reader?.read(); next && !next.done; next = await reader?.read()) {
      feed(decoder.decode(next.value, { stream: true }));
    }
  } catch {
    // The test closed the stream.
  }
}
