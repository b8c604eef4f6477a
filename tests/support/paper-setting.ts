/** A class whose cards come in on paper, and two people of the office who enter them. */
import request from 'supertest';
import type { CardContent } from '../../src/engine/sheets/card-types.ts';
import type { Go } from '../../src/engine/sheets/types.ts';
import { type CardSetting, setUpClass } from './card-setting.ts';
import type { TestApp } from './test-app.ts';
import { type OfficePass, type Pass, passFor } from './test-passes.ts';

interface TakingUp {
  readonly seat?: number;
  readonly seatId?: string;
  readonly reason?: string;
  readonly previousHash?: string;
}

export interface PaperSetting extends CardSetting {
  readonly first: OfficePass;
  readonly second: OfficePass;
  /** One more account of the office of this show. */
  readonly another: () => Promise<OfficePass>;
  /** Takes up the card of a seat, from 0; what comes after is about the last one that was taken up. */
  readonly takeUp: (pass: Pass, asked?: TakingUp) => request.Test;
  readonly current: () => { readonly id: string; readonly cardId: string };
  readonly read: (pass: Pass) => request.Test;
  /** One go for each entry in the order of go. */
  readonly enter: (
    pass: Pass,
    goes: readonly Go[],
    ifMatch?: string,
    order?: Omit<CardContent, 'goes'>,
  ) => request.Test;
  readonly withdraw: (pass: Pass, reason: string) => request.Test;
  readonly contentOf: (goes: readonly Go[]) => CardContent;
}

export async function setUpPaper(
  service: TestApp,
  wanted?: Parameters<typeof setUpClass>[1],
): Promise<PaperSetting> {
  const setting = await setUpClass(service, wanted);
  const { showId, classId, seatIds, entryIds } = setting;
  const another = () => passFor(service, { role: 'secretary', showId });
  const http = () => request(service.app.server);
  let current: { id: string; cardId: string } | undefined;
  const address = () => `/v1/paper-cards/${(current ?? nobody()).id}`;
  const contentOf = (goes: readonly Go[]) => ({
    goes: Object.fromEntries(goes.map((go, at) => [entryIds[at] ?? '', go])),
  });
  return {
    ...setting,
    ...{ first: await another(), second: await passFor(service, { role: 'manager', showId }) },
    ...{ another, contentOf, current: () => current ?? nobody() },
    takeUp: (pass, { seat = 0, ...more } = {}) =>
      http()
        .post(`/v1/classes/${classId}/paper-cards`)
        .use(pass)
        .send({ seatId: seatIds[seat], ...more })
        .on('response', ({ status, body }) => {
          if (status < 300) current = body;
        }),
    read: (pass) => http().get(address()).use(pass),
    enter: (pass, goes, ifMatch, order = {}) => {
      const sent = http().put(`${address()}/entries/mine`).use(pass);
      if (ifMatch !== undefined) sent.set('if-match', ifMatch);
      return sent.send({ ...contentOf(goes), ...order });
    },
    withdraw: (pass, reason) => http().post(`${address()}/withdrawals`).use(pass).send({ reason }),
  };
}

function nobody(): never {
  throw new Error('no paper card was taken up yet');
}

/** Taken up and entered by both: accepted. */
export async function openPaper(paper: PaperSetting, goes: readonly Go[], asked?: TakingUp): Promise<void> {
  await paper.takeUp(paper.first, asked).expect(201);
  await paper.enter(paper.first, goes).expect(200);
  await paper.enter(paper.second, goes).expect(200);
}
