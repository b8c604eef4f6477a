/**
 * From the tap on a mark to its total on the screen, on the judge's page with 60 entries, the processor slowed down four
 * times: the tap is in IndexedDB before the screen changes. Beside a bare page whose button keeps a record as durably
 * and then changes a text.
 */
import { existsSync } from 'node:fs';
import { type Browser, chromium, type Page } from 'playwright-core';
import { type BenchService, say } from './bench-service.ts';
import { type BenchShow, setUpBenchShow } from './bench-show.ts';
import { quantile } from './compare.ts';

const slowDown = 4;
const taps = 40;
const entries = 60;

export async function markInBrowser(bench: BenchService): Promise<void> {
  const executablePath = process.env.CHROMIUM ?? '/usr/bin/chromium';
  if (!existsSync(executablePath))
    return say('no Chromium is here, so no mark is measured; name one by CHROMIUM');
  const show = await setUpBenchShow(bench, { entries, classes: [{ entries, judges: 1 }] });
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
  try {
    const page = await judgesPage(browser, { bench, show });
    const bare = await barePage(browser, bench);
    print({ ours: await tapOurs(page, show), yardstick: await tapBare(bare) });
  } finally {
    await browser.close();
  }
}

/** Her phone, paired by a code like any other. */
async function judgesPage(
  browser: Browser,
  { bench, show }: { readonly bench: BenchService; readonly show: BenchShow },
): Promise<Page> {
  const { address, api, office: as } = bench;
  const { body: people } = await api.ask<{ items: { id: string }[] }>({
    ...{ method: 'GET', path: `/shows/${show.showId}/people`, as },
  });
  const { body: invitation } = await api.ask<{ code: string }>({
    ...{ method: 'POST', path: `/shows/${show.showId}/invitations`, as },
    body: { role: 'judge', personId: people.items[0]?.id },
  });
  const page = await slowPage(browser);
  await page.goto(`${address}/pair#${invitation.code}`);
  await page.locator('#pair').click();
  await page.getByRole('link', { name: 'To the classes' }).click();
  await page.locator('.classes').waitFor();
  return page;
}

async function slowPage(browser: Browser): Promise<Page> {
  const phone = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, locale: 'en-US' };
  const context = await browser.newContext({ ...phone, serviceWorkers: 'block' });
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: slowDown });
  return page;
}

/** Half points for every maneuver, one go after another; each changes the total. */
async function tapOurs(page: Page, show: BenchShow): Promise<number[]> {
  const [ready] = show.classes;
  if (ready === undefined) throw new Error('a show without its class');
  const milliseconds: number[] = [];
  for (const classEntryId of ready.classEntries.values()) {
    if (milliseconds.length >= taps) break;
    await page.goto(new URL(`/judge/classes/${ready.id}/goes/${classEntryId}`, page.url()).href);
    await page.locator('.marks button').first().waitFor();
    for (let maneuver = 0; maneuver < maneuversOfClass && milliseconds.length < taps; maneuver += 1) {
      const tap = { button: '.marks button[aria-label="plus one half"]', shows: '.total .sum dd' };
      milliseconds.push(await page.evaluate(fromTapToPaint, tap));
    }
  }
  return milliseconds;
}

/** As many as the classes of the large show have. */
const maneuversOfClass = 6;

/** The least that a page can do which keeps a record for good before it shows it. */
const bareHtml = `<!doctype html><title>bare</title><button>+</button><output>0</output><script>
  const asked = indexedDB.open('bare', 1);
  asked.onupgradeneeded = () => asked.result.createObjectStore('marks');
  asked.onsuccess = () => {
    const [button, output] = [document.querySelector('button'), document.querySelector('output')];
    button.onclick = () => {
      const kept = asked.result.transaction('marks', 'readwrite', { durability: 'strict' });
      kept.objectStore('marks').put({ mark: '0.5' }, output.textContent);
      kept.oncomplete = () => { output.textContent = String(Number(output.textContent) + 1); };
    };
    document.body.dataset.ready = 'yes';
  };
</script>`;

async function barePage(browser: Browser, { address }: BenchService): Promise<Page> {
  const page = await slowPage(browser);
  await page.route('**/bare', (route) => route.fulfill({ contentType: 'text/html', body: bareHtml }));
  await page.goto(`${address}/bare`);
  await page.locator('body[data-ready]').waitFor();
  return page;
}

async function tapBare(page: Page): Promise<number[]> {
  const milliseconds: number[] = [];
  for (let tap = 0; tap < taps; tap += 1) {
    milliseconds.push(await page.evaluate(fromTapToPaint, { button: 'button', shows: 'output' }));
  }
  return milliseconds;
}

interface Tap {
  readonly button: string;
  /** Whose text the tap changes. */
  readonly shows: string;
}

/** Runs in the page: from the tap until the frame is painted in which the text has changed. */
async function fromTapToPaint({ button, shows }: Tap): Promise<number> {
  const [key, shown] = [document.querySelector<HTMLElement>(button), document.querySelector(shows)];
  if (key === null || shown === null) throw new Error(`the page lacks ${button} or ${shows}`);
  const before = shown.textContent;
  const begun = performance.now();
  key.click();
  return new Promise((resolve) => {
    const look = () => {
      if (document.querySelector(shows)?.textContent === before) return requestAnimationFrame(look);
      // A task after the frame's callbacks runs when the frame has been handed on to be painted.
      return setTimeout(() => resolve(performance.now() - begun));
    };
    requestAnimationFrame(look);
  });
}

function print({
  ours,
  yardstick,
}: {
  readonly ours: readonly number[];
  readonly yardstick: readonly number[];
}): void {
  const line = (all: readonly number[]) =>
    [0.5, 0.75, 0.95].map((at) => `${quantile(all, at).toFixed(1)} ms`).join(', ');
  const ratio = quantile(ours, 0.5) / quantile(yardstick, 0.5);
  console.log(
    `\nA mark, from the tap to the paint (${entries} entries, ${slowDown} x slow-down, ${taps} taps; median, 75 %, 95 %)\n`,
  );
  console.log(`the judge's page         ${line(ours)}`);
  console.log(`a bare page, as durable  ${line(yardstick)}`);
  console.log(`ratio of the medians     ${ratio.toFixed(2)}`);
}
