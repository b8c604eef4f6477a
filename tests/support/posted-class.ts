/** A class whose judges sign their cards over the API: what the office finds when it tabulates. */
import request from 'supertest';
import type { PlacingRule } from '../../src/engine/placing/types.ts';
import type { Go } from '../../src/engine/sheets/types.ts';
import type { Prisma } from '../../src/platform/generated/prisma/client.ts';
import { type CardSetting, goOf, setUpClass } from './card-setting.ts';
import { type Asked, signedBy } from './signing.ts';
import type { TestApp } from './test-app.ts';
import { noPass, type OfficePass, type Pass, passFor } from './test-passes.ts';

type Marks = readonly [string, string, string];

export interface JudgedClass extends CardSetting {
  readonly office: OfficePass;
  /** Signs the card of a seat; one go for each entry in the order of go. */
  readonly sign: (seat: number, goes: readonly Go[]) => Promise<void>;
  /** Amends the signed card of a seat. */
  readonly amend: (seat: number, goes: readonly Go[], reason: string) => Promise<void>;
  readonly get: (path: string, pass?: Pass) => request.Test;
  /** As the office of the show where no other pass is named. */
  readonly post: (path: string, body: object, more?: PostedBy) => request.Test;
  /** Posts what the preview shows. */
  readonly publish: (state: string, reason?: string) => Promise<request.Response>;
}

interface PostedBy {
  readonly pass?: Pass;
  readonly headers?: Readonly<Record<string, string>>;
}

type Wanted = Parameters<typeof setUpClass>[1] & {
  readonly rule?: Partial<PlacingRule>;
  readonly publishCards?: string;
};

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
  const office = await passFor(service, { role: 'office', showId: setting.showId });
  const http = () => request(service.app.server);
  const base = `/v1/classes/${setting.classId}`;
  const contentOf = (goes: readonly Go[]) => ({
    goes: Object.fromEntries(goes.map((go, at) => [setting.entryIds[at] ?? '', go])),
  });
  const get: JudgedClass['get'] = (path, pass = noPass) => http().get(`${base}${path}`).use(pass);
  const post: JudgedClass['post'] = (path, body, { pass = office, headers = {} } = {}) =>
    http().post(`${base}${path}`).use(pass).set(headers).send(body);
  const send = async (seat: number, what: 'signatures' | 'amendments', asked: Asked) => {
    const [cardId, pass] = [await setting.openCard(seat), await setting.judge(seat)];
    await http()
      .post(`/v1/cards/${cardId}/${what}`)
      .use(pass)
      .use(signedBy(service, { pass, cardId, asked }))
      .expect(201);
  };
  return {
    ...setting,
    office,
    get,
    post,
    sign: (seat, goes) => send(seat, 'signatures', { content: contentOf(goes) }),
    amend: async (seat, goes, reason) => {
      const [cardId, pass] = [await setting.openCard(seat), await setting.judge(seat)];
      const { items } = (await http().get(`/v1/cards/${cardId}/revisions`).use(pass).expect(200)).body;
      const { revision, contentHash: previousHash } = items.at(-1);
      await send(seat, 'amendments', {
        ...{ reason, previousHash, revision: revision + 1, content: contentOf(goes) },
      });
    },
    publish: async (state, reason) => {
      const preview = await get('/tabulation', office).expect(200);
      const headers = { 'if-match': String(preview.headers.etag) };
      return post('/postings', { state, ...(reason === undefined ? {} : { reason }) }, { headers });
    },
  };
}

/** One go for each entry, out of its marks. */
export const goesOf = (...marks: readonly Marks[]): Go[] => marks.map((go) => goOf(go));
