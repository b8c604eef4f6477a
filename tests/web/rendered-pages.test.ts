/** Pages that the service renders: there without JavaScript, taken over by the browser, in the reader's language. */
import type { Browser } from '@playwright/test';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { withClient } from '../../src/platform/postgres/with-client.ts';
import { expectAccessible, openBrowser, openDesk, openPhone, see } from '../support/browser.ts';
import { goesOf, type JudgedClass, setUpJudgedClass } from '../support/posted-class.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';

let service: TestApp;
let browser: Browser;
let judged: JudgedClass;
let board: string;

beforeAll(async () => {
  service = await buildTestApp();
  judged = await setUpJudgedClass(service);
  browser = await openBrowser();
  board = `${service.address}/shows/${judged.showId}`;
});
afterAll(async () => {
  await browser.close();
  await service.close();
});

describe('a page that the service renders', () => {
  it('says what it has to say without JavaScript', async () => {
    const phone = await openPhone(browser, { javaScriptEnabled: false });
    const page = await phone.newPage();
    await page.goto(board);
    await see(page.getByRole('heading', { level: 1 })).toContainText('Larch Valley Spring Show');
    await phone.close();
  });

  it('is in the language that the browser asks for, and in the one that was chosen by a plain link', async () => {
    const desk = await openDesk(browser, { locale: 'de-AT', javaScriptEnabled: false });
    const page = await desk.newPage();
    await page.goto(board);
    await see(page.locator('html')).toHaveAttribute('lang', 'de');
    await page.getByRole('link', { name: 'English' }).click();
    await page.getByRole('link', { name: 'Full sun' }).click();
    await page.goto(board);
    await see(page.locator('html')).toHaveAttribute('lang', 'en');
    await see(page.locator('html')).toHaveAttribute('data-theme', 'glare');
    await desk.close();
  });

  it('chooses nothing for whoever the address is passed on to', async () => {
    const desk = await openDesk(browser);
    const page = await desk.newPage();
    await page.goto(`${board}?language=de&theme=dark`);
    await see(page.locator('html')).toHaveAttribute('lang', 'de');
    await see(page).toHaveURL(board);
    await desk.close();
  });

  it('is taken over by its script without a complaint of the browser, and is accessible', async () => {
    const desk = await openDesk(browser);
    const page = await desk.newPage();
    const complaints: string[] = [];
    page.on('console', (line) => line.type() === 'error' && complaints.push(line.text()));
    page.on('pageerror', (error) => complaints.push(error.message));
    await page.goto(board);
    await see(page.getByText('Live: what happens')).toBeVisible();
    await expectAccessible(page);
    expect(complaints).toEqual([]);
    await desk.close();
  });

  it('is not there for a show, a class or a number that is not there, and says so in words', async () => {
    const paths = [
      `/shows/${crypto.randomUUID()}`,
      `/shows/${judged.showId}/classes/99`,
      `/shows/${judged.showId}/nothing`,
    ];
    for (const path of paths) {
      const answer = await fetch(service.address + path);
      expect(answer.status, path).toBe(404);
      expect(await answer.text(), path).toContain('There is nothing here');
    }
  });

  it('carries nothing of a path that is no id into the API', async () => {
    const { app } = service;
    for (const part of ['..%2F..%2Fv1', `${judged.showId}%2Fboard`, `${judged.showId}%3Fx`, '%3Cb%3E']) {
      const answer = await app.inject(`/shows/${part}`);
      expect(answer.statusCode, part).toBe(404);
      expect(answer.body).not.toContain('<b>');
    }
  });

  it('lets nothing behind the question mark pass for a part of the path', async () => {
    const answer = await service.app.inject(`/?showId=${judged.showId}&number=7`);
    expect(answer.statusCode).toBe(200);
    expect(answer.body).not.toContain(`${judged.showId}","number"`);
    expect(answer.body).not.toContain('"showId"');
  });

  it('does not believe a cookie that says what cannot be chosen', async () => {
    const cookie = 'ringledger-language="><script>; ringledger-theme=neon';
    const { body } = await service.app.inject({ url: `/shows/${judged.showId}`, headers: { cookie } });
    expect(body).toContain('<html lang="en" data-theme="device">');
    expect(body).not.toContain('"><script>;');
  });

  it('sets a cookie that holds the choice and nothing else', async () => {
    const { cookies } = await service.app.inject(`/shows/${judged.showId}?language=de&theme=glare`);
    expect(cookies).toEqual([
      expect.objectContaining({ name: 'ringledger-language', value: 'de', sameSite: 'Lax', path: '/' }),
      expect.objectContaining({ name: 'ringledger-theme', value: 'glare', sameSite: 'Lax', path: '/' }),
    ]);
    const wrong = await service.app.inject(`/shows/${judged.showId}?language=xx&theme=%0d%0aset-cookie:a`);
    expect(wrong.cookies).toEqual([]);
  });

  it('is compressed, and is answered with 304 where the reader has it', async () => {
    const first = await service.app.inject({
      url: `/shows/${judged.showId}/classes/1`,
      headers: { 'accept-encoding': 'br' },
    });
    expect(first.headers).toMatchObject({ 'content-encoding': 'br', 'cache-control': 'no-cache' });
    expect(first.headers.vary).toMatch(/cookie/i);
    expect(first.headers.vary).toMatch(/accept-encoding/i);
    const again = await service.app.inject({
      url: `/shows/${judged.showId}/classes/1`,
      headers: { 'if-none-match': String(first.headers.etag), 'accept-encoding': 'gzip' },
    });
    expect(again.statusCode).toBe(304);
    expect(again.body).toBe('');
  });

  it('gives what it was made from alone, and 304 while nothing is new', async () => {
    const url = `/shows/${judged.showId}?as=answers`;
    const first = await service.app.inject(url);
    const { given, version } = first.json();
    expect(given.board.show.name).toBe('Larch Valley Spring Show');
    const again = await service.app.inject({ url, headers: { 'if-none-match': version } });
    expect(again.statusCode).toBe(304);
  });

  it('lets no search engine keep it, and asks nobody else', async () => {
    const { body, headers } = await service.app.inject(`/shows/${judged.showId}`);
    expect(body).toContain('<meta name="robots" content="noindex"/>');
    expect(headers['content-security-policy']).toContain("default-src 'none'");
    expect(headers['content-security-policy']).not.toContain('unsafe');
  });
});

