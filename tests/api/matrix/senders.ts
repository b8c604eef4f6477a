/** Every kind of sender that there is, at a show and beside it. */
import type { TestApp } from '../../support/test-app.ts';
import { noPass, type Pass, passFor } from '../../support/test-passes.ts';
import type { Sender } from './ask.ts';
import type { Role } from './expected.ts';
import { headersOf, type PreparedShow } from './prepared-show.ts';
import type { Kind } from './verdict.ts';

const duties = ['manager', 'secretary', 'points-secretary'] as const;

const sender = (name: string, pass: Pass, kind: Kind): Sender => ({
  name,
  kind,
  headers: async (method, address) => headersOf(pass, method, address),
});

const kind = (role: Role, shows: Kind['shows'], holdsSeat = false, ended = false): Kind => {
  return { role, shows, holdsSeat, ended };
};

export async function sendersAt(
  service: TestApp,
  { here, there }: { readonly here: PreparedShow; readonly there: PreparedShow },
): Promise<Sender[]> {
  return [
    ...(await offices(service, { here, there })),
    sender('the judge of the seat', here.passes.judge, kind('judge', 'this', true)),
    sender('her scribe', here.passes.scribe, kind('scribe', 'this', true)),
    sender('the judge of another seat of the class', here.passes.otherJudge, kind('judge', 'this')),
    sender('the scribe of another seat of the class', here.passes.otherScribe, kind('scribe', 'this')),
    sender('the gate', here.passes.gate, kind('gate', 'this')),
    sender('a judge of another show', there.passes.judge, kind('judge', 'other')),
    sender('a scribe of another show', there.passes.scribe, kind('scribe', 'other')),
    sender('the gate of another show', there.passes.gate, kind('gate', 'other')),
    sender('nobody', noPass, kind('everyone', 'none')),
    ...(await ended(service, here)),
  ];
}

async function offices(
  service: TestApp,
  { here, there }: { readonly here: PreparedShow; readonly there: PreparedShow },
): Promise<Sender[]> {
  const scopes = [
    ['of the whole service', 'all', undefined],
    ['of the show', 'this', here.ids.unsigned.showId],
    ['of another show', 'other', there.ids.unsigned.showId],
  ] as const;
  const made: Sender[] = [];
  for (const role of duties) {
    for (const [where, shows, showId] of scopes) {
      const pass = await passFor(service, showId === undefined ? { role } : { role, showId });
      made.push(sender(`the ${role} ${where}`, pass, kind(role, shows)));
    }
  }
  return made;
}

async function ended(service: TestApp, { ids }: PreparedShow): Promise<Sender[]> {
  const { prisma } = service.parts.db;
  const { showId = '', seatId = '' } = ids.unsigned;
  const manager = await passFor(service, { role: 'manager' });
  const office = await passFor(service, { role: 'manager' });
  const judge = await passFor(service, { role: 'judge', showId, seatId });
  const at = service.parts.clock.now();
  await prisma.session.update({ where: { id: manager.sessionId }, data: { endedAt: at } });
  const address = `/v1/shows/${showId}/phones/${judge.phoneId}`;
  const headers = headersOf(office, 'DELETE', address);
  const answer = await service.app.inject({ method: 'DELETE', url: `${address}?why=lost`, headers });
  if (answer.statusCode !== 204) throw new Error(answer.payload);
  return [
    sender('a manager whose session was ended', manager, kind('manager', 'all', false, true)),
    sender('a judge whose phone was taken back', judge, kind('judge', 'this', true, true)),
  ];
}
