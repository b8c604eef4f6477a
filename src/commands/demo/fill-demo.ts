/** The whole invented show, through the API of a service that listens. */
import { type DemoClass, type DemoShow, talesOf } from './demo-files.ts';
import { colleagueOf, type DemoOffice, managerOf } from './office-people.ts';
import { type DemoPhone, readyPhones, type WantedPhone } from './phones.ts';
import { runClass } from './run-class.ts';
import { type ReadyClass, setUpClass } from './set-up-class.ts';
import { type OfficeAtShow, type ShowGround, setUpShow } from './set-up-show.ts';

export type Say = (line: string) => void;

/** The show, who works there, and their phones. */
export interface FilledDemo extends OfficeAtShow {
  readonly phones: ReadonlyMap<string, DemoPhone>;
}

/** Throws Refused where the service does not take something. */
export async function fillDemo(office: DemoOffice, demo: DemoShow, say: Say): Promise<FilledDemo> {
  const { show, exhibitors, judges } = demo;
  say(`Setting up "${show.name}": ${exhibitors.length} exhibitors, ${judges.length} judges ...`);
  const manager = await managerOf(office);
  const { body: made } = await office.api.ask<{ id: string }>({
    ...{ method: 'POST', path: '/shows', as: manager, body: show },
  });
  const atShow = await officeAtShow(office, { showId: made.id, manager });
  const ground = await setUpShow(atShow, demo);
  const phones = await readyPhones({ ...atShow, files: office.files }, wantedPhones(ground.judges));
  say(`  ${phones.size} phones are paired: ${[...phones.keys()].join(', ')}`);
  await runAll({ ground, demo, phones, say });
  return { ...atShow, phones };
}

/** What an earlier start has filled: the office signs in, and the phones are found again. */
export async function reopenDemo(office: DemoOffice, showId: string): Promise<FilledDemo> {
  const atShow = await officeAtShow(office, { showId, manager: await managerOf(office) });
  const { body: people } = await office.api.ask<{ items: { id: string }[] }>({
    ...{ method: 'GET', path: `/shows/${showId}/people?limit=200`, as: atShow.secretary },
  });
  const judges = people.items.map(({ id }) => id);
  const phones = await readyPhones({ ...atShow, files: office.files }, wantedPhones(judges));
  return { ...atShow, phones };
}

async function officeAtShow(
  office: DemoOffice,
  { showId, manager }: Pick<OfficeAtShow, 'showId' | 'manager'>,
): Promise<OfficeAtShow> {
  const secretary = office.people.find(({ duty }) => duty === 'secretary');
  if (secretary === undefined) throw new Error('the demo has no show secretary');
  const colleagues = office.people.filter(({ duty }) => duty === 'points-secretary');
  for (const person of colleagues) await colleagueOf(office, { person, showId, manager });
  const sends = await colleagueOf(office, { person: secretary, showId, manager });
  return { api: office.api, showId, manager, secretary: sends };
}

/** A phone for each judge, one for the scribe of judge 2, one for the gate. `judges`: ids, in order. */
const wantedPhones = (judges: readonly string[]): WantedPhone[] => [
  ...judges.map((personId, index) => ({ called: `judge-${index + 1}`, role: 'judge' as const, personId })),
  ...judges.slice(1, 2).map((personId) => ({ called: 'scribe-2', role: 'scribe' as const, personId })),
  { called: 'gate', role: 'gate' },
];

interface Filling {
  readonly ground: ShowGround;
  readonly demo: DemoShow;
  readonly phones: FilledDemo['phones'];
  readonly say: Say;
}

async function runAll({ ground, demo, phones, say }: Filling): Promise<void> {
  const ready = new Map<number, ReadyClass>();
  for (const demoClass of demo.classes) {
    say(`  class ${demoClass.number}, ${demoClass.name}: ${demoClass.state}`);
    const one = await setUpClass(ground, demoClass);
    ready.set(demoClass.number, one);
    await runClass({ ground, demo, demoClass, ready: one, phones, say });
  }
  for (const demoClass of demo.classes) await combine(ground, demoClass, ready);
}

async function combine(
  { api, showId, secretary: as }: ShowGround,
  demoClass: DemoClass,
  ready: ReadonlyMap<number, ReadyClass>,
): Promise<void> {
  for (const { class: into, reason } of talesOf(demoClass, 'combined-into')) {
    const path = `/shows/${showId}/classes/${ready.get(into)?.id}/combinations`;
    const body = { reason, classIds: [ready.get(demoClass.number)?.id] };
    await api.ask({ method: 'POST', path, as, body });
  }
}
