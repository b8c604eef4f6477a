/** Whatever the service refuses is said on the pages in each of their languages. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { problemCatalogue } from '../../src/platform/problems/index.ts';
import { problemInWords } from '../../src/web/shared/problem-words.ts';
import { languages, makeWords } from '../../src/web/shared/words.tsx';

const wordsOf = (language: (typeof languages)[number]) =>
  makeWords(language, [
    readFileSync(new URL(`../../src/web/words/${language}/problems.ftl`, import.meta.url), 'utf8'),
  ]);

describe.each(languages)('refusals in "%s"', (language) => {
  const words = wordsOf(language);

  test('each code of the catalogue has what happened and what to do about it', () => {
    const missing = Object.keys(problemCatalogue).flatMap((code) =>
      [`problem-${code}`, `problem-${code}-do`].filter((id) => words.find(id) === undefined),
    );
    expect(missing).toEqual([]);
  });

  test('no code is there that the service does not know', () => {
    const text = readFileSync(
      new URL(`../../src/web/words/${language}/problems.ftl`, import.meta.url),
      'utf8',
    );
    const own = new Set([
      ...['no_answer', 'no_problem_details'],
      ...['key_not_kept', 'key_not_possible', 'key_needs_https', 'let_go_not_told'],
    ]);
    const codes = [...text.matchAll(/^problem-([a-z_]+?)(?:-do)? =/gm)].map(([, code = '']) => code);
    const strange = codes.filter((code) => !own.has(code) && !Object.hasOwn(problemCatalogue, code));
    expect(strange).toEqual([]);
  });

  test('each is a sentence', () => {
    for (const code of Object.keys(problemCatalogue)) {
      const { what, whatToDo } = problemInWords({ code, title: 't', whatToDo: 'w' }, words);
      expect(what).toMatch(/^\p{Lu}.*\.$/u);
      expect(whatToDo).toMatch(/^\p{Lu}.*\.$/u);
    }
  });
});

test('a code that the pages do not know yet is told in the words of the service', () => {
  const unknown = {
    code: 'of_tomorrow',
    title: 'something new',
    detail: 'it says what is wrong',
    whatToDo: 'Do that.',
  };
  expect(problemInWords(unknown, wordsOf('de'))).toEqual({
    what: 'It says what is wrong.',
    whatToDo: 'Do that.',
  });
});
