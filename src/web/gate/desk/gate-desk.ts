/** The desk of the gate: what it sees, what it says, what waits to be sent. Screens read signals and call verbs. */
import { type ReadonlySignal, signal } from '@preact/signals';
import { followShow } from '../../shared/live.ts';
import type { Problem } from '../../shared/problem-words.ts';
import { askAsAnyone } from '../../shared/public-client.ts';
import type { Sender } from './ask.ts';
import { isAhead } from './days.ts';
import { withOutgoing } from './gate-sheet.ts';
import type {
  Announcement,
  Board,
  Change,
  ClassLine,
  GateState,
  GoneByHand,
  Hearing,
  Outgoing,
  Seen,
  Sheet,
  Show,
} from './gate-types.ts';
import type { KeptStore } from './kept.ts';
import { Outbox } from './outbox.ts';
import { showOf } from './read-show.ts';
import { Reader } from './reader.ts';
import type { SeenShelf } from './seen.ts';
import { inTurns } from './turns.ts';

/** Several events come at once when a class is posted. */
const calmMilliseconds = 300;
/** How far the judges are is told by no event. */
const lookEvery = 15_000;

interface Parts {
  readonly store: KeptStore;
  readonly shelf: SeenShelf;
  readonly sender: Sender;
}

export class GateDesk {
  readonly state = signal<GateState>({ is: 'loading' });
  readonly hearing = signal<Hearing>({ kind: 'looking', heardAt: undefined });
  readonly as: Sender['as'];
  readonly #shelf: SeenShelf;
  readonly #reader: Reader;
  readonly #outbox: Outbox;
  /** Which classes a screen shows now. */
  readonly #watched = new Set<string>();
  #unfollow: (() => void) | undefined;
  #waiting: ReturnType<typeof setTimeout> | undefined;

