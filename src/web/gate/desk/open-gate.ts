import { openSender, type Sender } from './ask.ts';
import { GateDesk } from './gate-desk.ts';
import { type KeptStore, openKept } from './kept.ts';
import { SeenShelf } from './seen.ts';

export type OpenedGate = GateDesk | 'no-store' | 'not-paired';

/** `no-store`: the browser keeps nothing. `not-paired`: there is neither a phone's key nor a session of the office. */
export async function openGate(): Promise<OpenedGate> {
  const store = await openKept().catch(() => undefined);
  if (store === undefined) return 'no-store';
  const sender = await openSender();
  const shelf = await ownShelf(store, sender);
  if (sender === undefined) return 'not-paired';
  const desk = new GateDesk({ store, shelf, sender });
  void desk.begin();
  return desk;
}

/** What another phone, or an office that has gone, saw here is thrown away first. */
async function ownShelf(store: KeptStore, sender: Sender | undefined): Promise<SeenShelf> {
  const shelf = new SeenShelf(store, sender?.name ?? 'nobody');
  await shelf.begin();
  return shelf;
}
