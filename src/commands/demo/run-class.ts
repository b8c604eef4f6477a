/** What happens in a class once it is called: cards, results, and what its tales say beside them. */
import { type DemoClass, type DemoShow, talesOf } from './demo-files.ts';
import { amendCard, contentOf, openCard, type SignedRevision, saveGoes, signCard } from './judge-cards.ts';
import { judgeClass, swapGoes, type WrittenCard } from './marks/judge-class.ts';
import { enterFromPaper } from './paper-card.ts';
import type { DemoPhone } from './phones.ts';
import { postClass } from './post-class.ts';
import type { ReadyClass, ReadySeat } from './set-up-class.ts';
import type { ShowGround } from './set-up-show.ts';

export interface ClassToRun {
  readonly ground: ShowGround;
  readonly demo: DemoShow;
  readonly demoClass: DemoClass;
  readonly ready: ReadyClass;
  /** By name: judge-1, scribe-2. */
  readonly phones: ReadonlyMap<string, DemoPhone>;
  readonly say: (line: string) => void;
}

export async function runClass(given: ClassToRun): Promise<void> {
  const { ground, demoClass, ready } = given;
  const { state } = demoClass;
  if (neverJudged.has(state)) return;
  const cards = await cardsOf(given);
  if (talesOf(demoClass, 'goes-marked').length > 0) return markSome(given, cards);
  const signed = await signAll(given, cards);
  if (state === 'under-way' || state === 'cards-in') return;
  const office = ground;
  await postClass(office, { classId: ready.id, state: 'provisional' });
  if (state === 'provisional') return;
  await postClass(office, { classId: ready.id, state: 'official' });
  if (state === 'official') return;
  for (const { judge, reason } of talesOf(demoClass, 'swapped')) {
    await amend(given, { judge, reason, signed, cards });
    await postClass(office, { classId: ready.id, state: 'corrected', reason: `Judge ${judge}: ${reason}` });
  }
}

const neverJudged: ReadonlySet<DemoClass['state']> = new Set([
  'setting-up',
  'drawn',
  'called',
  'cancelled',
  'combined',
]);

async function cardsOf({ ground, demo, demoClass }: ClassToRun): Promise<WrittenCard[]> {
  const { body: definition } = await ground.api.ask<{
    definition: Parameters<typeof judgeClass>[0]['sheet'];
  }>({
    method: 'GET',
    path: `/score-sheets/${demoClass.sheet}/1`,
  });
  const pattern = demo.patterns.find(({ name }) => name === demoClass.pattern);
  const maneuvers = (pattern?.maneuvers ?? []).map(({ name, coefficient = '1' }, index) => ({
    position: index + 1,
    name,
    coefficient,
  }));
  const gone = [...talesOf(demoClass, 'scratched'), ...talesOf(demoClass, 'no-show')].map(
    ({ entry }) => entry,
  );
  const going = demoClass.field.filter((backNumber) => !gone.includes(backNumber));
  return judgeClass({ demoClass, sheet: definition.definition, maneuvers, going, seed: demo.marksSeed });
}

const atCard = ({ ground, ready }: ClassToRun, phone: DemoPhone, cardId: string) => ({
  ...{ api: ground.api, phone, cardId },
  classEntries: ready.classEntries,
});

function phoneOf({ phones }: ClassToRun, called: string): DemoPhone {
  const phone = phones.get(called);
  if (phone === undefined) throw new Error(`there is no phone called ${called}`);
  return phone;
}

/** The first goes of the order are saved; judge 2 has a scribe who writes for her. */
async function markSome(given: ClassToRun, cards: readonly WrittenCard[]): Promise<void> {
  const { ground, demoClass, ready } = given;
  const count = talesOf(demoClass, 'goes-marked')[0]?.count ?? 0;
  const first = (await orderOfGo(given)).slice(0, count);
  for (const [index, { seatId, judge }] of ready.seats.entries()) {
    const phone = phoneOf(given, `judge-${judge}`);
    const cardId = await openCard(ground.api, { classId: ready.id, seatId, phone });
    const writer = given.phones.get(`scribe-${judge}`) ?? phone;
    const goes = [...(cards[index]?.goes ?? [])].filter(([backNumber]) => first.includes(backNumber));
    await saveGoes(atCard(given, writer, cardId), goes);
  }
}

/** Back numbers. */
async function orderOfGo({ ground, ready }: ClassToRun): Promise<number[]> {
  const { body } = await ground.api.ask<{ goes: { backNumber: number }[] }>({
    method: 'GET',
    path: `/shows/${ground.showId}/classes/${ready.id}/order-of-go`,
  });
  return body.goes.map(({ backNumber }) => backNumber);
}

/**
 * The judges write side by side. Those at odd seats save each go as it ends; the others had no signal, and send
 * the whole card when they sign. A card on paper gives no signature, nor does one that is missing yet.
 */
function signAll(given: ClassToRun, cards: readonly WrittenCard[]): Promise<(SignedRevision | undefined)[]> {
  const { ground, demoClass, ready } = given;
  const sign = async ({ seatId, judge }: ReadySeat, index: number): Promise<SignedRevision | undefined> => {
    const meant = cards[index];
    if (meant === undefined) throw new Error(`nothing was written at seat ${index + 1}`);
    if (talesOf(demoClass, 'card-missing').some((tale) => tale.judge === index + 1)) return undefined;
    const onPaper = talesOf(demoClass, 'paper').find((tale) => tale.judge === index + 1);
    if (onPaper !== undefined) {
      await enterFromPaper(given, { tale: onPaper, seatId, card: meant });
      return undefined;
    }
    const swapped = talesOf(demoClass, 'swapped').find((tale) => tale.judge === index + 1);
    const card = swapped === undefined ? meant : swapGoes(meant, swapped.entries);
    const phone = phoneOf(given, `judge-${judge}`);
    const cardId = await openCard(ground.api, { classId: ready.id, seatId, phone });
    if (index % 2 === 0) await saveGoes(atCard(given, phone, cardId), [...card.goes]);
    return signCard(atCard(given, phone, cardId), card);
  };
  return Promise.all(ready.seats.map(sign));
}

interface Mistake {
  readonly judge: number;
  readonly reason: string;
  readonly signed: readonly (SignedRevision | undefined)[];
  readonly cards: readonly WrittenCard[];
}

/** The judge puts her card right: what she signed stays readable. */
async function amend(given: ClassToRun, { judge, reason, signed, cards }: Mistake): Promise<void> {
  const [seat, before, meant] = [given.ready.seats[judge - 1], signed[judge - 1], cards[judge - 1]];
  if (seat === undefined || before === undefined || meant === undefined)
    throw new Error(`there is no signed card of judge ${judge}`);
  const phone = phoneOf(given, `judge-${seat.judge}`);
  const { seatId } = seat;
  const cardId = await openCard(given.ground.api, { classId: given.ready.id, seatId, phone });
  const atHers = atCard(given, phone, cardId);
  await amendCard(atHers, { before, content: contentOf(atHers, meant), reason });
}
