/** Is the invented show there from an earlier start? */
import type { Api } from './api.ts';
import type { DemoShow } from './demo-files.ts';

interface ShowPage {
  readonly items: readonly { readonly id: string; readonly name: string }[];
  readonly nextCursor: string | null;
}

interface Board {
  readonly classes: readonly { readonly number: number; readonly state: string }[];
}

/** The last one that was filled to the end; a start that was cut off leaves half a show, which is passed over. */
export async function findDemo(api: Api, demo: DemoShow): Promise<string | undefined> {
  const shows = await allShows(api);
  const ours = shows.filter(({ name }) => name === demo.show.name).reverse();
  for (const { id } of ours) if (await isFilled(api, demo, id)) return id;
  return undefined;
}

async function allShows(api: Api): Promise<ShowPage['items'][number][]> {
  const shows: ShowPage['items'][number][] = [];
  let cursor: string | null = '';
  while (cursor !== null) {
    const path: string = `/shows?limit=200${cursor === '' ? '' : `&cursor=${cursor}`}`;
    const { body } = await api.ask<ShowPage>({ method: 'GET', path });
    shows.push(...body.items);
    cursor = body.nextCursor;
  }
  return shows;
}

/** Classes are combined last of all, and stay so whatever is tried out on the others. */
async function isFilled(api: Api, { classes }: DemoShow, showId: string): Promise<boolean> {
  const { body } = await api.ask<Board>({ method: 'GET', path: `/shows/${showId}/board` });
  const states = new Map(body.classes.map(({ number, state }) => [number, state]));
  return classes.every(({ number, state }) => state !== 'combined' || states.get(number) === 'combined');
}
