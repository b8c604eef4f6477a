/** A class whose judges sign their cards over the API: what the office finds when it tabulates. */
import request from 'supertest';
import type { PlacingRule } from '../../src/engine/placing/types.ts';
import type { Go } from '../../src/engine/sheets/types.ts';
import type { Prisma } from '../../src/platform/generated/prisma/client.ts';
import { type CardSetting, goOf, setUpClass } from './card-setting.ts';
import type { TestApp } from './test-app.ts';

type Marks = readonly [string, string, string];

export interface JudgedClass extends CardSetting {
  readonly office: string;
  /** Signs the card of a seat; one go for each entry in the order of go. */
  readonly sign: (seat: number, goes: readonly Go[]) => Promise<void>;
  /** Amends the signed card of a seat. */
  readonly amend: (seat: number, goes: readonly Go[], reason: string) => Promise<void>;
  readonly get: (path: string, authorization?: string) => request.Test;
  readonly post: (path: string, body: object, headers?: Record<string, string>) => request.Test;
  /** Posts what the preview shows. */
  readonly publish: (state: string, reason?: string) => Promise<request.Response>;
}

type Wanted = Parameters<typeof setUpClass>[1] & {
  readonly rule?: Partial<PlacingRule>;
  readonly publishCards?: string;
};

const signedAt = '2026-05-02T15:00:00Z';

export async function setUpJudgedClass(service: TestApp, wanted: Wanted = {}): Promise<JudgedClass> {
  const setting = await setUpClass(service, wanted);
  const { prisma } = service.parts.db;
  const stored = await prisma.showClass.findUniqueOrThrow({ where: { id: setting.classId } });
  await prisma.showClass.update({
    where: { id: setting.classId },
    data: {
      placingRule: {
        ...(stored.placingRule as Prisma.InputJsonObject),
        ...wanted.rule,
      } as Prisma.InputJsonObject,
      publishCards: wanted.publishCards ?? 'with-posting',
    },
  });
  const office = await setting.pass('office');
  const http = () => request(service.app.server);
  const base = `/v1/classes/${setting.classId}`;
  const contentOf = (goes: readonly Go[]) => ({
    goes: Object.fromEntries(goes.map((go, at) => [setting.entryIds[at] ?? '', go])),
  });
  const cardAddress = async (seat: number) => `/v1/cards/${await setting.openCard(seat)}`;
  const get = (path: string, authorization?: string) => {
    const asked = http().get(`${base}${path}`);
    return authorization === undefined ? asked : asked.set('authorization', authorization);
  };
  const post = (path: string, body: object, headers: Record<string, string> = { authorization: office }) =>
    http().post(`${base}${path}`).set(headers).send(body);
  return {
    ...setting,
    office,
    get,
    post,
    sign: async (seat, goes) => {
      await http()
        .post(`${await cardAddress(seat)}/signatures`)
        .set('authorization', await setting.judge(seat))
        .send({ signedAt, content: contentOf(goes) })
        .expect(201);
    },
    amend: async (seat, goes, reason) => {
      const address = await cardAddress(seat);
      const authorization = await setting.judge(seat);
      const revisions = await http()
        .get(`${address}/revisions`)
        .set('authorization', authorization)
        .expect(200);
      const previousHash = revisions.body.items.at(-1).contentHash;
      await http()
        .post(`${address}/amendments`)
        .set('authorization', authorization)
        .send({ reason, content: contentOf(goes), previousHash, signedAt })
        .expect(201);
    },
    publish: async (state, reason) => {
      const preview = await get('/tabulation', office).expect(200);
      const headers = { authorization: office, 'if-match': String(preview.headers.etag) };
      return post('/postings', { state, ...(reason === undefined ? {} : { reason }) }, headers);
    },
  };
}

/** One go for each entry, out of its marks. */
export const goesOf = (...marks: readonly Marks[]): Go[] => marks.map((go) => goOf(go));
