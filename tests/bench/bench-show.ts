/** A large show on the service that is measured: set up through its API, with a phone for each judge. */
import { type LargeShow, largeShow } from '../../seed/large-show/large-show.ts';
import { openCard } from '../../src/commands/demo/judge-cards.ts';
import type { DemoPhone } from '../../src/commands/demo/phones.ts';
import { type ReadyClass, setUpClass } from '../../src/commands/demo/set-up-class.ts';
import { setUpShow } from '../../src/commands/demo/set-up-show.ts';
import { makePhoneKey, PhoneClient } from '../../src/phone/index.ts';
import { type BenchService, say } from './bench-service.ts';

export interface BenchShow {
  readonly showId: string;
  /** In the order of `LargeShow.classes`. */
  readonly classes: readonly ReadyClass[];
  /** By the number of the judge. */
  readonly phones: ReadonlyMap<number, DemoPhone>;
}

export interface OpenedCard {
  readonly cardId: string;
  readonly phone: DemoPhone;
}

export async function setUpBenchShow(bench: BenchService, size: LargeShow): Promise<BenchShow> {
  say(`setting up a show of ${size.entries} entries and ${size.classes.length} classes through the API ...`);
  const { api, office } = bench;
  const demo = largeShow(size);
  const made = await api.ask<{ id: string }>({ method: 'POST', path: '/shows', as: office, body: demo.show });
  const showId = made.body.id;
  const ground = await setUpShow({ api, showId, secretary: office, manager: office }, demo);
  const phones = new Map<number, DemoPhone>();
  for (const [index, personId] of ground.judges.entries())
    phones.set(index + 1, await pairPhone(bench, { showId, personId }));
  const classes: ReadyClass[] = [];
  for (const demoClass of demo.classes) classes.push(await setUpClass(ground, demoClass));
  return { showId, classes, phones };
}

/** Opens the card of each seat, with the phone of its judge. */
export async function openCards(
  { api }: BenchService,
  { phones }: BenchShow,
  { id: classId, seats }: ReadyClass,
): Promise<OpenedCard[]> {
  const opened: OpenedCard[] = [];
  for (const { seatId, judge } of seats) {
    const phone = phones.get(judge);
    if (phone === undefined) throw new Error(`judge ${judge} has no phone`);
    opened.push({ phone, cardId: await openCard(api, { classId, seatId, phone }) });
  }
  return opened;
}

async function pairPhone(
  { address, api, office: as }: BenchService,
  { showId, personId }: { readonly showId: string; readonly personId: string },
): Promise<DemoPhone> {
  const { body: invitation } = await api.ask<{ code: string }>({
    ...{ method: 'POST', path: `/shows/${showId}/invitations`, as },
    body: { role: 'judge', personId },
  });
  const key = await makePhoneKey();
  const client = new PhoneClient(address, key);
  await api.ask({ method: 'POST', path: '/pairings', as: () => client.pair(invitation.code) });
  return { key, sends: (request) => client.request(request) };
}
