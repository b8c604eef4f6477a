/**
 * What makes the pages of a phone installable and lets them open with no network: `sw.js`, which knows every file that
 * they may ask for, a web app manifest, and icons drawn from the one icon there is. A worker of our own over the list of
 * the build is a hundred lines; the usual plugin brings hundreds of packages for the same.
 */
import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';
import { build, type Plugin, type Rolldown } from 'vite';
import type { KeptFile } from '../src/web/worker/kept-file.ts';

/** Pages that are opened where there may be no signal. */
const pagesOfPhones = ['judge', 'pair', 'gate'];

/** Pages that may be put on the home screen; what is put there opens as `/judge`. */
const pagesToInstall = ['judge', 'pair'];

const source = (path: string): string => fileURLToPath(new URL(`../src/web/${path}`, import.meta.url));

type Output = Rolldown.OutputBundle;

interface Icon {
  readonly file: string;
  readonly size: number;
  readonly bytes: Buffer;
}

export function keptPages(): Plugin {
  let icons: readonly Icon[] = [];
  let manifest = { file: '', text: '' };
  return {
    name: 'kept-pages',
    apply: 'build',
    async buildStart() {
      icons = await Promise.all([180, 192, 512].map(drawIcon));
      const text = JSON.stringify(manifestWith(icons), null, 2);
      manifest = { file: `assets/judge-${hashOf(Buffer.from(text)).slice(0, 8)}.webmanifest`, text };
    },
    transformIndexHtml: {
      order: 'post',
      handler(_html, { filename }) {
        if (!pagesToInstall.some((page) => filename.endsWith(`/${page}/index.html`))) return undefined;
        const link = (rel: string, href: string) => ({
          tag: 'link',
          attrs: { rel, href },
          injectTo: 'head' as const,
        });
        const touch = icons.find(({ size }) => size === 180);
        return [
          link('manifest', `/${manifest.file}`),
          ...(touch === undefined ? [] : [link('apple-touch-icon', `/${touch.file}`)]),
        ];
      },
    },
    generateBundle() {
      for (const { file, bytes } of icons) this.emitFile({ type: 'asset', fileName: file, source: bytes });
      this.emitFile({ type: 'asset', fileName: manifest.file, source: manifest.text });
    },
    async writeBundle({ dir = '' }, bundle) {
      const files = filesToKeep(bundle, dir);
      if (files.length > 0) writeFileSync(join(dir, 'sw.js'), await workerFor(files));
    },
  };
}

/** With room around it: a launcher cuts icons into the shape that it likes. */
async function drawIcon(size: number): Promise<Icon> {
  const inner = Math.round(size * 0.8);
  const drawn = await sharp(readFileSync(source('shared/icon.svg')), { density: 1_200 })
    .resize(inner)
    .png()
    .toBuffer();
  const bytes = await sharp({ create: { width: size, height: size, channels: 3, background: '#fffdf7' } })
    .composite([{ input: drawn }])
    .png({ compressionLevel: 9 })
    .toBuffer();
  return { file: `assets/icon-${size}-${hashOf(bytes).slice(0, 8)}.png`, size, bytes };
}

const manifestWith = (icons: readonly Icon[]) => ({
  id: '/judge',
  name: 'Ringledger',
  short_name: 'Ringledger',
  start_url: '/judge',
  scope: '/',
  display: 'standalone',
  background_color: '#f8f4ea',
  theme_color: '#f8f4ea',
  icons: icons
    .filter(({ size }) => size !== 180)
    .map(({ file, size }) => ({
      ...{ src: `/${file}`, sizes: `${size}x${size}`, type: 'image/png', purpose: 'any maskable' },
    })),
});

/** The pages, and all that they may ask for later: every language, every screen. */
function filesToKeep(bundle: Output, dir: string): KeptFile[] {
  const chunks = Object.values(bundle).filter((file) => file.type === 'chunk');
  const pages = pagesOfPhones.filter((page) => `${page}/index.html` in bundle);
  const names = new Set<string>();
  for (const page of pages) {
    const main = chunks.find((chunk) => chunk.facadeModuleId?.endsWith(`/${page}/index.html`));
    if (main !== undefined) addWithImports(main, { bundle, names });
  }
  const kept = (file: string, address: string, isPage: boolean): KeptFile => ({
    ...{ address, hash: hashOf(readFileSync(join(dir, file))), isPage },
  });
  return [
    ...pages.map((page) => kept(`${page}/index.html`, `/${page}`, true)),
    ...[...names].sort().map((name) => kept(name, `/${name}`, false)),
    ...Object.keys(bundle)
      .filter((name) => /^assets\/(icon-.*\.(png|svg)|.*\.webmanifest)$/.test(name))
      .map((name) => kept(name, `/${name}`, false)),
  ];
}

function addWithImports(
  chunk: Rolldown.OutputChunk,
  found: { readonly bundle: Output; readonly names: Set<string> },
): void {
  const { bundle, names } = found;
  if (names.has(chunk.fileName) || isWordsOfOthers(chunk)) return;
  names.add(chunk.fileName);
  for (const file of chunk.viteMetadata?.importedCss ?? []) names.add(file);
  for (const file of chunk.viteMetadata?.importedAssets ?? []) names.add(file);
  for (const name of [...chunk.imports, ...chunk.dynamicImports]) {
    const next = bundle[name];
    if (next?.type === 'chunk') addWithImports(next, found);
  }
}

/** Every page can load every file of words; a phone keeps those that it shows. */
const isWordsOfOthers = ({ facadeModuleId }: Rolldown.OutputChunk): boolean =>
  /\/src\/web\/words\/[a-z]+\/(?!(shared|problems|judge|pair|gate)[\w-]*\.ftl)/.test(facadeModuleId ?? '');

/** One plain script: a worker that needs a module loader does not start in every browser. */
async function workerFor(files: readonly KeptFile[]): Promise<string> {
  const name = hashOf(Buffer.from(JSON.stringify(files))).slice(0, 16);
  const built = await build({
    configFile: false,
    logLevel: 'warn',
    define: { filesOfBuild: JSON.stringify(files), nameOfBuild: JSON.stringify(name) },
    build: {
      write: false,
      target: ['es2022', 'safari16.4'],
      lib: { entry: source('worker/worker.ts'), formats: ['iife'], name: 'worker' },
    },
  });
  const outputs = [built].flat().flatMap((one) => ('output' in one ? one.output : []));
  const [worker] = outputs.filter((one) => one.type === 'chunk');
  if (worker === undefined) throw new Error('the worker was not built');
  return worker.code;
}

const hashOf = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');
