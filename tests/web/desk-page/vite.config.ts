/** The page as `.config/vite.config.ts` would build it; `WORD_OF_BUILD` makes one build differ from another. */
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';
import { keptPages } from '../../../.config/kept-pages.ts';

const root = fileURLToPath(new URL('.', import.meta.url));

export default defineConfig({
  root,
  publicDir: false,
  logLevel: 'error',
  plugins: [keptPages()],
  define: { wordOfBuild: JSON.stringify(process.env.WORD_OF_BUILD ?? 'first') },
  build: {
    emptyOutDir: true,
    target: 'es2022',
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    rolldownOptions: { input: { judge: `${root}judge/index.html` } },
  },
});