  constructor({ store, shelf, sender }: Parts) {
    const news = {
      heard: (answered: boolean) => this.#heard(answered),
      ended: (problem: Problem) => void this.#end(problem),
      taken: async (classId: string) => void (await this.#readSheet(classId)),
    };
    this.as = sender.as;
    this.#shelf = shelf;
    this.#reader = new Reader({ shelf, sender, news });
    this.#outbox = new Outbox({ store, sender, news });
  }

  async begin(): Promise<void> {
    await this.#outbox.load();
    addEventListener('online', () => void this.tryNow());
    setInterval(() => void this.#everyWhile(), lookEvery);
    const known = this.#shelf.of<Show>('show').peek();
    if (known !== undefined) this.#open(known);
    else if (this.as === 'office') this.state.value = { is: 'choose-show' };
    if (this.as === 'phone') await this.#askWhatThisIs();
  }

  async #askWhatThisIs(): Promise<void> {
    const answer = await this.#reader.ask('/v1/phones/current');
    if (answer.is === 'done') {
      const show = showOf(answer.body);
      if (show === undefined) this.state.value = { is: 'other-phone' };
      else await this.chooseShow(show);
    } else if (this.state.peek().is === 'loading') this.state.value = { is: 'waiting' };
  }

  async chooseShow(show: Show): Promise<void> {
    await this.#shelf.keep('show', show);
    this.#open(show);
  }

  #open(show: Show): void {
    const before = this.state.peek();
    this.state.value = { is: 'here', show };
    this.#outbox.showId = show.id;
    if (before.is === 'here' && before.show.id === show.id) return;
    this.#unfollow?.();
    this.#unfollow = followShow({
      showId: show.id,
      ask: askAsAnyone,
      hear: () => this.#soon(),
      tell: (told) => this.#connected(told),
    });
    void this.tryNow();
  }

  #soon(): void {
    clearTimeout(this.#waiting);
    this.#waiting = setTimeout(() => void this.tryNow(), calmMilliseconds);
  }

  #connected(told: 'streaming' | 'polling' | 'no-answer'): void {
    const kind = told === 'streaming' ? 'live' : told === 'polling' ? 'looking' : 'lost';
    this.hearing.value = { ...this.hearing.peek(), kind };
  }

  #heard(answered: boolean): void {
    const before = this.hearing.peek();
    if (!answered) this.hearing.value = { ...before, kind: 'lost' };
    else {
      const kind = before.kind === 'lost' ? 'looking' : before.kind;
      this.hearing.value = { kind, heardAt: new Date() };
    }
  }

  async #everyWhile(): Promise<void> {
    if (document.visibilityState !== 'visible') return;
    if (this.state.peek().is === 'waiting') return this.#askWhatThisIs();
    if (this.hearing.peek().kind === 'lost' || this.outgoing.peek().length > 0) return this.tryNow();
    for (const classId of this.#watched) await this.#readSheet(classId);
  }

  /** Sends what waits, then reads the board and every class that is still ahead. */
  readonly tryNow = inTurns(async () => {
    const state = this.state.peek();
    if (state.is !== 'here') return;
    await this.#outbox.send();
    const board = await this.#reader.board(state.show.id);
    if (board === undefined) return;
    const ahead = board.classes.filter(isAhead).map(({ id }) => id);
    for (const classId of new Set([...this.#watched, ...ahead])) {
      if ((await this.#readSheet(classId)) === undefined) return;
    }
    for (const line of board.classes) if (this.#watched.has(line.id)) await this.#readPosted(line);
  });

  async #readSheet(classId: string): Promise<Sheet | undefined> {
    const state = this.state.peek();
    return state.is === 'here' ? this.#reader.sheet({ showId: state.show.id, classId }) : undefined;
  }

  async #readPosted({ id, postingVersion }: ClassLine): Promise<void> {
    if (postingVersion === null) return;
    const known = this.#reader.seenAnnouncement(id).peek()?.what.posting.version;
    if (known !== postingVersion) await this.#reader.announcement(id);
  }

  /** Names go at once; what was not sent stays until somebody has read it. */
  async #end(problem: Problem): Promise<void> {
    this.#unfollow?.();
    this.state.value = { is: 'ended', problem };
    await this.#shelf.forgetAll();
  }

  get board(): Seen<Board> | undefined {
    return this.#reader.seenBoard().value;
  }

  get outgoing(): ReadonlySignal<readonly Outgoing[]> {
    return this.#outbox.items;
  }

  classLine(classId: string): ClassLine | undefined {
    return this.board?.what.classes.find(({ id }) => id === classId);
  }

  /** With what is not sent yet laid over it. */
  sheetOf(classId: string): Seen<Sheet> | undefined {
    const seen = this.#reader.seenSheet(classId).value;
    if (seen === undefined) return undefined;
    const own = this.outgoing.value.filter((item) => item.classId === classId);
    return { ...seen, what: withOutgoing(seen.what, own) };
  }

  announcementOf(classId: string): Seen<Announcement> | undefined {
    return this.#reader.seenAnnouncement(classId).value;
  }

  /** What is about to be read out is asked for anew. `false`: nobody answered. */
  async askAnnouncement(classId: string): Promise<boolean> {
    return (await this.#reader.announcement(classId)) !== undefined;
  }

  goneOf(classId: string): GoneByHand | undefined {
    return this.#shelf.of<GoneByHand>(`gone ${classId}`).value;
  }

  keepGone(classId: string, gone: GoneByHand): Promise<void> {
    return this.#shelf.keep(`gone ${classId}`, gone);
  }

  /** Until the returned verb is called, the class is read again when something happens. */
  watch(classId: string): () => void {
    this.#watched.add(classId);
    void this.#readSheet(classId);
    return () => this.#watched.delete(classId);
  }

  /** Resolves once all is kept on this device, which is before it is sent. */
  async change(line: Pick<ClassLine, 'id' | 'number'>, changes: readonly Change[]): Promise<void> {
    for (const change of changes) await this.#outbox.add(line, change);
    void this.#outbox.send();
  }

  /** `false`: it may have been sent already. */
  drop(id: string): Promise<boolean> {
    return this.#outbox.drop(id);
  }
}
