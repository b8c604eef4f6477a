/** What the families of the invented show said about their children's names. */
import type { DemoShow } from './demo-files.ts';

type Exhibitor = DemoShow['exhibitors'][number];

/** Nothing is recorded for whom nobody said anything: then the show's own careful form holds. */
export async function recordConsent(
  add: (path: string, body: unknown) => Promise<string>,
  { exhibitor: { publicName, bornOn }, id }: { readonly exhibitor: Exhibitor; readonly id: string },
): Promise<void> {
  if (publicName === undefined) return;
  await add(`exhibitors/${id}/consents`, {
    publicName,
    givenBy: bornOn === undefined ? 'exhibitor' : 'parent',
    givenOn: someDaysAgo(),
    how: 'signed-form',
  });
}

/** `yyyy-mm-dd`: past in every time zone, whenever the demo is run. */
const someDaysAgo = (): string => new Date(Date.now() - 3 * 86_400_000).toISOString().slice(0, 10);
