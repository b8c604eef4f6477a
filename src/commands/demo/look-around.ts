/** What is worth looking at in the invented show, as addresses and commands that can be pasted. */
import type { Api } from './api.ts';
import { handOutPass } from './passes.ts';

export interface Tour {
  /** `OFFICE`, `JUDGE_1` ...: a shell variable for each pass. */
  readonly passes: ReadonlyMap<string, string>;
  readonly stops: readonly TourStop[];
}

export interface TourStop {
  readonly what: string;
  /** Addresses that everyone may open, and curl commands where a pass is needed. */
  readonly commands: readonly string[];
}

export interface TourOf {
  readonly api: Api;
  readonly address: string;
  readonly servicePass: string;
  readonly showId: string;
}

/** Hands out fresh passes; the old ones stay good until they end. */
export async function planTour({ api, address, servicePass, showId }: TourOf): Promise<Tour> {
  const office = await handOutPass(api, servicePass, { showId, role: 'office', label: 'Show office' });
  const read = async <Body>(path: string) =>
    (await api.ask<Body>({ method: 'GET', path, pass: office })).body;
  const { items } = await read<{ items: { id: string; number: number }[] }>(
    `/shows/${showId}/classes?limit=200`,
  );
  const ids = new Map(items.map(({ id, number }) => [number, id]));
  const idOf = (number: number) => ids.get(number) ?? `<no class ${number}>`;
  const passes = await passesFor(api, office, { showId, classId: idOf(underWay) });
  const postings = await read<{ postings: { id: string }[] }>(`/classes/${idOf(1)}/postings`);
  const tabulation = await read<{ openTies: { classEntryIds: string[]; backNumbers: number[] }[] }>(
    `/classes/${idOf(7)}/tabulation`,
  );
  const cards = await read<{ items: { cardId: string | null; seatOrder: number }[] }>(
    `/classes/${idOf(underWay)}/cards`,
  );
  const order = await read<{ goes: { classEntryId: string }[] }>(
    `/shows/${showId}/classes/${idOf(underWay)}/order-of-go`,
  );
  const v1 = `${address}/v1`;
  const places: Places = {
    v1,
    show: `${v1}/shows/${showId}`,
    inShow: (number) => `${v1}/shows/${showId}/classes/${idOf(number)}`,
    ofClass: (number) => `${v1}/classes/${idOf(number)}`,
    firstPosting: postings.postings[0]?.id,
    openTie: tabulation.openTies[0],
    cardOfJudge: (seat) => cards.items.find(({ seatOrder }) => seatOrder === seat)?.cardId ?? '<no card>',
    nextGo: order.goes.at(-1)?.classEntryId ?? '<no go>',
  };
  return { passes: new Map([['OFFICE', office], ...passes]), stops: stopsOf(places) };
}

/** The class under way. */
const underWay = 13;

interface SeatsOf {
  readonly showId: string;
  readonly classId: string;
}

async function passesFor(
  api: Api,
  office: string,
  { showId, classId }: SeatsOf,
): Promise<Map<string, string>> {
  const { body: panel } = await api.ask<{ seats: { id: string; seatOrder: number }[] }>({
    method: 'GET',
    path: `/shows/${showId}/classes/${classId}/panel`,
    pass: office,
  });
  const passes = new Map<string, string>();
  for (const { id: seatId, seatOrder } of panel.seats) {
    const label = `Class ${underWay}, seat ${seatOrder}`;
    passes.set(
      `JUDGE_${seatOrder}`,
      await handOutPass(api, office, { showId, role: 'judge', seatId, label }),
    );
    if (seatOrder !== 2) continue;
    passes.set(
      'SCRIBE_2',
      await handOutPass(api, office, { showId, role: 'scribe', seatId, label: `Scribe, ${label}` }),
    );
  }
  return passes.set('GATE', await handOutPass(api, office, { showId, role: 'gate', label: 'Gate' }));
}

interface Places {
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
}

