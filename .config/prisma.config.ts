/** Prisma without its native engine: `prisma/schema-engine.mjs` runs its own WASM build. */
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'prisma/config';

const here = (path: string) => fileURLToPath(new URL(`../${path}`, import.meta.url));

process.env.PRISMA_SCHEMA_ENGINE_BINARY ??= here('prisma/schema-engine.mjs');

export default defineConfig({
  schema: here('prisma/schema.prisma'),
  migrations: { path: here('prisma/migrations') },
  datasource: { url: process.env.DATABASE_URL ?? 'postgresql://nowhere.invalid/ringledger' },
});
