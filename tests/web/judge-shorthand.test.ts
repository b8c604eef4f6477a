/** A judge's shorthand, typed and dictated: what it reads, what it says it does not understand, what it fills in. */
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Go, ScoreSheet } from '../../src/engine/sheets/types.ts';
import { type Step, stepsOf } from '../../src/web/judge/go/steps.ts';
import { fillIn } from '../../src/web/judge/shorthand/fill-in.ts';
import { readShorthand } from '../../src/web/judge/shorthand/read.ts';
import type { Item, Lexicon } from '../../src/web/judge/shorthand/types.ts';
import { writeShorthand } from '../../src/web/judge/shorthand/write.ts';

const fileOf = (path: string) => JSON.parse(readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8'));
const lexicons: Readonly<Record<'en' | 'de', Lexicon>> = {
  en: fileOf('src/web/judge/shorthand/words/en.json'),
  de: fileOf('src/web/judge/shorthand/words/de.json'),
};

/** One word for each item: `+1`, `ns`, `p5b`, `p(missed lead)`, `f4`. */
function short(line: string, language: 'en' | 'de') {
  const { items, notUnderstood } = readShorthand(line, lexicons[language]);
  return { read: items.map(word), notUnderstood };
}

function word(item: Item): string {
  switch (item.kind) {
    case 'mark':
      return item.mark;
    case 'not-seen':
      return 'ns';
    case 'penalty':
      return `p${item.points}${item.letter ?? ''}`;
    case 'penalty-called':
      return `p(${item.words})`;
    case 'form':
      return `f${item.mark}`;
  }
}

describe('a line of shorthand is read', () => {
  it.each([
    ['+1/2, +1, +2 p5, 0, ns, f4', ['0.5', '1', '2', 'p5', '0', 'ns', 'f4']],
    ['1, 1.5, -1/2', ['1', '1.5', '-0.5']],
    ['+1½, −½, –2', ['1.5', '-0.5', '-2']],
    ['+1 1/2, -2 1/2', ['1.5', '-2.5']],
    ['.5 -.5', ['0.5', '-0.5']],
    ['01.50', ['1.5']],
    ['-0', ['0']],
    ['0 p3a p10', ['0', 'p3a', 'p10']],
    ['p5b', ['p5b']],
    ['plus half, plus one, plus two', ['0.5', '1', '2']],
    ['plus half plus one minus two penalty five zero not seen', ['0.5', '1', '-2', 'p5', '0', 'ns']],
    ['plus one half. minus one and a half. Zero.', ['0.5', '-1.5', '0']],
    ['Minus Two Penalty Five B, form four', ['-2', 'p5b', 'f4']],
    ['minus one penalty missed lead, plus one', ['-1', 'p(missed lead)', '1']],
    ['seven and a half then eight', ['7.5', '8']],
    ['84', ['84']],
    ['', []],
    [' , ; ', []],
  ])('in English: %j', (line, read) => {
    expect(short(line, 'en')).toEqual({ read, notUnderstood: [] });
  });

  it.each([
    ['plus ein halb, plus eins, minus zwei Strafpunkte fünf', ['0.5', '1', '-2', 'p5']],
    ['plus eineinhalb null nicht gesehen', ['1.5', '0', 'ns']],
    ['plus anderthalb, minus zweieinhalb', ['1.5', '-2.5']],
    ['+1,5, −0,5', ['1.5', '-0.5']],
    ['+1, +2', ['1', '2']],
    ['minus halb, Form vier', ['-0.5', 'f4']],
    ['sieben einhalb, Form und Einwirkung dreieinhalb', ['7.5', 'f3.5']],
    ['plus eins Strafe drei a', ['1', 'p3a']],
    ['+1/2, ns, p5, f4', ['0.5', 'ns', 'p5', 'f4']],
  ])('in German: %j', (line, read) => {
    expect(short(line, 'de')).toEqual({ read, notUnderstood: [] });
  });
});

describe('what is not understood is said', () => {
  it.each([
    ['plus one, banana, minus one', ['banana']],
    ['plus', ['plus']],
    ['+1, + +1', ['+']],
    ['penalty', ['penalty']],
    ['f', ['f']],
    ['2b', ['2 b']],
    ['1.5 and a half', ['1.5 and a half']],
    ['1/3', ['1/3']],
    ['0 <b>', ['<b>']],
  ])('%j', (line, notUnderstood) => {
    expect(short(line, 'en').notUnderstood).toEqual(notUnderstood);
  });

  it('words of one language are not those of the other', () => {
    expect(short('plus eineinhalb', 'en').notUnderstood).not.toEqual([]);
    expect(short('minus one and a half', 'de').notUnderstood).not.toEqual([]);
  });

  it('whatever stands in the line, it answers', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'grapheme', maxLength: 80 }),
        fc.constantFrom('en', 'de'),
        (line, language) => {
          const { items, notUnderstood } = readShorthand(line, lexicons[language as 'en' | 'de']);
          expect(items.length + notUnderstood.length).toBeLessThanOrEqual(line.length);
        },
      ),
      { numRuns: 2_000 },
    );
  });

  it('near-shorthand neither breaks it nor is guessed at', () => {
    const piece = fc.constantFrom(
      ...[
        '+',
        '-',
        '1',
        '2',
        '1/2',
        '½',
        'p',
        'p5',
        'b',
        'ns',
        'f',
        'f4',
        ',',
        '.',
        ' ',
        'plus',
        'half',
        'and a half',
      ],
      ...[
        'penalty',
        'zero',
        'ein',
        'halb',
        'einhalb',
        'x',
        '__proto__',
        'constructor',
        '\n',
        '\u0000',
        '1e9',
      ],
    );
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 20 }), fc.constantFrom('', ' '), (pieces, glue) => {
        for (const lexicon of Object.values(lexicons)) {
          const { items } = readShorthand(pieces.join(glue), lexicon);
          for (const item of items) {
            if (item.kind === 'mark') expect(item.mark).toMatch(/^-?\d+(\.\d+)?$/);
          }
        }
      }),
      { numRuns: 2_000 },
    );
  });
});

