/** Message files as a test looks at them: what each message is made of. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { FluentResource } from '@fluent/bundle';

/** Folders that hold one folder for each language. */
export const wordFolders = ['src/engine/sentences/words', 'src/web/words'] as const;
export type WordFolder = (typeof wordFolders)[number];

const at = (path: string) => fileURLToPath(new URL(`../../${path}`, import.meta.url));

export const languagesIn = (folder: WordFolder): string[] => readdirSync(at(folder)).sort();

export const filesIn = (folder: WordFolder, language: string): string[] =>
  readdirSync(join(at(folder), language)).sort();

export const textOf = (folder: WordFolder, language: string, file: string): string =>
  readFileSync(join(at(folder), language, file), 'utf8');

/** What is read out of a pattern: `$judge`, other messages, functions. */
export interface Message {
  readonly id: string;
  readonly attributes: readonly string[];
  readonly variables: readonly string[];
  /** Messages that it is made of. */
  readonly refers: readonly string[];
}

export function messagesIn(text: string): Message[] {
  return new FluentResource(text).body.map(({ id, attributes, ...rest }) => {
    const parts = partsOf([rest, attributes]);
    return {
      id,
      attributes: Object.keys(attributes).sort(),
      variables: [...new Set(parts.filter(({ type }) => type === 'var').map(({ name }) => name))].sort(),
      refers: [...new Set(parts.filter(({ type }) => type === 'mesg').map(({ name }) => name))],
    };
  });
}

interface Part {
  readonly type: string;
  readonly name: string;
}

/** All that has a type and a name, however deep it stands. */
function partsOf(node: unknown): Part[] {
  if (typeof node !== 'object' || node === null) return [];
  const below = Object.values(node).flatMap(partsOf);
  return isPart(node) ? [node, ...below] : below;
}

const isPart = (node: object): node is Part =>
  'type' in node && typeof node.type === 'string' && 'name' in node && typeof node.name === 'string';
