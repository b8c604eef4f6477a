/** The one that sends and asks, over and over: what is unsent first, then what is new. One thing at a time. */
import { type AskingDay, askWholeDay, ClassNews, keepEnding } from './ask-day.ts';
import type { ServiceProblem } from './desk-types.ts';
import { Bell, classEvery, dayEvery, waitAfter } from './pace.ts';
import type { KeptPhone } from './records.ts';
import { maySend, type Stopped, sendCard } from './send-card.ts';

interface Looking {
  /** Is any tab of the page looked at? */
  readonly isSeen: () => boolean;
  /** Classes that are open for marking, in any tab. */
  readonly marked: () => readonly string[];
  readonly foundGate: () => void;
}

export class Sender {
  readonly bell = new Bell();
  readonly #asking: AskingDay;
  readonly #looking: Looking;
  readonly #news: ClassNews;
  #failures = 0;
  #dayDue = 0;
  #classDue = 0;
  #isGate = false;
  /** The service said that the pairing has ended. It is asked once more whenever somebody asks for it. */
  #isOver = false;

  constructor(asking: AskingDay, looking: Looking) {
    this.#asking = asking;
    this.#looking = looking;
    this.#news = new ClassNews(asking);
  }

  /** Asks for everything with the next ring. */
  tryNow(): void {
    this.#isOver = false;
    this.#dayDue = 0;
    this.#classDue = 0;
    this.bell.ring();
  }

  /** A class was opened for marking: it is asked for with the next ring. */
  lookAt(): void {
    this.#classDue = 0;
    this.bell.ring();
  }

  async run(ended: AbortSignal): Promise<void> {
    ended.addEventListener('abort', () => this.bell.ring(), { once: true });
    while (!ended.aborted) {
      const stopped = this.#isGate || this.#isOver ? undefined : await this.#once();
      if (stopped === undefined) this.#failures = 0;
      else if (stopped.is === 'no-answer') this.#failures += 1;
      else await this.#over(stopped.problem);
      await this.bell.wait(this.#pause(stopped));
    }
  }

  async #over(problem: ServiceProblem): Promise<void> {
    this.#isOver = true;
    await keepEnding(this.#asking, problem);
  }

  /** `undefined`: nothing that is kept is known to be of this pairing, which goes on. */
  get #kept(): KeptPhone | undefined {
    const kept = this.#asking.room.mirror.phone.peek();
    const isOurs = kept?.thumbprint === this.#asking.thumbprint && kept.ended === null;
    return isOurs ? kept : undefined;
  }

  /** What is new may let more be sent: an entry goes after all, or the phone is paired for its judge again. */
  async #once(): Promise<Stopped> {
    return (await this.#send()) ?? (await this.#lookForNews()) ?? (await this.#send());
  }

  async #send(): Promise<Stopped> {
    // What another judge left here must not be sent by this phone: the day says first whose it is.
    const phone = this.#kept?.phone;
    if (phone == null) return undefined;
    for (const classId of this.#asking.room.mirror.classIds.peek()) {
      if (!this.#hasWork(classId)) continue;
      const stopped = await sendCard({ ...this.#asking, isJudge: phone.role === 'judge' }, classId);
      if (stopped !== undefined) return stopped;
    }
    return undefined;
  }

  async #lookForNews(): Promise<Stopped> {
    if (this.#kept?.phone == null) return this.#wholeDay();
    if (!this.#looking.isSeen()) return undefined;
    const now = performance.now();
    if (now >= this.#dayDue) return this.#wholeDay();
    return now >= this.#classDue ? this.#markedClasses() : undefined;
  }

  #hasWork(classId: string): boolean {
    const one = this.#asking.room.mirror.onDesk(classId);
    if (one === undefined) return false;
    return (
      [...one.writings.values()].some(maySend) || one.signatures.some(({ state }) => state === 'waiting')
    );
  }

  async #wholeDay(): Promise<Stopped> {
    const stopped = await askWholeDay(this.#asking);
    if (stopped === 'gate') {
      this.#isGate = true;
      this.#looking.foundGate();
      return undefined;
    }
    if (stopped === undefined) this.#dayDue = performance.now() + dayEvery;
    return stopped;
  }

  async #markedClasses(): Promise<Stopped> {
    for (const classId of this.#looking.marked()) {
      const stopped = await this.#news.ask(classId);
      if (stopped !== undefined) return stopped;
    }
    this.#classDue = performance.now() + classEvery(this.#kept?.phone?.otherPhones ?? 0);
    return undefined;
  }

  #pause(stopped: Stopped): number {
    if (stopped?.is === 'no-answer') {
      return Math.max(stopped.waitSeconds * 1_000, waitAfter(this.#failures - 1));
    }
    const due = this.#looking.marked().length > 0 ? Math.min(this.#dayDue, this.#classDue) : this.#dayDue;
    if (this.#isGate || this.#isOver || !this.#looking.isSeen()) return dayEvery;
    return Math.max(50, due - performance.now());
  }
}
