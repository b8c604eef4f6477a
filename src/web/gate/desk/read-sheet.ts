/** Reads the gate sheet of a class: who is in it, and how far its judges are. */
import type { Answer } from '../../shared/api.ts';
import type { Answered, Sender } from './ask.ts';
import type { Sheet } from './gate-types.ts';

interface Wanted {
  readonly showId: string;
  readonly classId: string;
  /** What was known of it. */
  readonly before: Sheet | undefined;
}

export async function readSheet(sender: Sender, { showId, classId, before }: Wanted): Promise<Answered> {
  const base = `/v1/shows/${showId}/classes/${classId}`;
  const entries = await sender.ask({ path: `${base}/entries` });
  if (entries.is !== 'done') return entries;
  const cards = await sender.ask({ path: `/v1/classes/${classId}/cards` });
  if (cards.is !== 'done') return cards;
  const isRail = before?.isRail ?? (await asksForRail(sender, base));
  if (isRail === undefined) return { is: 'no-answer' };
  const sheet: Sheet = {
    entries: (entries.body as Answer<'/v1/shows/{showId}/classes/{classId}/entries'>).items,
    cards: (cards.body as Answer<'/v1/classes/{classId}/cards'>).items,
    isRail,
  };
  return { is: 'done', body: sheet };
}

/** A sheet of places is marked with all in the ring at once; it stays what it is, so it is asked for once. */
async function asksForRail(sender: Sender, base: string): Promise<boolean | undefined> {
  const found = await sender.ask({ path: base });
  if (found.is !== 'done') return undefined;
  const { code, version } = (found.body as Answer<'/v1/shows/{showId}/classes/{classId}'>).sheet;
  const sheet = await sender.ask({ path: `/v1/score-sheets/${code}/${version}` });
  if (sheet.is !== 'done') return undefined;
  const { definition } = sheet.body as Answer<'/v1/score-sheets/{code}/{version}'>;
  return definition.kind === 'places';
}