describe('what it writes is read as the same again', () => {
  const amount = fc
    .tuple(fc.integer({ min: 0, max: 99 }), fc.constantFrom('', '.5', '.25'))
    .map(([whole, rest]) => `${whole}${rest}`);
  const mark = fc
    .tuple(fc.boolean(), amount)
    .map(([below, size]) => (below && size !== '0' ? `-${size}` : size));
  const letter = fc.option(fc.constantFrom(...'abcdefghijklmnopqrstuvwxyz'));
  const item: fc.Arbitrary<Item> = fc.oneof(
    mark.map((value): Item => ({ kind: 'mark', mark: value })),
    fc.constant<Item>({ kind: 'not-seen' }),
    fc.tuple(amount, letter).map(([points, one]): Item => ({ kind: 'penalty', points, letter: one })),
    fc
      .constantFrom('cone', 'cone hit', 'wechsel spät')
      .map((words): Item => ({ kind: 'penalty-called', words })),
    mark.map((value): Item => ({ kind: 'form', mark: value })),
  );

  it('in every language, with and without plus signs', () => {
    fc.assert(
      fc.property(fc.array(item, { maxLength: 12 }), fc.boolean(), (items, signed) => {
        const line = writeShorthand(items, { signed });
        for (const lexicon of Object.values(lexicons)) {
          const read = readShorthand(line, lexicon);
          expect(read.notUnderstood).toEqual([]);
          expect(read.items.map(({ text: _, ...one }) => one)).toEqual(items);
        }
      }),
      { numRuns: 1_000 },
    );
  });
});

describe('a line fills in a go', () => {
  const sheet: ScoreSheet = fileOf('seed/sheets/horsemanship.json');
  if (sheet.kind !== 'pattern') throw new Error('the sheet of horsemanship is one for patterns');
  const maneuvers = [1, 2, 3, 4].map((position) => ({
    position,
    name: `Part ${position}`,
    coefficient: '1',
  }));
  const steps: readonly Step[] = stepsOf(sheet, maneuvers);

  function fill(line: string, { inHand = 0, go = {} }: { inHand?: number; go?: Go } = {}) {
    const { items, notUnderstood } = readShorthand(line, lexicons.en);
    expect(notUnderstood).toEqual([]);
    const filled = fillIn(items, {
      steps,
      penalties: sheet.kind === 'pattern' ? sheet.penalties : [],
      inHand,
      called: ({ label }) => label,
    });
    return filled.ok ? filled.change(go) : filled.faults.map(({ why }) => why);
  }

  it('from the maneuver in hand on, with penalties against the maneuver before them', () => {
    expect(fill('+1/2, +1 p5b, ns, 0, f4')).toEqual({
      maneuvers: [
        { position: 1, mark: '0.5' },
        { position: 2, mark: '1' },
        { position: 3, notSeen: true },
        { position: 4, mark: '0' },
      ],
      penalties: [{ code: 'lead-missed', position: 2 }],
      extras: { 'form-and-effectiveness': '4' },
    });
    expect(fill('-1', { inHand: 2 })).toEqual({ maneuvers: [{ position: 3, mark: '-1' }] });
  });

  it('a penalty that comes first is against the maneuver in hand', () => {
    expect(fill('p3c', { inHand: 1 })).toEqual({ penalties: [{ code: 'cone-hit', position: 2 }] });
    expect(fill('penalty missed lead')).toEqual({ penalties: [{ code: 'lead-missed', position: 1 }] });
  });

  it('keeps what stands there already', () => {
    const go: Go = { maneuvers: [{ position: 2, mark: '1', remark: 'late' }], remark: 'hat blew off' };
    expect(fill('0, -1/2', { go })).toEqual({
      maneuvers: [
        { position: 1, mark: '0' },
        { position: 2, mark: '-0.5', remark: 'late' },
      ],
      remark: 'hat blew off',
    });
  });

  it.each([
    ['+1, +1, +1, +1, +1', ['no-maneuver-left']],
    ['+1, +3.5', ['not-on-scale']],
    ['+0.25', ['not-on-scale']],
    ['f6', ['not-on-scale']],
    ['f4, f4', ['no-form']],
    ['0 p5', ['which-penalty']],
    ['0 p7', ['penalty-unknown']],
    ['0 p3z', ['penalty-unknown']],
    ['penalty break', ['which-penalty']],
    ['', ['nothing']],
  ])('or says why not, and changes nothing: %j', (line, why) => {
    expect(fill(line)).toEqual(why);
  });
});
