/** What the code asks for is there, and what is there is asked for: an id with a slip in it would never be noticed. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { filesIn, messagesIn, textOf } from './message-files.ts';

const folder = 'src/engine/sentences/words';
const messages = filesIn(folder, 'en').flatMap((file) => messagesIn(textOf(folder, 'en', file)));
const ids = messages.map(({ id }) => id);

const source = fileURLToPath(new URL('../../src', import.meta.url));
const code = readdirSync(source, { recursive: true, encoding: 'utf8' })
  .filter((file) => /\.tsx?$/.test(file) && !file.includes('generated'))
  .map((file) => readFileSync(join(source, file), 'utf8'));

/** `'merge-mean'`, `'list-and'` */
const literals = new Set(
  code.flatMap((text) => [...text.matchAll(/'([a-z][\w-]*)'/gi)].map(([, id = '']) => id)),
);

/** `rule-${merge.method}` and what stands after it, as the beginning and the end of ids. */
const asked = code.flatMap((text) =>
  [...text.matchAll(/\bspeech\.(?:say|find)\(\s*`([^`]*)`/g)].map(([, template = '']) => template),
);
const patterns = asked.map((template) => new RegExp(`^${template.replaceAll(/\$\{[^}]*\}/g, '.+')}$`));

test('every message is asked for by the code, or by another message', () => {
  const referred = new Set(messages.flatMap(({ refers }) => refers));
  const unused = ids.filter(
    (id) => !literals.has(id) && !referred.has(id) && !patterns.some((pattern) => pattern.test(id)),
  );
  expect(unused).toEqual([]);
});

test('every message that is asked for by its whole id is there', () => {
  const whole = code.flatMap((text) =>
    [...text.matchAll(/\bspeech\.say\(\s*'([^']+)'/g)].map(([, id = '']) => id),
  );
  expect(whole.length).toBeGreaterThan(50);
  expect(whole.filter((id) => !ids.includes(id))).toEqual([]);
});

test('every beginning of an id has messages', () => {
  expect(patterns.length).toBeGreaterThan(10);
  const without = patterns.filter((pattern) => !ids.some((id) => pattern.test(id)));
  expect(without).toEqual([]);
});
