/** The published cases of this folder, as data. Each names its source and address. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const caseFolder = fileURLToPath(new URL('.', import.meta.url));

/** A case in the contest form: what `tabulate` reads, and what it must say. */
export interface ContestCase {
  readonly file: string;
  readonly path: string;
  readonly text: string;
  readonly source: string;
  readonly address: string;
  readonly expected: {
    readonly places: Readonly<Record<string, number>>;
    readonly totals?: Readonly<Record<string, string>>;
  };
}

/** Every file of the folder that has cards; the others describe a piece of arithmetic and have tests of their own. */
export function contestCases(): ContestCase[] {
  return jsonFiles().flatMap((file) => {
    const path = join(caseFolder, file);
    const text = readFileSync(path, 'utf8');
    const written = JSON.parse(text);
    return 'cards' in written ? [{ ...written, file, path, text }] : [];
  });
}

/** One file of the folder by the number that it begins with. */
export function caseNumbered<T>(number: number): T {
  const file = jsonFiles().find((name) => name.startsWith(`${String(number).padStart(2, '0')}-`));
  if (file === undefined) throw new RangeError(`no published case ${number}`);
  return JSON.parse(readFileSync(join(caseFolder, file), 'utf8'));
}

const jsonFiles = () => readdirSync(caseFolder).filter((name) => name.endsWith('.json'));
