/** Exact numbers out of answers as people read and hear them. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { decimalText, figureText, markText, spokenMark } from '../../src/web/shared/figure-words.ts';
import { makeWords } from '../../src/web/shared/words.tsx';

const wordsOf = (language: 'en' | 'de') =>
  makeWords(language, [
    readFileSync(new URL(`../../src/web/words/${language}/shared.ftl`, import.meta.url), 'utf8'),
  ]);

describe('a figure', () => {
  it('has signs for halves, quarters and thirds, and a true minus', () => {
    const read = ['0', '214.5', '-1.5', '0.5', '643/3', '-0.25', '66.346'];
    expect(read.map((number) => figureText(number, 'en'))).toEqual([
      ...['0', '214½', '−1½', '½', '214⅓', '−¼', '66.346'],
    ]);
  });

  it('keeps its decimals where they are written, with the mark of the language', () => {
    expect(decimalText('66.346', 'de')).toBe('66,346');
    expect(decimalText('224.5', 'en')).toBe('224.5');
    expect(decimalText('643/3', 'en')).toBe('214 1/3');
  });

  it('is exact, however long it is', () => {
    expect(figureText('123456789012345678901234567890.5', 'en')).toBe('123456789012345678901234567890½');
  });

  it('is shown as it is where it is no number', () => {
    expect(figureText('not seen', 'en')).toBe('not seen');
  });

  it('shows its sign as a mark, and is heard with it', () => {
    expect(['0.5', '0', '-3'].map((mark) => markText(mark, 'en'))).toEqual(['+½', '0', '−3']);
    const heard = (mark: string, language: 'en' | 'de') => spokenMark(mark, wordsOf(language));
    expect(['0.5', '-1.5', '0', '2'].map((mark) => heard(mark, 'en'))).toEqual([
      ...['plus one half', 'minus 1 and a half', '0', 'plus 2'],
    ]);
    expect(['0.5', '-1.5'].map((mark) => heard(mark, 'de'))).toEqual(['plus ein halb', 'minus eineinhalb']);
  });
});