describe('names that are written to break a page', () => {
  const evil = '</script><script>window.broken = true</script><img src=x onerror="window.broken = true">';

  it('stand on it as they were written, and run nothing', async () => {
    const { prisma } = service.parts.db;
    const named = await setUpJudgedClass(service);
    await named.sign(0, goesOf(['1', '1', '1'], ['0', '0', '0'], ['-1', '0', '0']));
    await prisma.showClass.update({ where: { id: named.classId }, data: { name: evil } });
    await prisma.exhibitor.updateMany({ where: { showId: named.showId }, data: { name: evil } });
    await prisma.horse.updateMany({ where: { showId: named.showId }, data: { name: evil } });
    expect((await named.publish('provisional')).status).toBe(201);
    const desk = await openDesk(browser);
    const page = await desk.newPage();
    for (const path of ['', '/classes/1', '/screen']) {
      await page.goto(`${service.address}/shows/${named.showId}${path}`);
      if (path === '/screen') {
        await see(page.locator('.slide')).toHaveCount(1);
        // From now to next to what was posted.
        for (const _ of ['next', 'posted']) await page.keyboard.press('ArrowRight');
      }
      await see(page.getByText('window.broken').first()).toBeVisible();
      expect(await page.evaluate(() => 'broken' in window)).toBe(false);
      expect(await page.locator('img').count()).toBe(0);
    }
    await desk.close();
  });

  it('and what a reader asks for is given back as words', async () => {
    const url = `/shows/${judged.showId}/find?words=${encodeURIComponent(evil)}&${encodeURIComponent(evil)}=1`;
    const { body, statusCode } = await service.app.inject(url);
    expect(statusCode).toBe(200);
    expect(body).not.toContain('<script>window');
    expect(body).not.toContain('<img');
  });
});

describe('the limit of an address', () => {
  it('counts a page and each question that it asks, says in words when it is reached, and is one reader’s own', async () => {
    const limited = await buildTestApp({ beside: service, environment: { REQUESTS_PER_MINUTE: '10' } });
    const ask = (remoteAddress: string) =>
      limited.app.inject({ url: `/shows/${judged.showId}`, remoteAddress });
    // The page and its board: two each time.
    const statuses: number[] = [];
    for (let view = 0; view < 6; view += 1) statuses.push((await ask('192.0.2.1')).statusCode);
    expect(statuses).toEqual([200, 200, 200, 200, 200, 429]);
    const refused = await ask('192.0.2.1');
    expect(refused.headers['content-type']).toContain('text/html');
    expect(Number(refused.headers['retry-after'])).toBeGreaterThan(0);
    expect(refused.body).toContain('Too much was asked from here');
    expect((await ask('192.0.2.2')).statusCode).toBe(200);
    await limited.close();
  });

  it('holds within a page too: what was asked for it in vain is no missing page', async () => {
    const limited = await buildTestApp({ beside: service, environment: { REQUESTS_PER_MINUTE: '3' } });
    const answer = await limited.app.inject(`/shows/${judged.showId}/classes/1`);
    expect(answer.statusCode).toBe(429);
    expect(answer.headers['content-type']).toContain('text/html');
    await limited.close();
  });
});

describe('a service in trouble', () => {
  it('says so in words, and nothing of what failed', async () => {
    const broken = await buildTestApp();
    const { showId } = await setUpJudgedClass(broken);
    await withClient(broken.ownerUrl, (client) => client.query('ALTER TABLE show_class RENAME TO gone'));
    const answer = await broken.app.inject(`/shows/${showId}`);
    expect(answer.statusCode).toBe(500);
    expect(answer.headers['content-type']).toContain('text/html');
    expect(answer.body).toContain('The service is in trouble');
    expect(answer.body).not.toMatch(/show_class|relation|at .+\.ts/);
    await broken.close();
  });
});
