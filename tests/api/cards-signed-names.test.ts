import request from 'supertest';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { canonicalText } from '../../src/evidence/index.ts';
import { type CardSetting, goOf, setUpClass } from '../support/card-setting.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';
import { statementOf } from '../support/test-phone.ts';

/** JSON may name a member `__proto__`, and readers of JSON may pass over it: then less is kept than she signed. */
describe('a signed card with a member that is passed over', () => {
  let service: TestApp;
  let setting: CardSetting;
  beforeAll(async () => {
    service = await buildTestApp();
  });
  afterAll(() => service.close());
  beforeEach(async () => {
    setting = await setUpClass(service, { entries: 1 });
  });

  const http = () => request(service.app.server);

  /** The card is signed with what `added` adds to its text, in the order of RFC 8785. */
  async function sign(added: (text: string) => string) {
    const [pass, cardId] = [await setting.judge(), await setting.openCard()];
    const card = (await http().get(`/v1/cards/${cardId}`).use(pass).expect(200)).body;
    const content = { goes: { [setting.entryIds[0] ?? '']: goOf(['1', '0', '0']) } };
    const text = canonicalText(JSON.parse(added(canonicalText(statementOf(card, content)))));
    const sent = { jws: pass.phone.sign(text) };
    return { cardId, answer: await http().post(`/v1/cards/${cardId}/signatures`).use(pass).send(sent) };
  }

  test.each([
    ['among the extra marks', '"extras":{', '"extras":{"__proto__":"9",', 'signature_invalid'],
    ['among the goes', '"goes":{', '"goes":{"__proto__":{"mark":"9"},', 'signature_invalid'],
    ['in a go', '{"extras":{', '{"__proto__":{"mark":"9"},"extras":{', 'invalid_request'],
    ['in the sheet', '"sheet":{', '"sheet":{"__proto__":{"version":9},', 'invalid_request'],
    ['in the statement', '{"cardId"', '{"__proto__":{"revision":9},"cardId"', 'invalid_request'],
  ])('is refused %s, and nothing is kept', async (_where, found, put, code) => {
    const { cardId, answer } = await sign((text) => text.replace(found, put));
    expect(answer.body).toMatchObject({ code });
    expect(await service.parts.db.prisma.cardRevision.count({ where: { cardId } })).toBe(0);
  });

  test('is taken without it', async () => {
    const { answer } = await sign((text) => text);
    expect(answer.status).toBe(201);
  });
});
