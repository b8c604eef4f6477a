/** The page on which a phone is paired: as it is built and served, and what it says. */
import { readFileSync } from 'node:fs';
import request from 'supertest';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { asWritten, codeInLink, isWhole } from '../../src/web/pair/code.ts';
import { seatInWords, showInWords, whoInWords } from '../../src/web/pair/who.ts';
import { problemIn } from '../../src/web/shared/problem-words.ts';
import { type Language, makeWords } from '../../src/web/shared/words.tsx';
import { buildTestApp, type TestApp } from '../support/test-app.ts';

let tested: TestApp;
let html: string;

beforeAll(async () => {
  tested = await buildTestApp();
  const page = await request(tested.app.server).get('/pair');
  html = page.text;
});
afterAll(() => tested.close());

const get = (path: string) => request(tested.app.server).get(path);
const assets = () => [...html.matchAll(/(?:src|href)="(\/assets\/[^"]+)"/g)].map(([, path = '']) => path);

describe('the page /pair, as it is served', () => {
  it('is HTML that nobody keeps, so that it always names the assets that are there', async () => {
    const page = await get('/pair');
    expect(page.status).toBe(200);
    expect(page.headers['content-type']).toBe('text/html; charset=utf-8');
    expect(page.headers['cache-control']).toBe('no-store');
  });

  it('may run its own files and nothing else: no inline script, no other host, no frame around it', async () => {
    const policy = String((await get('/pair')).headers['content-security-policy']);
    const rules = new Map(policy.split('; ').map((rule) => [rule.split(' ')[0], rule]));
    expect(rules.get('default-src')).toBe("default-src 'none'");
    expect(rules.get('object-src')).toBe("object-src 'none'");
    expect(rules.get('script-src')).toBe("script-src 'self'");
    expect(rules.get('style-src')).toBe("style-src 'self'");
    expect(rules.get('connect-src')).toBe("connect-src 'self'");
    expect(rules.get('frame-ancestors')).toBe("frame-ancestors 'none'");
    expect(rules.get('base-uri')).toBe("base-uri 'none'");
    expect(policy).not.toContain('unsafe');
  });

  it('has nothing in it that its own policy would forbid', () => {
    expect(html).not.toMatch(/<script(?![^>]*\ssrc=)/);
    expect(html).not.toMatch(/<style|\sstyle=|\son[a-z]+=/i);
    expect(html).not.toMatch(/(?:src|href)="(?!\/assets\/)/);
  });

  it('says in both languages what it needs where scripts are switched off', () => {
    expect(html).toContain('<html lang="en">');
    expect(html).toContain('This page needs JavaScript.');
    expect(html).toContain('<span lang="de">Diese Seite braucht JavaScript.');
  });

  it('names assets that are there, each with a hash in its name and kept for ever', async () => {
    expect(assets().length).toBeGreaterThan(2);
    for (const path of assets()) {
      const asset = await get(path);
      expect(`${path} ${asset.status}`).toBe(`${path} 200`);
      expect(path).toMatch(/-[\w-]{8}\.(js|css|svg|png|webmanifest)$/);
      expect(asset.headers['cache-control']).toBe('public, max-age=31536000, immutable');
      expect(asset.headers['x-content-type-options']).toBe('nosniff');
    }
  });

  it('leads to no other file of the disk, however it is asked', async () => {
    const tries = ['/assets/', '/assets/../pair/index.html', '/assets/%2e%2e%2f%2e%2e%2fpackage.json'];
    for (const path of [...tries, '/assets/..%5c..%5cpackage.json', '/web.sha256']) {
      const answer = await get(path);
      expect(`${path} ${answer.status} ${answer.body.code}`).toBe(`${path} 404 route_not_found`);
    }
  });

  it('is only read: another method is refused', async () => {
    const answer = await request(tested.app.server).post('/pair').send({});
    expect([answer.status, answer.body.code]).toEqual([405, 'method_not_allowed']);
  });
});

describe('the code, as a person types it', () => {
  it('is written with a hyphen in the middle, in capital letters', () => {
    expect(asWritten('xk7p4m2q')).toBe('XK7P-4M2Q');
    expect(asWritten(' xk7p - 4m2q ')).toBe('XK7P-4M2Q');
    expect(asWritten('xk7')).toBe('XK7');
    expect(asWritten('xk7p4')).toBe('XK7P-4');
    expect(asWritten('XK7P-4M2Q-AND-MORE')).toBe('XK7P-4M2Q');
  });

  it('is whole with eight signs', () => {
    expect(isWhole('XK7P-4M2Q')).toBe(true);
    expect(isWhole('XK7P-4M2')).toBe(false);
    expect(isWhole('')).toBe(false);
  });

  it('is taken out of a link, also where a messenger has rewritten it', () => {
    expect(codeInLink('#XK7P-4M2Q')).toBe('XK7P-4M2Q');
    expect(codeInLink('#xk7p%2D4m2q')).toBe('XK7P-4M2Q');
    expect(codeInLink('')).toBe('');
    expect(codeInLink('#%')).toBe('');
  });
});

const wordsIn = (language: Language) =>
  makeWords(
    language,
    ['shared', 'pair'].map((topic) =>
      readFileSync(new URL(`../../src/web/words/${language}/${topic}.ftl`, import.meta.url), 'utf8'),
    ),
  );
const [english, german] = [wordsIn('en'), wordsIn('de')];

const phone = {
  role: 'judge' as const,
  label: null,
  judge: { name: 'Ada Example' },
  show: { name: 'Invented Show', kind: 'official' as const },
};
const seat = { state: 'under-way', withdrawn: false, signedRevision: null };

describe('what a paired phone says', () => {
  it('is whose it is', () => {
    expect(whoInWords(phone, english)).toBe('This phone is Judge Ada Example’s');
    expect(whoInWords({ ...phone, role: 'scribe' }, english)).toBe('This phone writes for Judge Ada Example');
    const gate = { role: 'gate' as const, judge: null, label: 'Ring 2 gate' };
    expect(whoInWords(gate, english)).toBe('This phone is at the gate: Ring 2 gate');
    expect(whoInWords(phone, german)).toBe('Dieses Telefon gehört zu Richter Ada Example');
  });

  it('tells a rehearsal from the show', () => {
    const practice = { show: { ...phone.show, kind: 'practice' as const } };
    expect(showInWords(phone, english)).toBe('for Invented Show');
    expect(showInWords(practice, english)).toBe('for practice: Invented Show');
    expect(showInWords(practice, german)).toBe('zur Übung: Invented Show');
  });

  it('is where each class stands, and whether its card is signed', () => {
    expect(seatInWords(seat, english)).toBe('under way');
    const signed = { ...seat, state: 'official', signedRevision: 1 };
    expect(seatInWords(signed, english)).toBe('official; the card is signed');
    expect(seatInWords(signed, german)).toBe('amtlich; der Bogen ist unterschrieben');
    expect(seatInWords({ ...seat, withdrawn: true }, english)).toBe('this judge left the panel');
    expect(seatInWords({ ...seat, state: 'of-tomorrow' }, english)).toBe('of tomorrow');
  });
});

describe('what the service refused', () => {
  it('is read with its code, by which the page says it', async () => {
    const publicKey = { kty: 'EC', crv: 'P-256', x: 'A'.repeat(43), y: 'A'.repeat(43) };
    const body = { code: 'XK7P-4M2Q', publicKey };
    const answer = await request(tested.app.server).post('/v1/pairings').send(body);
    const problem = await problemIn(new Response(answer.text, { status: answer.status }));
    expect(problem.code).toBe('proof_missing');
  });

  it('has a code too where something between phone and service answered', async () => {
    const problem = await problemIn(new Response('<h1>Bad gateway</h1>', { status: 502 }));
    expect(problem.code).toBe('no_problem_details');
  });
});
