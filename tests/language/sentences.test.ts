/** Whatever the engine finds, it is told in every language, whole and in that language. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { agreement } from '../../src/engine/agreement/agreement.ts';
import { margins, usualMarginSetting } from '../../src/engine/agreement/margins.ts';
import { placeClass } from '../../src/engine/placing/place-class.ts';
import type { PlacingInput } from '../../src/engine/placing/types.ts';
import {
  agreementSentences,
  leastAgreedSentence,
  marginSentence,
} from '../../src/engine/sentences/agreement-sentences.ts';
import { cardFaultSentence, goFaultSentence } from '../../src/engine/sentences/fault-sentences.ts';
import { because, openTieSentence, whyUnplaced } from '../../src/engine/sentences/placing-sentences.ts';
import { ruleSentences } from '../../src/engine/sentences/rule-words.ts';
import { scoreSentences } from '../../src/engine/sentences/score-sentences.ts';
import type { Speech } from '../../src/engine/sentences/speech.ts';
import { decimal, plainNames, type Teller } from '../../src/engine/sentences/words.ts';
import { checkCard } from '../../src/engine/sheets/check-card.ts';
import { scoreGo } from '../../src/engine/sheets/score-go.ts';
import { type Go, rulingCodes } from '../../src/engine/sheets/types.ts';
import { speeches } from '../../src/language/index.ts';
import { anyClass } from '../engine/any-class.ts';
import { maneuvers, oneMark, pattern, percentage, places, timed } from '../engine/sheets-examples.ts';

/** Judges are called in the language, as the service does it. */
function tellerIn(speech: Speech): Teller {
  const judge = (id: string) => speech.say('name-judge', { number: id.replace(/\D/g, '') || '9' });
  const decision = () => speech.say('name-decision');
  return { speech, names: { ...plainNames(speech), judge, decision } };
}

/** Words of one language that another one does not have; what a show wrote itself is not among what is told here. */
const ownWords: Readonly<Record<string, RegExp>> = {
  en: /\b(the|with|judges?|tied|placed|score)\b/i,
  de: /\b(der|die|das|mit|Richter|Gleichstand|gesetzt|Wertung)\b/i,
};

