/** Exact numbers, held against decimal.js and big integers. */
import { Decimal as Independent } from 'decimal.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exact, mean, onStep, parseDecimal, sum } from '../../src/engine/numbers/exact.ts';
import { fromRecordText, readingText, recordText } from '../../src/engine/numbers/number-text.ts';
import { type RoundingMode, round } from '../../src/engine/numbers/rounding.ts';

Independent.set({ precision: 80 });

/** At most nine digits before and nine after the point, written plainly. */
const decimal = fc
  .tuple(fc.bigInt({ min: -(10n ** 18n) + 1n, max: 10n ** 18n - 1n }), fc.integer({ min: 0, max: 9 }))
  .map(([digits, places]) =>
    new Independent(digits.toString()).div('1e9').toDecimalPlaces(places, Independent.ROUND_DOWN).toFixed(),
  )
  .filter((text) => text !== '-0');

describe('a decimal', () => {
  it('is read exactly (decimal.js)', () => {
    fc.assert(
      fc.property(decimal, (text) => {
        const read = parseDecimal(text);
        expect(read && recordText(read)).toBe(new Independent(text).toFixed());
      }),
    );
  });

  it.each([
    '',
    ' ',
    '-0',
    '-0.0',
    '+1',
    '1.',
    '.5',
    '01',
    '1e3',
    '1/2',
    '½',
    'NaN',
    'Infinity',
    '0x10',
    '1_000',
    '1 000',
    '1,5',
  ])('%j is none', (text) => {
    expect(parseDecimal(text)).toBeUndefined();
    expect(() => exact(text)).toThrow(RangeError);
  });

  it('has at most nine digits before and nine after the point', () => {
    expect(parseDecimal('999999999.999999999')).toBeDefined();
    expect(parseDecimal('1000000000')).toBeUndefined();
    expect(parseDecimal('0.0000000001')).toBeUndefined();
  });

  it('is never made of a number that is not whole', () => {
    for (const value of [0.5, Number.NaN, Number.POSITIVE_INFINITY, 2 ** 53])
      expect(() => exact(value)).toThrow(RangeError);
  });
});

describe('sums and means', () => {
  it('are exact: ten tenths are one, and 0.1 + 0.2 is 0.3', () => {
    expect(recordText(sum(Array.from({ length: 10 }, () => exact('0.1'))))).toBe('1');
    expect(recordText(sum([exact('0.1'), exact('0.2')]))).toBe('0.3');
  });

  it('are those of decimal.js, whatever the order', () => {
    fc.assert(
      fc.property(fc.array(decimal, { maxLength: 30 }), (texts) => {
        const expected = texts.reduce((total, text) => total.add(text), new Independent(0)).toFixed();
        const numbers = texts.map((text) => exact(text));
        expect(recordText(sum(numbers))).toBe(expected);
        expect(recordText(sum([...numbers].reverse()))).toBe(expected);
      }),
    );
  });

  it('keep a third: the mean of 71, 71 and 72 is 214/3, and three of them are 214', () => {
    const third = mean([71, 71, 72].map((score) => exact(score)));
    expect(recordText(third)).toBe('214/3');
    expect(recordText(third.mul(3))).toBe('214');
    expect(() => mean([])).toThrow(RangeError);
  });
});

describe('rounding', () => {
  const modes: Readonly<Record<RoundingMode, Independent.Rounding>> = {
    'half-up': Independent.ROUND_HALF_UP,
    'half-even': Independent.ROUND_HALF_EVEN,
    down: Independent.ROUND_DOWN,
  };

  it.each(['half-up', 'half-even', 'down'] as const)('%s is that of decimal.js', (mode) => {
    const halves = fc
      .integer({ min: -100_000, max: 100_000 })
      .map((units) => new Independent(units).mul('0.0005').toFixed());
    fc.assert(
      fc.property(
        fc.oneof(
          decimal,
          halves.filter((text) => text !== '-0'),
        ),
        fc.integer({ min: 0, max: 6 }),
        (text, places) => {
          const expected = new Independent(text).toDecimalPlaces(places, modes[mode]);
          expect(new Independent(recordText(round(exact(text), { places, mode }))).equals(expected)).toBe(
            true,
          );
        },
      ),
    );
  });

  it('sends a half away from zero, to the even digit, or cuts it off', () => {
    const rounded = (text: string, mode: RoundingMode) => recordText(round(exact(text), { places: 2, mode }));
    expect([rounded('66.665', 'half-up'), rounded('66.665', 'half-even'), rounded('66.665', 'down')]).toEqual(
      ['66.67', '66.66', '66.66'],
    );
    expect([rounded('-0.005', 'half-up'), rounded('-0.005', 'half-even'), rounded('-0.005', 'down')]).toEqual(
      ['-0.01', '0', '0'],
    );
  });
});

describe('a number as text', () => {
  const fraction = fc
    .tuple(fc.bigInt({ min: -(10n ** 12n), max: 10n ** 12n }), fc.bigInt({ min: 1n, max: 10n ** 6n }))
    .map(([n, d]) => exact(n).div(exact(d)));

  it('for records comes back as the same number', () => {
    fc.assert(
      fc.property(fraction, (value) => {
        expect(fromRecordText(recordText(value)).compare(value)).toBe(0);
      }),
    );
  });

  it('for reading has all digits where they end, and three where they do not', () => {
    expect(readingText(exact('214.125'))).toBe('214.125');
    expect(readingText(exact(214).div(3))).toBe('71.333');
    expect(readingText(exact(-2).div(3))).toBe('-0.667');
    expect(readingText(exact(0))).toBe('0');
  });

  it('for records is refused where it is none', () => {
    for (const text of ['', '1/0x', 'seven', '1e3', ' 1', '1/2/3'])
      expect(() => fromRecordText(text)).toThrow(RangeError);
  });
});

describe('a step', () => {
  it('is counted from its origin (decimal.js)', () => {
    const tenths = fc.integer({ min: -300, max: 300 });
    fc.assert(
      fc.property(tenths, tenths, fc.constantFrom('0.5', '0.25', '0.1', '0.3'), (value, origin, step) => {
        const expected = new Independent(value).sub(origin).div(10).div(step).isInteger();
        expect(onStep(exact(value).div(10), exact(step), exact(origin).div(10))).toBe(expected);
      }),
    );
  });
});
