/** Where in the filled show the stops of the tour are: addresses and ids. */
import type { FilledDemo } from './fill-demo.ts';

/** The class under way. */
export const underWay = 13;
/** The class with a card on paper. */
export const withPaper = 12;

export interface Places {
  /** Where the service listens. */
  readonly address: string;
  readonly showId: string;
  readonly v1: string;
  readonly show: string;
  readonly inShow: (number: number) => string;
  readonly ofClass: (number: number) => string;
  readonly firstPosting: string | undefined;
  readonly openTie:
    | { readonly classEntryIds: readonly string[]; readonly backNumbers: readonly number[] }
    | undefined;
  readonly cardOfJudge: (seat: number) => string;
  readonly nextGo: string;
  /** An exhibitor whose family said in which form the name may be public. */
  readonly child: string;
}

export async function findPlaces({ api, showId, secretary: as }: FilledDemo): Promise<Places> {
  const read = async <Body>(path: string) => (await api.ask<Body>({ method: 'GET', path, as })).body;
  const show = `/shows/${showId}`;
  const classes = await read<{ items: { id: string; number: number }[] }>(`${show}/classes?limit=200`);
  const ids = new Map(classes.items.map(({ id, number }) => [number, id]));
  const idOf = (number: number) => ids.get(number) ?? `<no class ${number}>`;
  const postings = await read<{ postings: { id: string }[] }>(`/classes/${idOf(1)}/postings`);
  const tabulation = await read<{ openTies: { classEntryIds: string[]; backNumbers: number[] }[] }>(
    `/classes/${idOf(7)}/tabulation`,
  );
  const cards = await read<{ items: { cardId: string | null; seatOrder: number }[] }>(
    `/classes/${idOf(underWay)}/cards`,
  );
  const order = await read<{ goes: { classEntryId: string }[] }>(
    `${show}/classes/${idOf(underWay)}/order-of-go`,
  );
  const exhibitors = await read<{ items: { id: string; publicName: string | null }[] }>(
    `${show}/exhibitors?limit=200`,
  );
  const v1 = `${api.address}/v1`;
  return {
    ...{ address: api.address, showId, v1, show: v1 + show },
    inShow: (number) => `${v1}${show}/classes/${idOf(number)}`,
    ofClass: (number) => `${v1}/classes/${idOf(number)}`,
    firstPosting: postings.postings[0]?.id,
    openTie: tabulation.openTies[0],
    cardOfJudge: (seat) => cards.items.find(({ seatOrder }) => seatOrder === seat)?.cardId ?? '<no card>',
    nextGo: order.goes.at(-1)?.classEntryId ?? '<no go>',
    child: exhibitors.items.find(({ publicName }) => publicName !== null)?.id ?? '<no exhibitor>',
  };
}
