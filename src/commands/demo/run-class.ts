/** What happens in a class once it is called: cards, results, and what its tales say beside them. */
import { type DemoClass, type DemoShow, talesOf } from './demo-files.ts';
import { amendCard, contentOf, openCard, type SignedCard, saveGoes, signCard } from './judge-cards.ts';
import { judgeClass, swapGoes, type WrittenCard } from './marks/judge-class.ts';
import { handOutPass } from './passes.ts';
import { postClass } from './post-class.ts';
import type { ReadyClass, ReadySeat } from './set-up-class.ts';
import type { ShowGround } from './set-up-show.ts';

export interface ClassToRun {
  readonly ground: ShowGround;
  readonly demo: DemoShow;
  readonly demoClass: DemoClass;
  readonly ready: ReadyClass;
}

export async function runClass(given: ClassToRun): Promise<void> {
  const { ground, demoClass, ready } = given;
  const { state } = demoClass;
  if (neverJudged.has(state)) return;
  const cards = await cardsOf(given);
  if (state === 'under-way') return markSome(given, cards);
  const signed = await signAll(given, cards);
  if (state === 'cards-in') return;
  const office = { api: ground.api, pass: ground.officePass };
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

const atCard = ({ ground, ready }: ClassToRun, pass: string, cardId: string) => ({
  ...{ api: ground.api, pass, cardId },
  classEntries: ready.classEntries,
});

/** The first goes of the order are saved; the second judge has a scribe who writes for her. */
async function markSome(given: ClassToRun, cards: readonly WrittenCard[]): Promise<void> {
  const { ground, demoClass, ready } = given;
  const { api, showId, officePass } = ground;
  const count = talesOf(demoClass, 'goes-marked')[0]?.count ?? 0;
  const first = (await orderOfGo(given)).slice(0, count);
  for (const [index, { seatId, pass }] of ready.seats.entries()) {
    const cardId = await openCard(api, { classId: ready.id, seatId, pass });
    const label = `Scribe, class ${demoClass.number}, seat 2`;
    const writer =
      index === 1 ? await handOutPass(api, officePass, { showId, role: 'scribe', seatId, label }) : pass;
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
 * the whole card when they sign.
 */
function signAll(
  { ground, demoClass, ready }: ClassToRun,
  cards: readonly WrittenCard[],
): Promise<SignedCard[]> {
  const { api } = ground;
  const sign = async ({ seatId, pass }: ReadySeat, index: number): Promise<SignedCard> => {
    const meant = cards[index];
    if (meant === undefined) throw new Error(`nothing was written at seat ${index + 1}`);
    const swapped = talesOf(demoClass, 'swapped').find(({ judge }) => judge === index + 1);
    const card = swapped === undefined ? meant : swapGoes(meant, swapped.entries);
    const cardId = await openCard(api, { classId: ready.id, seatId, pass });
    const judge = { api, pass, cardId, classEntries: ready.classEntries };
    if (index % 2 === 0) await saveGoes(judge, [...card.goes]);
    return signCard(judge, card);
  };
  return Promise.all(ready.seats.map(sign));
}

interface Mistake {
  readonly judge: number;
  readonly reason: string;
  readonly signed: readonly SignedCard[];
  readonly cards: readonly WrittenCard[];
}

/** The judge puts her card right: what she signed stays readable. */
async function amend(given: ClassToRun, { judge, reason, signed, cards }: Mistake): Promise<void> {
  const [seat, before, meant] = [given.ready.seats[judge - 1], signed[judge - 1], cards[judge - 1]];
  if (seat === undefined || before === undefined || meant === undefined)
    throw new Error(`there is no judge ${judge}`);
  const { seatId, pass } = seat;
  const cardId = await openCard(given.ground.api, { classId: given.ready.id, seatId, pass });
  const atHers = atCard(given, pass, cardId);
  await amendCard(atHers, { before, content: contentOf(atHers, meant), reason });
}
