/**
 * Run before every command of package.json, with plain Node.js and no package: installs the packages and
 * generates the database client and builds the pages where that is needed, says what it does, and is quick where
 * nothing is needed.
 * All words go to stderr, so that a command's own output stays clean.
 */
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const checkout = fileURLToPath(new URL('..', import.meta.url));
const at = (...parts) => join(checkout, ...parts);

const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
if (major < 20 || (major === 20 && minor < 19)) {
  console.error(`Ringledger needs Node.js 20.19 or newer; this is ${process.versions.node}.`);
  process.exit(1);
}

if (!packagesAreInstalled()) {
  console.error('Installing the packages (npm ci) ...');
  run('npm', ['ci', '--include=dev', '--no-audit', '--no-fund', '--loglevel=error'], 'npm ci');
}
whenChanged(at('src', 'platform', 'generated', 'schema.sha256'), schemaHash(), generateClient);
whenChanged(at('src', 'web', 'shared', 'generated', 'api.sha256'), apiHash(), generateApiTypes);
whenChanged(at('dist', 'web.sha256'), pagesHash(), buildPages);

/** Does the work where the stamp of the last time is not that of the present sources. */
function whenChanged(stamp, hash, work) {
  if (existsSync(stamp) && readFileSync(stamp, 'utf8') === hash) return;
  work();
  mkdirSync(dirname(stamp), { recursive: true });
  writeFileSync(stamp, hash);
}

function generateClient() {
  console.error('Generating the database client (prisma generate) ...');
  const prisma = at('node_modules', 'prisma', 'build', 'index.js');
  run(
    process.execPath,
    [prisma, 'generate', '--config', at('.config', 'prisma.config.ts')],
    'prisma generate',
  );
}

/** What the service answers, as types for the pages. */
function generateApiTypes() {
  console.error('Generating the types of the API for the pages (openapi-typescript) ...');
  const generator = at('node_modules', 'openapi-typescript', 'bin', 'cli.js');
  const types = at('src', 'web', 'shared', 'generated', 'api.ts');
  run(process.execPath, [generator, at('api-docs', 'openapi.json'), '-o', types], 'openapi-typescript');
}

/** Built beside and then put in place, so that a build that fails leaves the pages as they were. */
function buildPages() {
  console.error('Building the pages (vite build) ...');
  const [built, beside] = [at('dist', 'web'), at('dist', `web-${process.pid}`)];
  const vite = at('node_modules', 'vite', 'bin', 'vite.js');
  const config = ['--config', at('.config', 'vite.config.ts'), '--outDir', beside];
  run(process.execPath, [vite, 'build', ...config], 'vite build');
  rmSync(built, { recursive: true, force: true });
  renameSync(beside, built);
}

/** The packages on disk are those of the lock file; one for another kind of machine may be left out. */
function packagesAreInstalled() {
  const installed = packagesOf(at('node_modules', '.package-lock.json'));
  const wanted = packagesOf(at('package-lock.json'));
  if (installed === undefined || wanted === undefined) return false;
  return Object.entries(wanted).every(
    ([path, { version, optional }]) =>
      path === '' || (path in installed ? installed[path].version === version : optional === true),
  );
}

function packagesOf(file) {
  return existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')).packages : undefined;
}

function schemaHash() {
  const hash = createHash('sha256').update(readFileSync(at('prisma', 'schema.prisma')));
  return hash.update(readFileSync(at('node_modules', 'prisma', 'package.json'))).digest('hex');
}

function apiHash() {
  const hash = createHash('sha256').update(readFileSync(at('api-docs', 'openapi.json')));
  return hash.update(readFileSync(at('node_modules', 'openapi-typescript', 'package.json'))).digest('hex');
}

/** What the pages are built from: their own sources, and what they share with the service. */
function pagesHash() {
  const hash = createHash('sha256');
  for (const room of ['web', 'phone', 'evidence', 'engine']) {
    for (const file of filesBelow(at('src', room))) hash.update(file).update(readFileSync(file));
  }
  for (const file of [at('.config', 'vite.config.ts'), at('package-lock.json')]) {
    hash.update(readFileSync(file));
  }
  return hash.digest('hex');
}

function filesBelow(folder) {
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();
}

function run(command, args, name) {
  const env = { ...process.env, CHECKPOINT_DISABLE: '1', PRISMA_HIDE_UPDATE_MESSAGE: '1' };
  const { status, stdout, stderr, error } = spawnSync(command, args, {
    cwd: checkout,
    env,
    encoding: 'utf8',
  });
  if (status === 0) return;
  console.error(`${stdout ?? ''}${stderr ?? ''}${error ? error.message : ''}`);
  console.error(`${name} failed; see above.`);
  process.exit(1);
}
