/** What a page weighs on its first load: the scripts that its entry brings with it, gzip as a proxy would send them. */
import { existsSync, readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';

const built = new URL('../../dist/web/', import.meta.url);

interface BuiltFile {
  readonly file: string;
  readonly imports?: readonly string[];
  readonly css?: readonly string[];
}
type Built = Readonly<Record<string, BuiltFile>>;

interface Limit {
  readonly page: string;
  /** As the build knows it. */
  readonly entry: string;
  /** Files of words that it loads, in one language. */
  readonly topics: readonly string[];
  /** Of JavaScript; `undefined`: none was set. */
  readonly mostKilobytes?: number;
}

const limits: readonly Limit[] = [
  { page: 'judge', entry: 'judge/index.html', topics: ['shared', 'judge', 'problems'], mostKilobytes: 90 },
  { page: 'board', entry: 'board/main.tsx', topics: ['shared', 'board'], mostKilobytes: 40 },
  { page: 'exhibitor', entry: 'exhibitor/main.tsx', topics: ['shared', 'exhibitor'] },
  { page: 'gate', entry: 'gate/index.html', topics: ['shared', 'gate', 'problems'] },
  { page: 'office', entry: 'office/index.html', topics: ['shared', 'office', 'problems'] },
  { page: 'pair', entry: 'pair/index.html', topics: ['shared', 'pair'] },
];

export function weighPages(): void {
  const list = new URL('assets.json', built);
  if (!existsSync(list)) throw new Error('the pages are not built');
  const files = JSON.parse(readFileSync(list, 'utf8')) as Built;
  console.log(
    '\nWhat a page weighs on its first load, gzip, in kB of 1000 bytes (JavaScript with the words of one language)\n',
  );
  for (const limit of limits) {
    const parts = partsOf(files, limit);
    const script = kilobytes(parts.map(({ file }) => file));
    const style = kilobytes([...new Set(parts.flatMap(({ css = [] }) => css))]);
    const most = limit.mostKilobytes === undefined ? '' : ` of at most ${limit.mostKilobytes}`;
    console.log(`${limit.page.padEnd(10)} ${script.toFixed(1)}${most}, and ${style.toFixed(1)} of style`);
  }
}

/** The entry, all it imports, and its words. */
function partsOf(files: Built, { entry, topics }: Limit): BuiltFile[] {
  const names = new Set([entry, ...topics.map((topic) => `words/en/${topic}.ftl?raw`)]);
  for (const name of names) for (const next of files[name]?.imports ?? []) names.add(next);
  return [...names].flatMap((name) => files[name] ?? []);
}

function kilobytes(names: readonly string[]): number {
  const bytes = [...new Set(names)].map((name) => gzipSync(readFileSync(new URL(name, built))).length);
  return bytes.reduce((sum, one) => sum + one, 0) / 1_000;
}
