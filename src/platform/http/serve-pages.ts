/**
 * The built pages of `dist/web/`. They are read once, when the service starts: a build that happens while it runs
 * cannot leave it with a page whose script is gone, and no address from outside ever becomes a path on the disk.
 */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { extname, join } from 'node:path';
import compress from '@fastify/compress';
import type { FastifyInstance } from 'fastify';
import { pagesOfBuild } from './built-pages.ts';

const nothingBut = [
  "default-src 'none'",
  // It follows from the first; ASVS 5.0, 3.4.3 asks for it by name.
  "object-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' blob:",
  "connect-src 'self'",
  "manifest-src 'self'",
  "worker-src 'self'",
  "base-uri 'none'",
  "frame-ancestors 'none'",
  "require-trusted-types-for 'script'",
];

/** A page brings its own script and style as files and asks nobody but this service. */
export const pagePolicy = [...nothingBut, "form-action 'none'"].join('; ');

/** A page that works without a script too may send a form, to this service only. */
export const renderedPagePolicy = [...nothingBut, "form-action 'self'"].join('; ');

const mediaTypes: Readonly<Record<string, string>> = {
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.webmanifest': 'application/manifest+json',
};

/** `folder`: as the build leaves it, `<page>/index.html` and `assets/`. Without one there are no pages. */
export async function pageRoutes(app: FastifyInstance, { folder = pagesOfBuild() } = {}): Promise<void> {
  if (!existsSync(folder)) {
    app.log.warn('the pages are not built; npm start builds them');
    return;
  }
  // The files are the same for everybody and hold no secret, so their length tells nothing (BREACH).
  await app.register(compress);
  app.addHook('onSend', async (_request, reply) => {
    reply.header('content-security-policy', pagePolicy);
  });
  for (const name of readdirSync(folder)) {
    if (name === 'assets') addAssets(app, join(folder, name));
    else if (name === 'sw.js') addWorker(app, readFileSync(join(folder, name)));
    else if (existsSync(join(folder, name, 'index.html'))) addPage(app, name, join(folder, name));
  }
}

/** A worker fetches files of this service to keep them, and nothing else. */
const workerPolicy = "default-src 'none'; connect-src 'self'";

/**
 * `.config/kept-pages.ts` makes it. Asked for anew each time, so that a newer build is noticed; from the root it may
 * keep pages anywhere.
 */
function addWorker(app: FastifyInstance, bytes: Buffer): void {
  app.get('/sw.js', {
    schema: { hide: true },
    onSend: async (_request, reply) => {
      reply.header('content-security-policy', workerPolicy);
    },
    handler: async (_request, reply) =>
      reply
        .type(mediaTypes['.js'] ?? '')
        .header('cache-control', 'no-cache')
        .send(bytes),
  });
}

/** `/pair` and what is below it. Never kept by a browser, so that it always names the assets that are there. */
function addPage(app: FastifyInstance, name: string, folder: string): void {
  const html = readFileSync(join(folder, 'index.html'));
  for (const address of [`/${name}`, `/${name}/*`]) {
    app.get(address, { schema: { hide: true } }, async (_request, reply) =>
      reply.type('text/html; charset=utf-8').header('cache-control', 'no-store').send(html),
    );
  }
}

/** Their names hold a hash of what is in them, so they may be kept for ever. */
function addAssets(app: FastifyInstance, folder: string): void {
  for (const name of readdirSync(folder)) {
    const type = mediaTypes[extname(name)];
    if (type === undefined) throw new Error(`no media type is known for the built file ${name}`);
    const bytes = readFileSync(join(folder, name));
    if (name.startsWith('icon-192-')) addIconOfBrowsers(app, bytes);
    app.get(`/assets/${name}`, { schema: { hide: true } }, async (_request, reply) =>
      reply.type(type).header('cache-control', 'public, max-age=31536000, immutable').send(bytes),
    );
  }
}

/** Browsers ask for it by this name where no page has told them of an icon: for a picture or an answer of the API. */
function addIconOfBrowsers(app: FastifyInstance, bytes: Buffer): void {
  app.get('/favicon.ico', { schema: { hide: true } }, async (_request, reply) =>
    reply.type('image/png').header('cache-control', 'public, max-age=86400').send(bytes),
  );
}