const by = (pass: string, address: string, more = '') =>
  `curl -s -H "authorization: Bearer $${pass}" ${more}${address}`;
const sending = (method: string, body: unknown) =>
  `-X ${method} -H 'content-type: application/json' -d '${JSON.stringify(body)}' `;

function stopsOf(places: Places): TourStop[] {
  const { show, ofClass, inShow } = places;
  return [
    { what: 'The board: every class, in every state', commands: [`${show}/board`] },
    corrected(places),
    {
      what: 'Class 2: 157 and 176 are tied by majority, broken by its size; 182 was off pattern and stands below all',
      commands: [
        `${ofClass(2)}/result`,
        `${ofClass(2)}/result/entries/157`,
        `${ofClass(2)}/result/entries/182`,
      ],
    },
    {
      what: 'Class 3: high and low discarded; judge 4 could not see a maneuver of 213',
      commands: [`${ofClass(3)}/result/entries/213`],
    },
    {
      what: 'Class 4: a scratch, a no-show, and a young rider off pattern who still has sixth place',
      commands: [`${ofClass(4)}/result/entries/112`],
    },
    { what: 'Class 5: a place that is shared', commands: [`${ofClass(5)}/result/entries/106`] },
    waitingTie(places),
    {
      what: 'How close class 3 was, and how far the five judges of class 6 agree (office only)',
      commands: [by('OFFICE', `${ofClass(3)}/margins`), by('OFFICE', `${ofClass(6)}/agreement`)],
    },
    ...underWayStops(places),
    {
      what: 'Class 14: the order of go with three horses of one rider, a late add, and the seed it was drawn from',
      commands: [`${inShow(14)}/order-of-go`, `${inShow(14)}/order-of-go/draws`],
    },
    { what: 'Class 15: class 16 was combined into it', commands: [`${inShow(15)}/relations`] },
    {
      what: 'Live: leave the first running, and call the class in another window',
      commands: [`curl -N ${show}/events`, by('GATE', `${inShow(14)}/calls`, '-X POST ')],
    },
  ];
}

function corrected({ v1, ofClass, firstPosting }: Places): TourStop {
  const first = firstPosting === undefined ? [] : [`${v1}/postings/${firstPosting}`];
  return {
    what: 'Class 1: official, then corrected: a judge had two goes under the wrong numbers. The old postings stay',
    commands: [`${ofClass(1)}/result`, `${ofClass(1)}/postings`, ...first],
  };
}

function waitingTie({ ofClass, openTie }: Places): TourStop {
  const preview = by('OFFICE', `${ofClass(7)}/tabulation`);
  if (openTie === undefined) return { what: 'Class 7: its tie was ruled on', commands: [preview] };
  const ruling = {
    kind: 'run-off',
    order: openTie.classEntryIds.map((id) => [id]),
    decidedBy: 'Judges of the run-off',
    why: 'Run-off, three judges of five',
  };
  return {
    what: `Class 7: ${openTie.backNumbers.join(' and ')} are tied for first and wait for a run-off. See it, then record how it ended`,
    commands: [preview, by('OFFICE', `${ofClass(7)}/rulings`, sending('POST', ruling))],
  };
}

function underWayStops({ v1, ofClass, cardOfJudge, nextGo }: Places): TourStop[] {
  const card = (seat: number) => `${v1}/cards/${cardOfJudge(seat)}`;
  return [
    {
      what: "Class 13, under way: the office sees how far the cards are, never a mark; a judge sees her own card and nobody else's",
      commands: [by('OFFICE', `${ofClass(underWay)}/cards`), by('JUDGE_1', card(1)), by('JUDGE_1', card(2))],
    },
    {
      what: 'A mark that the sheet does not allow, and one that it does',
      commands: ['81.25', '81.5'].map((mark) =>
        by('SCRIBE_2', `${card(2)}/goes/${nextGo}`, sending('PUT', { mark })),
      ),
    },
  ];
}
