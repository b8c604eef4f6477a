/** The whole invented show, through the API of a service that listens. */
import { apiAt } from './api.ts';
import { type DemoClass, readDemoShow, talesOf } from './demo-files.ts';
import { runClass } from './run-class.ts';
import { type ReadyClass, setUpClass } from './set-up-class.ts';
import { type ShowGround, setUpShow } from './set-up-show.ts';

export interface FilledService {
  /** Where the service listens. */
  readonly address: string;
  /** Pass of the office of the whole service, which sets up shows. */
  readonly servicePass: string;
  readonly say: (line: string) => void;
}

/** Returns the show's id. Throws Refused where the service does not take something. */
export async function fillDemo({ address, servicePass, say }: FilledService): Promise<string> {
  const demo = readDemoShow();
  say(
    `Setting up "${demo.show.name}": ${demo.exhibitors.length} exhibitors, ${demo.judges.length} judges ...`,
  );
  const ground = await setUpShow(apiAt(address), servicePass, demo);
  const ready = new Map<number, ReadyClass>();
  for (const demoClass of demo.classes) {
    say(`  class ${demoClass.number}, ${demoClass.name}: ${demoClass.state}`);
    const one = await setUpClass(ground, demoClass);
    ready.set(demoClass.number, one);
    await runClass({ ground, demo, demoClass, ready: one });
  }
  for (const demoClass of demo.classes) await combine(ground, demoClass, ready);
  return ground.showId;
}

async function combine(
  { api, showId, officePass }: ShowGround,
  demoClass: DemoClass,
  ready: ReadonlyMap<number, ReadyClass>,
): Promise<void> {
  for (const { class: into, reason } of talesOf(demoClass, 'combined-into')) {
    await api.ask({
      method: 'POST',
      path: `/shows/${showId}/classes/${ready.get(into)?.id}/combinations`,
      pass: officePass,
      body: { reason, classIds: [ready.get(demoClass.number)?.id] },
    });
  }
}
