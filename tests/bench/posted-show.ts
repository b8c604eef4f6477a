/** A show of one class whose cards are all signed and whose result is posted. */
import { type ClassSize, largeCard } from '../../seed/large-show/large-show.ts';
import { signCard } from '../../src/commands/demo/judge-cards.ts';
import { postClass } from '../../src/commands/demo/post-class.ts';
import type { ScoreSheet } from '../../src/engine/sheets/types.ts';
import type { BenchService } from './bench-service.ts';
import { type BenchShow, openCards, setUpBenchShow } from './bench-show.ts';

export interface PostedShow extends Pick<BenchShow, 'showId' | 'phones'> {
  readonly classId: string;
}

const maneuvers = [1, 2, 3, 4, 5, 6].map((position) => ({ position, name: '', coefficient: '1' }));

export async function postShow(bench: BenchService, sheet: ScoreSheet, size: ClassSize): Promise<PostedShow> {
  const { api, office } = bench;
  const show = await setUpBenchShow(bench, { entries: size.entries, classes: [size] });
  const [ready] = show.classes;
  if (ready === undefined) throw new Error('a show without its class');
  const { id: classId, classEntries } = ready;
  const entries = [...classEntries.keys()].map(String);
  for (const [index, { cardId, phone }] of (await openCards(bench, show, ready)).entries()) {
    const { goes } = largeCard({ sheet, maneuvers, entries, seed: `${size.entries}:${index}` });
    const written = new Map(Object.entries(goes).map(([backNumber, go]) => [Number(backNumber), go]));
    const card = { goes: written, ranking: undefined, liking: [...written.keys()] };
    await signCard({ api, phone, cardId, classEntries }, card);
  }
  await postClass({ api, secretary: office }, { classId, state: 'provisional' });
  return { showId: show.showId, phones: show.phones, classId };
}
