/** Where the build leaves the pages, and which script and styles belong to which of them. */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const checkout = new URL('../../../', import.meta.url);

/** The folder of the build; a build elsewhere is named by the environment, for whoever works on a page. */
export const pagesOfBuild = (): string =>
  process.env.BUILT_PAGES ?? fileURLToPath(new URL('dist/web', checkout));

interface BuiltFile {
  readonly file: string;
  readonly css?: readonly string[];
  readonly imports?: readonly string[];
}

export interface PageAssets {
  /** Address of the script; `undefined`: the pages are not built. */
  readonly script: string | undefined;
  /** What the script will ask for at once. */
  readonly preloads: readonly string[];
  readonly styles: readonly string[];
  /** Address of another file of the build, by its source below `src/web/`: `words/de/board.ftl?raw`. */
  readonly addressOf: (source: string) => string | undefined;
}

const notBuilt: PageAssets = { script: undefined, preloads: [], styles: [], addressOf: () => undefined };

/** `entry`: as the build knows it, below `src/web/`: `board/main.tsx`. Read once, at the start. */
export function assetsOf(entry: string, folder = pagesOfBuild()): PageAssets {
  const listed = join(folder, 'assets.json');
  if (!existsSync(listed)) return notBuilt;
  const files = JSON.parse(readFileSync(listed, 'utf8')) as Record<string, BuiltFile>;
  const main = files[entry];
  if (main === undefined) return notBuilt;
  const parts = withImports(main, files);
  const address = (file: string) => `/${file}`;
  return {
    script: address(main.file),
    preloads: parts.slice(1).map(({ file }) => address(file)),
    styles: [...new Set(parts.toReversed().flatMap(({ css = [] }) => css))].map(address),
    addressOf: (source) => {
      const built = files[source];
      return built === undefined ? undefined : address(built.file);
    },
  };
}

/** It and all it imports, itself first, each once. */
function withImports(main: BuiltFile, files: Readonly<Record<string, BuiltFile>>): BuiltFile[] {
  const found = new Set<BuiltFile>([main]);
  for (const { imports = [] } of found) {
    for (const name of imports) {
      const part = files[name];
      if (part !== undefined) found.add(part);
    }
  }
  return [...found];
}
