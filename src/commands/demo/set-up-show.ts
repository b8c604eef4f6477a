/** The show's rings, judges, patterns, and everyone who rides. */
import type { Api, Sends } from './api.ts';
import { recordConsent } from './consents.ts';
import type { DemoShow } from './demo-files.ts';

/** Who of the office works on which show. */
export interface OfficeAtShow {
  readonly api: Api;
  readonly showId: string;
  /** The show secretary. */
  readonly secretary: Sends;
  /** The show manager. */
  readonly manager: Sends;
}

/** What the classes are set up on. */
export interface ShowGround extends OfficeAtShow {
  /** Ids by name, and people by their number in the file. */
  readonly rings: ReadonlyMap<string, string>;
  readonly judges: readonly string[];
  readonly patterns: ReadonlyMap<string, string>;
  readonly entries: ReadonlyMap<number, string>;
}

export async function setUpShow(office: OfficeAtShow, demo: DemoShow): Promise<ShowGround> {
  const { api, showId, secretary } = office;
  const add = async (path: string, body: unknown): Promise<string> => {
    const added = await api.ask<{ id: string }>({
      method: 'POST',
      path: `/shows/${showId}/${path}`,
      as: secretary,
      body,
    });
    return added.body.id;
  };
  const rings = await addAll(demo.rings, (name) => [name, () => add('rings', { name })]);
  const judges = await addAll(demo.judges, (name) => [name, () => add('people', { name })]);
  const patterns = await addAll(demo.patterns, (pattern) => [
    pattern.name,
    () => add('patterns', { ...pattern, drawing: demo.drawings[pattern.name] ?? null }),
  ]);
  const entries = await addEntries(add, demo);
  return { ...office, rings, judges: [...judges.values()], patterns, entries };
}

type Add = (path: string, body: unknown) => Promise<string>;

/** A horse is known by its name and its owner: two families may have a Copper Kettle each. */
async function addEntries(add: Add, { exhibitors, entries }: DemoShow): Promise<Map<number, string>> {
  const owners = await addAll(entries, ({ owner }) => [owner, () => add('owners', { name: owner })]);
  const horses = await addAll(entries, ({ horse, horseSpokenAs: spokenAs, owner }) => [
    `${horse} of ${owner}`,
    () => add('horses', { name: horse, spokenAs }),
  ]);
  const riders = await addAll(exhibitors, (exhibitor) => [
    exhibitor.key,
    async () => {
      const { name, bornOn, spokenAs } = exhibitor;
      const id = await add('exhibitors', { name, bornOn, spokenAs });
      await recordConsent(add, { exhibitor, id });
      return id;
    },
  ]);
  return addAll(entries, ({ backNumber, exhibitor, horse, owner }) => [
    backNumber,
    () =>
      add('entries', {
        backNumber,
        exhibitorId: riders.get(exhibitor),
        horseId: horses.get(`${horse} of ${owner}`),
        ownerId: owners.get(owner),
      }),
  ]);
}

/** One after another, each key once; the ids by key. */
async function addAll<One, Key>(
  all: readonly One[],
  how: (one: One) => readonly [Key, () => Promise<string>],
): Promise<Map<Key, string>> {
  const ids = new Map<Key, string>();
  for (const one of all) {
    const [key, add] = how(one);
    if (!ids.has(key)) ids.set(key, await add());
  }
  return ids;
}
