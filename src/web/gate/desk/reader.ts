/** Reads what the gate sees, and keeps it on this device. */
import type { ReadonlySignal } from '@preact/signals';
import type { Problem } from '../../shared/problem-words.ts';
import type { Answered, Sender } from './ask.ts';
import type { Announcement, Board, Seen, Sheet } from './gate-types.ts';
import { readSheet } from './read-sheet.ts';
import type { SeenShelf } from './seen.ts';

export interface Heard {
  readonly heard: (answered: boolean) => void;
  readonly ended: (problem: Problem) => void;
}

interface OfClass {
  readonly showId: string;
  readonly classId: string;
}

/** Each verb gives `undefined` where nobody answered or nothing is there; what was seen before stays. */
export class Reader {
  readonly #shelf: SeenShelf;
  readonly #sender: Sender;
  readonly #news: Heard;

  constructor(parts: { readonly shelf: SeenShelf; readonly sender: Sender; readonly news: Heard }) {
    this.#shelf = parts.shelf;
    this.#sender = parts.sender;
    this.#news = parts.news;
  }

  async ask(path: string): Promise<Answered> {
    return this.#told(await this.#sender.ask({ path }));
  }

  async board(showId: string): Promise<Board | undefined> {
    return this.#keep<Board>('board', await this.ask(`/v1/shows/${showId}/board`));
  }

  async sheet({ showId, classId }: OfClass): Promise<Sheet | undefined> {
    const before = this.seenSheet(classId).peek()?.what;
    const answer = this.#told(await readSheet(this.#sender, { showId, classId, before }));
    return this.#keep<Sheet>(`sheet ${classId}`, answer);
  }

  async announcement(classId: string): Promise<Announcement | undefined> {
    const answer = await this.ask(`/v1/classes/${classId}/announcement`);
    return this.#keep<Announcement>(`announcement ${classId}`, answer);
  }

  seenBoard(): ReadonlySignal<Seen<Board> | undefined> {
    return this.#shelf.of<Seen<Board>>('board');
  }

  seenSheet(classId: string): ReadonlySignal<Seen<Sheet> | undefined> {
    return this.#shelf.of<Seen<Sheet>>(`sheet ${classId}`);
  }

  seenAnnouncement(classId: string): ReadonlySignal<Seen<Announcement> | undefined> {
    return this.#shelf.of<Seen<Announcement>>(`announcement ${classId}`);
  }

  #told(answer: Answered): Answered {
    this.#news.heard(answer.is !== 'no-answer');
    if (answer.is === 'ended') this.#news.ended(answer.problem);
    return answer;
  }

  async #keep<What>(key: string, answer: Answered): Promise<What | undefined> {
    if (answer.is !== 'done') return undefined;
    const what = answer.body as What;
    await this.#shelf.keep(key, { what, seenAt: new Date().toISOString() } satisfies Seen<What>);
    return what;
  }
}
