/**
 * Finds the Chromium that the tests of the pages need: `CHROMIUM`, or where systems keep one. On Debian as root it is
 * installed where it is missing; elsewhere the run ends and says how.
 */
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import type { TestProject } from 'vitest/node';

declare module 'vitest' {
  interface ProvidedContext {
    /** Path of the browser's program. */
    browserPath: string;
  }
}

/** The shell first: the same engine without a window, and much less to start. */
const usualPlaces = [
  '/usr/bin/chromium-headless-shell',
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/usr/bin/google-chrome-stable',
  '/snap/bin/chromium',
  '/opt/homebrew/bin/chromium',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
];

const howTo =
  'The tests of the pages need Chromium and found none. Install it (Debian and Ubuntu: apt-get install chromium) or name ' +
  'it: CHROMIUM=/path/to/chromium npm test';

export default function setup({ provide }: TestProject): void {
  provide('browserPath', browserHere() ?? installed());
}

function browserHere(): string | undefined {
  const named = process.env.CHROMIUM;
  if (named !== undefined && !existsSync(named))
    throw new Error(`CHROMIUM names ${named}, which is not there.`);
  return named ?? usualPlaces.find(existsSync);
}

function installed(): string {
  if (process.getuid?.() === 0 && existsSync('/usr/bin/apt-get')) {
    console.error('Installing Chromium for the tests of the pages (apt-get install chromium) ...');
    aptGet('update');
    aptGet('install', '--yes', '--no-install-recommends', 'chromium-headless-shell', 'fonts-dejavu-core');
    if (browserHere() === undefined) aptGet('install', '--yes', '--no-install-recommends', 'chromium');
  }
  const found = browserHere();
  if (found === undefined) throw new Error(howTo);
  return found;
}

/** Its failure shows in that no browser is there afterwards. */
function aptGet(...args: string[]): void {
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  spawnSync('apt-get', ['-qq', ...args], { env, stdio: ['ignore', 'ignore', 'inherit'] });
}