function expectTold(sentence: string, { language }: Speech): void {
  expect(sentence).not.toMatch(/\{\$?|\}|undefined|NaN|\[object| {2}|\.\.$/);
  for (const [other, words] of Object.entries(ownWords)) {
    if (other !== language) expect(sentence).not.toMatch(words);
  }
  if (language === 'de') expect(sentence).not.toMatch(/\d\.\d/);
}

describe.each([...speeches])('in "%s"', (_, speech) => {
  const teller = tellerIn(speech);
  const withoutSeed = (input: PlacingInput): PlacingInput => ({
    ...input,
    rule: {
      ...input.rule,
      ties: input.rule.ties.map((tie) => (tie.code === 'draw' ? { ...tie, seed: '7f3a' } : tie)),
    },
  });

  test('every place, every missing place and every open tie has sentences that begin and end', () => {
    fc.assert(
      fc.property(anyClass, (input) => {
        const placing = placeClass(withoutSeed(input));
        const told = [
          ...placing.placed.flatMap(({ entry }) => because(placing, entry, teller)),
          ...placing.unplaced.map((line) => whyUnplaced(line, teller)),
          ...placing.openTies.map((tie) => openTieSentence(tie, teller)),
        ];
        expect(told.length).toBeGreaterThan(0);
        for (const sentence of told) {
          expect(sentence).toMatch(/^[^\p{Ll} ].*[^ ]\.$/u);
          expectTold(sentence, speech);
        }
      }),
      { numRuns: 500 },
    );
  });

  test('every rule can be read before the first go', () => {
    fc.assert(
      fc.property(anyClass, ({ rule }) => {
        for (const sentence of ruleSentences(rule, teller)) {
          expect(sentence).toMatch(/^\p{Lu}.*\.$/u);
          expectTold(sentence, speech);
        }
      }),
    );
  });

  test('how close it was and how far the judges agreed is told for every class', () => {
    fc.assert(
      fc.property(anyClass, (given) => {
        const input = withoutSeed(given);
        const found = agreement(input.cards, input.entries);
        const told = [
          ...margins(input, { ...usualMarginSetting, upTo: 2 }).map((margin) =>
            marginSentence(margin, teller),
          ),
          ...agreementSentences(found, teller),
          leastAgreedSentence(found, teller) ?? 'A.',
        ];
        for (const sentence of told) {
          expect(sentence).toMatch(/^[^\p{Ll} ].*\.$/u);
          expectTold(sentence, speech);
        }
      }),
      { numRuns: 100 },
    );
  });

  const sheets = [pattern, { ...pattern, notSeen: 'absent' as const }, percentage, oneMark, places, timed];
  const text = fc.constantFrom('0', '1', '-0.5', '2.5', '7', '17.482', '0.25', '400', 'x', '');
  const anyGo: fc.Arbitrary<Go> = fc.record(
    {
      maneuvers: fc.array(
        fc.oneof(
          fc.record({ position: fc.integer({ min: 0, max: 4 }), mark: text }),
          fc.record({ position: fc.integer({ min: 0, max: 4 }), notSeen: fc.constant(true as const) }),
        ),
        { maxLength: 4 },
      ),
      extras: fc.dictionary(fc.constantFrom('form', 'gaits', 'style'), text, { maxKeys: 2 }),
      penalties: fc.array(
        fc.record({
          code: fc.constantFrom('minor', 'knock', 'major', 'bolt'),
          position: fc.integer({ max: 3 }),
        }),
        { maxLength: 2 },
      ),
      errorsOfCourse: fc.constantFrom(0, 1, 2, 3, -1, 0.5),
      mark: text,
      measure: text,
      ruling: fc.record({ code: fc.constantFrom(...rulingCodes) }),
    },
    { requiredKeys: [] },
  );

  test('every score of a go and every fault of it is told', () => {
    fc.assert(
      fc.property(fc.constantFrom(...sheets), anyGo, (sheet, go) => {
        const result = scoreGo(sheet, maneuvers(3, ['1', '2', '1']), go);
        const told = result.ok
          ? scoreSentences(result.score, { ...teller, sheet })
          : result.faults.map((fault) => goFaultSentence(fault, teller));
        expect(told.length).toBeGreaterThan(0);
        for (const sentence of told) expect(sentence).not.toMatch(/\{|\}|undefined|NaN|\[object/);
      }),
      { numRuns: 2_000 },
    );
  });

  test('every fault of a card is told', () => {
    const id = fc.constantFrom('a', 'b', 'c', 's', 'z');
    const groups = fc.array(fc.array(id, { maxLength: 3 }), { maxLength: 3 });
    fc.assert(
      fc.property(
        fc.constantFrom(...sheets),
        fc.record({ goes: fc.dictionary(id, anyGo), ranking: groups, ownOrder: groups }),
        (sheet, content) => {
          const entries = ['a', 'b', 'c', 's'].map((entry) => ({ id: entry, going: entry !== 's' }));
          const check = checkCard({ sheet, maneuvers: maneuvers(3), entries, content });
          for (const fault of check.ok ? [] : check.faults) {
            expect(cardFaultSentence(fault, teller)).not.toMatch(/\{|\}|undefined|NaN|\[object/);
          }
        },
      ),
      { numRuns: 1_000 },
    );
  });

  test('a decimal keeps each of its digits, however many there are', () => {
    fc.assert(
      fc.property(fc.stringMatching(/^-?(0|[1-9]\d{0,24})(\.\d{1,24})?$/), (written) => {
        const told = decimal(written, speech);
        expect(told.replace(/[.,]/, '.').replace('−', '-')).toBe(written);
      }),
    );
  });
});
