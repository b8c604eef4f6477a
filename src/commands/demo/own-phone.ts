/** An open invitation for whoever looks at the demo: a phone of one's own as the scribe of judge 3. */
import { networkInterfaces } from 'node:os';
import { toString as drawQrCode } from 'qrcode';
import type { FilledDemo } from './fill-demo.ts';

export interface OwnPhone {
  readonly code: string;
  /** To be opened on this computer. */
  readonly here: string;
  /** To be scanned. */
  readonly link: string;
  /** For the terminal. */
  readonly qr: string;
  /** Is it an address that a phone can reach? */
  readonly reachable: boolean;
}

const label = 'A phone of your own';
const hours = 8;

/** `listensEverywhere`: HOST is 0.0.0.0 or ::, so that others in the network reach the service. */
export async function inviteOwnPhone(demo: FilledDemo, listensEverywhere: boolean): Promise<OwnPhone> {
  const { api, showId, secretary: as } = demo;
  await withdrawEarlier(demo);
  const { body: people } = await api.ask<{ items: { id: string }[] }>({
    ...{ method: 'GET', path: `/shows/${showId}/people?limit=200`, as },
  });
  const { body: invitation } = await api.ask<{ code: string; link: string }>({
    ...{ method: 'POST', path: `/shows/${showId}/invitations`, as },
    body: { role: 'scribe', personId: people.items[2]?.id, label, minutes: hours * 60 },
  });
  const { code, link: given } = invitation;
  const outside = listensEverywhere ? addressInNetwork() : undefined;
  const { origin, port, protocol } = new URL(api.address);
  const link = outside === undefined ? given : given.replace(origin, `${protocol}//${outside}:${port}`);
  const qr = await drawQrCode(link, { type: 'terminal', small: true });
  const reachable = !['localhost', '127.0.0.1', '[::1]'].includes(new URL(link).hostname);
  return { code, link, qr, reachable, here: `http://localhost:${port}/pair#${code}` };
}

/** The invitation of an earlier start is not left open. */
async function withdrawEarlier({ api, showId, secretary: as }: FilledDemo): Promise<void> {
  const path = `/shows/${showId}/invitations`;
  const { body } = await api.ask<{ items: { id: string; label: string | null; state: string }[] }>({
    ...{ method: 'GET', path, as },
  });
  for (const { id } of body.items.filter((one) => one.state === 'open' && one.label === label)) {
    await api.ask({ method: 'DELETE', path: `${path}/${id}`, as });
  }
}

/** The first address of this computer that is not its own loop. */
function addressInNetwork(): string | undefined {
  const all = Object.values(networkInterfaces()).flatMap((addresses) => addresses ?? []);
  return all.find(({ family, internal }) => family === 'IPv4' && !internal)?.address;
}
