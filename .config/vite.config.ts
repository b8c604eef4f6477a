/** The pages: one folder under `src/web/` each, with its `index.html`; built into `dist/web/` by `prepare.mjs`. */
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';

const root = fileURLToPath(new URL('../src/web', import.meta.url));

/** `pair` -> `src/web/pair/index.html` */
const pages = Object.fromEntries(
  readdirSync(root)
    .map((name) => [name, join(root, name, 'index.html')] as const)
    .filter(([, file]) => existsSync(file)),
);

export default defineConfig({
  root,
  publicDir: false,
  logLevel: 'warn',
  build: {
    outDir: fileURLToPath(new URL('../dist/web', import.meta.url)),
    emptyOutDir: true,
    // Phones are kept for years: what Safari 16 and the browsers of 2022 can do.
    target: ['es2022', 'safari16'],
    // The pages forbid themselves everything that is written inside them (`data:` too).
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    rolldownOptions: { input: pages },
  },
});
