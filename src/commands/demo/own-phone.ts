/** Open invitations for whoever looks at the demo: the phones of judge 3 and her scribe, and one for the gate. */
import { networkInterfaces } from 'node:os';
import { toString as drawQrCode } from 'qrcode';
import type { FilledDemo } from './fill-demo.ts';

export interface OwnPhone {
  readonly role: 'judge' | 'scribe' | 'gate';
  readonly code: string;
  /** To be opened on this computer. */
  readonly here: string;
  /** To be scanned. */
  readonly link: string;
}

export interface OwnPhones {
  /** The judge's first. */
  readonly phones: readonly OwnPhone[];
  /** Of the judge's, for the terminal. */
  readonly qr: string;
  /** Are the links addresses that a phone can reach? */
  readonly reachable: boolean;
}

const roles = ['judge', 'scribe', 'gate'] as const;
/** Her card is the one that class 19 waits for. */
const ownJudge = 3;
const labelOf = (role: OwnPhone['role']) => `A ${role} phone of your own`;
const hours = 8;

/** `listensEverywhere`: HOST is 0.0.0.0 or ::, so that others in the network reach the service. */
export async function inviteOwnPhones(demo: FilledDemo, listensEverywhere: boolean): Promise<OwnPhones> {
  const { api, showId, secretary: as } = demo;
  await withdrawEarlier(demo);
  const { body: people } = await api.ask<{ items: { id: string }[] }>({
    ...{ method: 'GET', path: `/shows/${showId}/people?limit=200`, as },
  });
  const outside = listensEverywhere ? addressInNetwork() : undefined;
  const phones: OwnPhone[] = [];
  for (const role of roles) {
    const person = role === 'gate' ? {} : { personId: people.items[ownJudge - 1]?.id };
    phones.push(await invite(demo, { role, ...person }, outside));
  }
  const [first = ''] = phones.map(({ link }) => link);
  const reachable = !['localhost', '127.0.0.1', '[::1]'].includes(new URL(first).hostname);
  return { phones, reachable, qr: await drawQrCode(first, { type: 'terminal', small: true }) };
}

async function invite(
  { api, showId, secretary: as }: FilledDemo,
  who: { readonly role: OwnPhone['role']; readonly personId?: string | undefined },
  outside: string | undefined,
): Promise<OwnPhone> {
  const { body: invitation } = await api.ask<{ code: string; link: string }>({
    ...{ method: 'POST', path: `/shows/${showId}/invitations`, as },
    body: { ...who, label: labelOf(who.role), minutes: hours * 60 },
  });
  const { code, link: given } = invitation;
  const { origin, port, protocol } = new URL(api.address);
  const link = outside === undefined ? given : given.replace(origin, `${protocol}//${outside}:${port}`);
  return { role: who.role, code, link, here: `http://localhost:${port}/pair#${code}` };
}

/** The invitations of an earlier start are not left open. */
async function withdrawEarlier({ api, showId, secretary: as }: FilledDemo): Promise<void> {
  const path = `/shows/${showId}/invitations`;
  const { body } = await api.ask<{ items: { id: string; label: string | null; state: string }[] }>({
    ...{ method: 'GET', path, as },
  });
  const labels: readonly (string | null)[] = roles.map(labelOf);
  for (const { id } of body.items.filter((one) => one.state === 'open' && labels.includes(one.label))) {
    await api.ask({ method: 'DELETE', path: `${path}/${id}`, as });
  }
}

/** The first address of this computer that is not its own loop. */
function addressInNetwork(): string | undefined {
  const all = Object.values(networkInterfaces()).flatMap((addresses) => addresses ?? []);
  return all.find(({ family, internal }) => family === 'IPv4' && !internal)?.address;
}
