/**
 * The pages: one folder under `src/web/` each. One with an `index.html` is a page of its own; one with only a
 * `main.tsx` brings the script of pages that the service renders (`src/pages/`). Built into `dist/web/` by `prepare.mjs`.
 */
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';
import { keptPages } from './kept-pages.ts';

const root = fileURLToPath(new URL('../src/web', import.meta.url));

/** `PAGES=judge,pair`: only these, for whoever works on one of them. */
const wanted = process.env.PAGES?.split(',');

/** `pair` -> `src/web/pair/index.html` */
const pages = Object.fromEntries(
  readdirSync(root)
    .filter((name) => wanted === undefined || wanted.includes(name))
    .map((name) => [name, ['index.html', 'main.tsx'].map((file) => join(root, name, file)).find(existsSync)])
    .filter((page): page is [string, string] => page[1] !== undefined),
);

export default defineConfig({
  root,
  publicDir: false,
  logLevel: 'warn',
  plugins: [keptPages()],
  build: {
    outDir: fileURLToPath(new URL('../dist/web', import.meta.url)),
    emptyOutDir: true,
    // Phones are kept for years: what Safari 16.4 and the browsers of 2023 can do.
    target: ['es2022', 'safari16.4'],
    // The pages forbid themselves everything that is written inside them (`data:` too).
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    // Which script and style belong to which page.
    manifest: 'assets.json',
    rolldownOptions: { input: pages },
  },
});
